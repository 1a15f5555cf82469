import type { PreparedSheet } from '../corpus/prepared.ts';
import type { EfficiencyFigures, EfficiencyRun, EfficiencySpan } from '../derived/efficiency/efficiency-figures.ts';
import { efficiencyCurve, type EfficiencyLimit, type EfficiencySeries } from '../figures/efficiency-curve.ts';
import { EFFICIENCY_RULES } from '../standards/efficiency/index.ts';
import { efficiencyLimits } from '../tables/efficiency-limits.ts';
import { efficiencyMeans } from '../tables/efficiency-means.ts';
import { efficiency } from '../tables/efficiency.ts';
import { noLoad } from '../tables/no-load.ts';
import type { TableDeclaration } from '../tables/table-declaration.ts';
import { isMissing } from '../values/value.ts';
import type { Entry } from '../entry/entry.ts';
import { fold } from './fold.ts';
import { instrumentWords, methodWords } from './made-by.ts';
import type { SheetZone } from './sheet-zone.ts';
import { tableView } from './table-view.ts';
import { sentence } from './words.ts';
import { counted } from '../units/counted.ts';

/** Charts of one device; further voltages stand in the table. */
const MOST_CHARTS = 4;

/** Efficiency over load with the limits that look at it, the means, and what is taken without load; null where nothing was measured. */
export function efficiencyZone(sheet: PreparedSheet): SheetZone | null {
  const { entry, derived } = sheet;
  const drawn = (declaration: TableDeclaration, caption: 'shown' | 'hidden' = 'hidden'): string => {
    if (sheet.placed.includes(declaration.id)) return '';
    const table = declaration.build({ entry, derived });
    return table === null ? '' : `<div class="efficiency-table ${declaration.id}">${tableView(table, { caption })}</div>`;
  };
  const charts = chartsOf(derived.efficiency);
  const [means, limits, idle, points] = [
    drawn(efficiencyMeans),
    drawn(efficiencyLimits, 'shown'),
    drawn(noLoad, 'shown'),
    drawn(efficiency),
  ];
  const matter =
    (charts === '' ? '' : `<div class="envelopes efficiency-charts">${charts}</div>`) +
    means +
    idle +
    limits +
    (points === '' ? '' : fold(`<b>${counted(entry.efficiency.length, 'measured point')}</b> with conditions`, points));
  return matter === '' ? null : { title: 'Efficiency', layout: 'side', side: sideText(derived.efficiency) + madeByText(entry), matter };
}

function sideText({ runs, noLoad, judgements, outOfScope }: EfficiencyFigures): string {
  const count = (verdict: string): number => judgements.filter((judgement) => judgement.verdict === verdict).length;
  const verdicts = (['meets', 'misses', 'undecided'] as const).flatMap((verdict) =>
    count(verdict) === 0 ? [] : [`${verdict} ${String(count(verdict))}`],
  );
  const shown =
    runs.length === 0
      ? noLoad.length === 0
        ? '<p>Measured at one stage alone, which is not the efficiency of the device.</p>'
        : '<p>What it takes from the mains with nothing plugged in.</p>'
      : '<p>Output power over input power at each load, from the supply to the place named in the table.</p>';
  const limits =
    outOfScope !== null
      ? `<p class="note ruled">No published limit looks at it: ${sentence(outOfScope)}.</p>`
      : judgements.length === 0
        ? ''
        : `<p>Of ${counted(judgements.length, 'comparison')} with published limits: ${verdicts.join(', ')}.</p><p class="note ruled">The dash-dot line is the limit of the mean, over the loads that it averages; the short one that of a tenth of the load. A comparison on this bench, not a verdict of compliance.</p>`;
  return shown + limits;
}

/** "Read on meter, load; efficiency as the bench does it.": each way in which the points were made once, with links to the bench page. */
function madeByText({ efficiency: points }: Entry): string {
  const ways = points.map(({ instrument, byInstrument, method, byMethod }) => {
    const on = instrument === null ? '' : `Read on ${instrumentWords(instrument, byInstrument)}`;
    const how = methodWords(method, byMethod);
    return [on, how === '' ? '' : `${on === '' ? 'Method' : 'method'}: ${how}`].filter((piece) => piece !== '').join('; ');
  });
  return [...new Set(ways)].map((way) => (way === '' ? '' : `<p class="note">${way}.</p>`)).join('');
}

/** One chart for each port and voltage with two measured points or more; what is only reported stands in the tables. */
function chartsOf(figures: EfficiencyFigures): string {
  const drawable = figures.runs.filter((run) => !run.isReported && run.points.filter(isPlaced).length > 1);
  const groups = [...Map.groupBy(drawable, ({ port, settings }) => `${String(port)} ${String(settings)}`).values()];
  return groups
    .slice(0, MOST_CHARTS)
    .map((runs, index) => chartOf(runs, figures, index))
    .join('');
}

function chartOf(runs: readonly EfficiencyRun[], figures: EfficiencyFigures, index: number): string {
  const [first] = runs;
  if (first === undefined) return '';
  const sorted = [...runs].sort((one, other) => (other.line ?? 0) - (one.line ?? 0));
  const name = `${first.port ?? 'Output'} at ${first.settings ?? 'its voltage'}`;
  const means = sorted.map(
    ({ line, mean }) => `${String(line)} V ${isMissing(mean) ? 'not known' : `${(mean.nominal * 100).toFixed(1)} %`}`,
  );
  const svg = efficiencyCurve({
    id: `efficiency-${String(index + 1)}`,
    title: `Efficiency of ${name} over load`,
    description: `Means: ${means.join(', ')}. The table below has every point.`,
    series: sorted.map((run, place) => seriesOf(run, place === 0 && !isLowLine(run))),
    limits: limitsOf(first, figures),
  });
  return `<figure class="envelope-of"><figcaption><b class="mono">${name}</b></figcaption>${svg}</figure>`;
}

function isPlaced({ share, span }: EfficiencyRun['points'][number]): boolean {
  return share !== null && span !== null;
}

/** Mains of about 115 V is drawn dashed even where it stands alone, so that it looks the same on every sheet. */
function isLowLine({ line }: EfficiencyRun): boolean {
  return line !== null && line > 90 && line < 140;
}

function seriesOf({ line, points }: EfficiencyRun, isFilled: boolean): EfficiencySeries {
  const placed = points.flatMap(({ share, efficiency: known, span }) => {
    if (share === null) return [];
    if (!isMissing(known)) return [{ share, low: known.low, nominal: known.nominal, high: known.high, open: null }];
    const open = span === null ? null : openEnd(span);
    return open === null ? [] : [open === 'above' ? boundAt(share, span?.low ?? 0, open) : boundAt(share, span?.high ?? 1, open)];
  });
  const label = line === null ? 'line not given' : `${String(line)} V`;
  return { label, isFilled, points: placed.sort((one, other) => one.share - other.share) };
}

/** A bound ("> 94 %") stands at its number, with an arrow to where the true one lies. */
function boundAt(share: number, at: number, open: 'above' | 'below'): EfficiencySeries['points'][number] {
  return { share, low: at, nominal: at, high: at, open };
}

function openEnd({ low, high }: EfficiencySpan): 'above' | 'below' | null {
  if (high >= 1 && low > 0) return 'above';
  return low <= 0 && high < 1 ? 'below' : null;
}

/** The limit of the mean that is in force, and the one of a tenth of the load where a rule has it; each once. */
function limitsOf({ port, setting, settings, fullAmps }: EfficiencyRun, { judgements }: EfficiencyFigures): readonly EfficiencyLimit[] {
  const own = judgements.filter((judgement) => judgement.port === port && judgement.settings === settings);
  return (['average', 'a tenth of the load'] as const).flatMap((of) => {
    const held = own.filter((judgement) => judgement.of === of);
    const first = EFFICIENCY_RULES.map(({ id }) => held.find(({ rule }) => rule === id)).find((judgement) => judgement !== undefined);
    if (first === undefined) return [];
    const nameplate = setting === null || fullAmps === null || first.outputClass === 'multiple voltage' ? first.watts : setting * fullAmps;
    return [{ of, value: first.limit, label: `limit ${(first.limit * 100).toFixed(1)}`, fullLoad: first.watts / nameplate }];
  });
}
