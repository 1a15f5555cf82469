import type { SheetRank } from '../corpus/sheet-ranks.ts';
import { escapeText } from '../figures/markup.ts';
import type { PreparedSheet } from '../corpus/prepared.ts';
import type { Entry, MadeBy } from '../entry/entry.ts';
import { benchAddress, efficiencyAddress } from '../tables/bench-address.ts';
import { tellingEfficiency } from '../derived/telling-efficiency.ts';
import { isMissing, type Known } from '../values/value.ts';
import { quantity, type Showing } from './quantity.ts';
import { workingAnchor } from './references.ts';
import { deviceName } from './device-name.ts';
import { sentence } from './words.ts';
import { ordinal } from './ordinal.ts';
import { counted } from '../units/counted.ts';
import { sentenceCase } from '../units/sentence-case.ts';

/** One field: label above value. `span` of six sub-columns; `size` large for the two figures that matter most. */
interface Field {
  readonly label: string;
  readonly html: string;
  readonly span: 2 | 3 | 6 | 'number' | 'revision' | 'date' | 'author';
  readonly size?: 'large';
  readonly rule?: true;
  /** Takes the whole width on a phone. */
  readonly last?: true;
}

// The entry's own text never holds a comment: it is escaped.
const RANK_PLACE = '<!--rank-->';
const AUTHOR_PLACE = '<!--author-->';

/** What a title block learns from the site and from other sheets. */
export interface TitleCompletion {
  /** The rank that the title block has room for; null where nothing is comparable. */
  readonly rank: SheetRank | null;
  readonly author: string;
}

/** Fills the places that `titleBlock` leaves. */
export function completedTitle(html: string, { rank, author }: TitleCompletion): string {
  const ranked =
    rank === null
      ? dash('none comparable')
      : `<span class="q">${ordinal(rank.place)} of ${rank.of}</span><span class="small soft">${sentence(rank.among)}</span>`;
  return html.replace(RANK_PLACE, () => ranked).replace(AUTHOR_PLACE, () => escapeText(author));
}

/** The title block of a teardown: what an engineer looks for first, always in the same place. */
export function titleBlock(sheet: PreparedSheet): string {
  const { entry } = sheet;
  const fields = [...deviceFields(sheet), ...sizeFields(sheet), ...measuredFields(sheet), ...issueFields(sheet)];
  return (
    `<div class="tb"><div class="tb-name"><p class="label">Teardown</p><h1>${escapeText(deviceName(entry))}</h1>` +
    `<p class="about">${sentence(aboutLine(entry))}</p></div><dl>${fields.map(fieldHtml).join('')}</dl></div>`
  );
}

function fieldHtml(field: Field): string {
  const classes = `f-${field.span}${field.size === 'large' ? ' large' : ''}${field.rule === true ? ' rule' : ''}${field.last === true ? ' last' : ''}`;
  return `<div class="${classes}"><dt>${sentence(field.label)}</dt><dd>${field.html}</dd></div>`;
}

function aboutLine(entry: Entry): string {
  const { device, sample } = entry;
  const pieces = [
    `${outputPortCount(entry) === 0 ? '' : `${counted(outputPortCount(entry), 'port')}, `}${device.kind}`,
    ...(device.model === null ? [] : [`model ${device.model}`]),
    ...(device.released === null ? [] : [`released ${device.released}`]),
    ...(sample.obtained === null ? [] : [sample.obtained]),
    ...(sample.firmware === null || sample.firmware === 'unknown' ? [] : [`firmware ${sample.firmware}`]),
  ];
  const text = pieces.join(', ');
  return `${sentenceCase(text)}.`;
}

function outputPortCount(entry: Entry): number {
  return entry.ports.filter((port) => port.direction !== 'input').length;
}

function deviceFields(sheet: PreparedSheet): readonly Field[] {
  const { entry, derived } = sheet;
  const input = entry.nameplate.inputs.map((line) => line.written).join(' · ');
  const bank = entry.device.kind === 'power bank';
  const capacity = entry.nameplate.capacity;
  const cells = [capacity?.charge, capacity?.energy]
    .flatMap((fact) => (fact === null || fact === undefined ? [] : [fact.quantity.written]))
    .join(' · ');
  const supply: Field = bank
    ? { label: 'Printed capacity', html: textOr(cells, 'not printed'), span: 3 }
    : { label: 'Rated input', html: textOr(input, 'not marked'), span: 3 };
  const ports = outputPortCount(entry);
  const rated = isMissing(derived.ratedPower)
    ? missing(derived.ratedPower)
    : `${shown(derived.ratedPower, {})}<span class="q">${ports > 1 ? ` in total, ${counted(ports, 'port')}` : ''}</span>`;
  const family = `<a href="/topologies/${derived.family}/">${escapeText(derived.topology)}</a>`;
  return [
    supply,
    { label: 'Rated output', html: rated, span: 3 },
    { label: 'Topology', html: derived.topology === '' ? dash('not known') : family, span: 6 },
  ];
}

function sizeFields({ entry, derived }: PreparedSheet): readonly Field[] {
  const { size } = derived;
  const written = entry.body.size?.size.written ?? '';
  const mass = derived.named['mass'];
  const massHtml =
    entry.body.mass === null
      ? dash('not known, measure next')
      : mass !== undefined && !isMissing(mass)
        ? shown(mass, {})
        : `<span class="q">${escapeText(entry.body.mass.quantity.written)}</span>`;
  return [
    { label: 'Size', html: measuredText(written.replace(/\s*±.*$/, ''), entry.body.size, 'not known, measure next'), span: 2 },
    { label: 'Volume', html: shown(size.volume, { unit: 'cm³' }, 'volume'), span: 2 },
    { label: 'Mass', html: massHtml, span: 2 },
    { label: 'Power density', html: shown(size.density, { unit: 'W/cm³' }, 'density'), span: 2, size: 'large' },
    { label: 'in inches', html: shown(size.density, { unit: 'W/in³' }, 'density'), span: 2 },
    { label: 'by mass', html: shown(size.specificPower, { unit: 'W/kg' }, 'specific-power'), span: 2 },
  ];
}

function measuredFields({ entry, derived }: PreparedSheet): readonly Field[] {
  const standby = entry.measurements.find((point) => point.subject === 'standby');
  const best = tellingEfficiency(entry, derived);
  const line = best?.conditions.line?.quantity.written;
  const statistic = best?.conditions.statistic;
  const label = `${statistic === 'average' ? 'Mean efficiency' : 'Efficiency'}${line === undefined ? '' : `, ${line}`}`;
  const at = standby?.conditions['line'];
  return [
    {
      label,
      html:
        (best !== null && best.written === null
          ? shown(best.value, { unit: '%', decimals: 1, ...efficiencyAddress(best.conditions) })
          : measuredText(best?.written ?? '', best?.conditions.efficiency ?? null, 'not measured')) +
        (statistic === 'point' ? '<span class="small soft">at highest load</span>' : ''),
      span: 2,
      size: 'large',
    },
    {
      label: `Standby${at === undefined ? '' : `, ${at}`}`,
      html: measuredText(standby?.value.quantity.written ?? '', standby?.value ?? null, 'not measured'),
      span: 2,
    },
    {
      label: 'Rank by W/cm³',
      html: RANK_PLACE,
      span: 2,
      last: true,
    },
  ];
}

function issueFields({ entry, derived }: PreparedSheet): readonly Field[] {
  return [
    { label: 'Number', html: textOr(entry.number ?? '', 'none'), span: 'number', rule: true },
    { label: 'Revision', html: textOr(derived.revision, 'none'), span: 'revision', rule: true },
    { label: 'Date of issue', html: textOr(entry.published ?? '', 'draft'), span: 'date', rule: true },
    { label: 'Made by', html: `<span class="q wrap">${AUTHOR_PLACE}</span>`, span: 'author', rule: true },
  ];
}

function shown(known: Known, showing: Showing, name?: string): string {
  if (isMissing(known)) return missing(known);
  return quantity(known, name === undefined ? showing : { ...showing, link: `#${workingAnchor(name)}` });
}

function missing(known: Extract<Known, { missing: true }>): string {
  return dash(known.needs.length === 0 ? known.reason : `needs ${known.needs.join(', ')}`);
}

function dash(reason: string): string {
  return `<span class="small faded">– ${escapeText(reason)}</span>`;
}

function textOr(text: string, reason: string): string {
  return text === '' ? dash(reason) : `<span class="q wrap">${escapeText(text)}</span>`;
}

/** What was measured, as written, leads to what measured it. */
function measuredText(text: string, made: MadeBy | null, reason: string): string {
  const address = text === '' || made === null ? null : benchAddress(made);
  return address === null ? textOr(text, reason) : `<a class="q wrap" href="${escapeText(address)}">${escapeText(text)}</a>`;
}
