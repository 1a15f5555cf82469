import type { StressRow, Verdict } from '../derived/derived.ts';
import { roleOf } from '../roles/index.ts';
import { SI_UNITS } from '../units/dimension.ts';
import { isMissing, type Known } from '../values/value.ts';
import { mono, numberColumn, plainGroup, rowId, textColumn, valueCell } from './cells.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { counted } from '../units/counted.ts';

const ID = 'stress';
const TITLE = 'Stress against rating';

export const stress: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

/** Ratio at the right end of every bar. */
const STRESS_SCALE = 1.1;

function build({ derived }: TableInput): Table | null {
  if (derived.stress.length === 0) return null;
  return {
    id: ID,
    title: TITLE,
    caption: captionOf(derived.stress),
    columns: [
      textColumn('part', 'Part'),
      textColumn('role', 'Role'),
      textColumn('quantity', 'Stress'),
      numberColumn('stress', 'Value', null),
      numberColumn('rating', 'Rating', null),
      numberColumn('ratio', 'Ratio', '1'),
      textColumn('verdict', 'Verdict'),
    ],
    groups: [plainGroup(derived.stress.map(rowOf))],
    notes: [`${policyWords(derived)} A withheld verdict says what is missing.`],
  };
}

function policyWords({ derating }: TableInput['derived']): string {
  return `Limits of the policy ${derating.id}: ${derating.title}${derating.isOwn ? ', this site’s own' : ''}.`;
}

function captionOf(rows: readonly StressRow[]): string {
  const count = (verdict: Verdict): number => rows.filter((row) => row.verdict === verdict).length;
  const parts = (['over', 'straddles', 'within', 'withheld'] as const).flatMap((verdict) =>
    count(verdict) === 0 ? [] : [`${count(verdict)} ${verdict}`],
  );
  return `${counted(rows.length, 'rating')} against the stress at the worst corner: ${parts.join(', ')}.`;
}

function rowOf(row: StressRow, index: number): Row {
  return {
    id: `${rowId(row.references.join(' '))}-${index + 1}`,
    cells: [
      mono(row.references.join(', ')),
      { kind: 'text', text: roleOf(row.role)?.name ?? row.role },
      { kind: 'text', text: row.quantity },
      inOwnUnit(row.stress),
      inOwnUnit(row.rating),
      ratioCell(row),
      { kind: 'mark', mark: row.verdict, text: verdictText(row) },
    ],
  };
}

function inOwnUnit(known: Known): Cell {
  return isMissing(known) ? { kind: 'missing', reason: known.reason } : valueCell(known, SI_UNITS[known.dimension]);
}

function ratioCell({ ratio, limit }: StressRow): Cell {
  if (isMissing(ratio)) return { kind: 'missing', reason: ratio.reason };
  const tick = limit === null ? null : limit / STRESS_SCALE;
  return { kind: 'value', value: ratio, decimals: 2, bar: { fraction: Math.min(1, ratio.nominal / STRESS_SCALE), tick, style: 'filled' } };
}

/** The limit stands with the verdict: "over 0.80". */
export function verdictText({ verdict, limit }: Pick<StressRow, 'verdict' | 'limit'>): string {
  return verdict === 'withheld' || limit === null ? verdict : `${verdict} ${limit.toFixed(2)}`;
}
