import type { DataPath } from '../diagnostics/finding.ts';
import type { PartClass, Role } from '../roles/role.ts';
import type { Rating } from '../units/quantity.ts';
import type { Part } from './entry.ts';
import type { ReadingContext } from './reading-context.ts';
import { atValue, readingFinding } from './reading-rules.ts';

/** Parts that are as often in series as in parallel, so that the author is asked; several of another kind stand in parallel. */
const EITHER_WAY: ReadonlySet<PartClass> = new Set<PartClass>(['resistor', 'cell', 'safety capacitor']);

/** Pieces under each reference and how they are connected; several without a word are taken as parallel, said where it may not be so. */
export function countOf(
  context: ReadingContext,
  role: Role,
  path: DataPath,
  rating: Rating | null,
  count: number | undefined,
  arrangement: Part['arrangement'] | undefined,
): Pick<Part, 'count' | 'arrangement'> {
  const pieces = count ?? rating?.count ?? 1;
  if (pieces > 1 && arrangement === undefined && EITHER_WAY.has(role.partClass)) {
    const message = `${pieces} pieces are taken as connected in parallel.`;
    context.findings.push(
      readingFinding('value-remark', atValue(path), message, { advice: 'Say arrangement: parallel or arrangement: series.' }),
    );
  }
  return { count: pieces, arrangement: arrangement ?? (pieces > 1 ? 'parallel' : 'single') };
}
