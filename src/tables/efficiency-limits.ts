import type { EfficiencyJudgement, LimitVerdict } from '../derived/efficiency/efficiency-figures.ts';
import type { EfficiencyRule } from '../standards/efficiency/efficiency-rule.ts';
import { EFFICIENCY_RULES } from '../standards/efficiency/index.ts';
import { isMissing } from '../values/value.ts';
import { efficiencyAddress } from './bench-address.ts';
import { detailColumn, numberColumn, textColumn } from './cells.ts';
import type { Cell, JudgementMark, Row, RowGroup, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';
import { sentenceCase } from '../units/sentence-case.ts';

const ID = 'efficiency-limits';
const TITLE = 'Beside published limits';

export const efficiencyLimits: TableDeclaration = { id: ID, title: TITLE, build, hasFigure: true };

const MARKS: Readonly<Record<LimitVerdict, JudgementMark>> = { meets: 'within', misses: 'over', undecided: 'straddles' };
const STANDINGS = { read: '', secondary: ' as quoted', memory: ' from memory', 'common practice': '', 'worked apart': '' } as const;

function build({ derived }: TableInput): Table | null {
  const { judgements } = derived.efficiency;
  if (judgements.length === 0) return null;
  const groups = EFFICIENCY_RULES.flatMap((rule) => groupOf(rule, judgements));
  const rules = EFFICIENCY_RULES.filter((rule) => groups.some(({ id }) => id === rule.id));
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(judgements.length, 'figure')} beside the limits of ${counted(rules.length, 'rule')} for its nameplate; margins in points of a per cent, or in milliwatts.`,
    columns: [
      textColumn('of', 'Figure'),
      numberColumn('measured', 'Measured', null),
      detailColumn(numberColumn('limit', 'Limit', null)),
      detailColumn(numberColumn('margin', 'Margin', null)),
      textColumn('verdict', 'Verdict'),
    ],
    groups,
    notes: [
      'A reviewer’s comparison under the conditions of this bench, not a verdict of compliance. Undecided: what is certain of the figure lies on both sides of the limit, or it was measured otherwise than the rule asks.',
      ...rules.map(({ name, source }) => `${name}: ${source.title}, ${source.section}.`),
    ],
  };
}

function groupOf(rule: EfficiencyRule, judgements: readonly EfficiencyJudgement[]): readonly RowGroup[] {
  const held = judgements.filter((judgement) => judgement.rule === rule.id);
  if (held.length === 0) return [];
  return [
    {
      id: rule.id,
      title: `${rule.name}, ${rule.applies}`,
      glyph: null,
      rows: held.map((judgement, index) => rowOf(rule, judgement, index)),
    },
  ];
}

function rowOf(rule: EfficiencyRule, judgement: EfficiencyJudgement, index: number): Row {
  const { of, measured, limit, margin, verdict, standing } = judgement;
  const isPower = of === 'no load';
  const shown: Cell = isMissing(measured)
    ? { kind: 'missing', reason: 'not known' }
    : {
        kind: 'value',
        value: measured,
        unit: isPower ? 'mW' : '%',
        ...(isPower ? {} : { decimals: 1 }),
        ...(judgement.source === null ? {} : efficiencyAddress(judgement.source)),
      };
  const limitText = isPower ? `${String(Math.round(limit * 1e3))} mW` : `${(limit * 100).toFixed(1)} %`;
  return {
    id: `${rule.id}-${String(index + 1)}`,
    cells: [
      { kind: 'text', text: figureWords(judgement) },
      shown,
      { kind: 'text', text: `${limitText}${STANDINGS[standing]}` },
      margin === null ? { kind: 'missing', reason: 'not known' } : { kind: 'text', text: marginWords(margin, isPower) },
      { kind: 'mark', mark: MARKS[verdict], text: verdict },
    ],
  };
}

/** "Average, C1 at 20 V, 230 V line, basic voltage; 0.130 ohm of cable taken off". */
function figureWords({ of, port, settings, line, outputClass, remark, measured }: EfficiencyJudgement): string {
  const at = [port === null ? null : `${port} at ${String(settings)}`, line === null ? null : `${String(line)} V line`, outputClass];
  const words = `${sentenceCase(of)}, ${at.filter((each) => each !== null).join(', ')}`;
  const reason = isMissing(measured) ? measured.reason : null;
  // What the figure lacks may be the reason of the verdict too: each is said once.
  const said = [reason, remark].flatMap((each) => each?.split('; ') ?? []);
  return [words, ...new Set(said)].join('; ');
}

/** "+4.7", or both ends where they differ: "−0.2 to +0.4". */
function marginWords({ low, high }: { readonly low: number; readonly high: number }, isPower: boolean): string {
  const signed = (value: number): string => {
    const text = isPower ? String(Math.round(Math.abs(value) * 1e3)) : Math.abs(value).toFixed(1);
    return `${Number(text) === 0 ? '' : value < 0 ? '−' : '+'}${text}`;
  };
  const [from, to] = [signed(low), signed(high)];
  const unit = isPower ? ' mW' : '';
  return `${from === to ? from : `${from} to ${to}`}${unit}`;
}
