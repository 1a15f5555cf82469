import type { Part } from '../entry/entry.ts';
import { ageingOf } from '../standards/class-2-ceramic.ts';
import { dielectricRange } from '../units/dielectric-code.ts';
import type { Quantity } from '../units/quantity.ts';

/** Tolerance where none is marked: that of an ordinary electrolytic capacitor (common practice). */
const USUAL_TOLERANCE = 0.2;

/** A value as marked on a part, beside the same as a meter found it. */
export interface MarkedAndMeasured {
  readonly references: readonly string[];
  readonly marked: Quantity;
  readonly measured: Quantity;
  /** Measured less marked, for the marked; the interval of what was measured, as far as it was written. */
  readonly deviation: { readonly low: number; readonly nominal: number; readonly high: number };
  /** What the marking allows to either side, as shares: 0.2 and 0.2; 0.2 and 0.8 for a lopsided one. */
  readonly tolerance: { readonly below: number; readonly above: number; readonly isMarked: boolean };
  /** Code of a class 2 ceramic, whose value falls with direct voltage and age; null for any other part. */
  readonly class2: { readonly code: string; readonly ageing: number } | null;
  /** Direct voltage on it while it was measured, as written; null where none is said. */
  readonly bias: string | null;
  readonly verdict: 'within' | 'straddles' | 'outside';
}

/** Capacitance, resistance and inductance of a part, marked against measured; a marking without a measurement has no verdict. */
export function markedAndMeasured(part: Part): readonly MarkedAndMeasured[] {
  const { rating, measured, references } = part;
  if (rating === null || measured === null) return [];
  const bias = measured.quantities.find(({ dimension }) => dimension === 'voltage')?.written ?? null;
  const code = rating.marks.find(({ kind }) => kind === 'dielectric')?.text ?? null;
  const class2 = code === null || dielectricRange(code) === null ? null : { code, ageing: ageingOf(code) };
  return measured.quantities.flatMap((found) => {
    const marked = rating.quantities.find(({ dimension }) => dimension === found.dimension);
    if (marked === undefined || !isValue(found) || !(marked.nominal > 0)) return [];
    const share = (number: number): number => number / marked.nominal - 1;
    const deviation = { low: share(found.low ?? found.nominal), nominal: share(found.nominal), high: share(found.high ?? found.nominal) };
    const tolerance = toleranceOf(marked);
    return [{ references, marked, measured: found, deviation, tolerance, class2, bias, verdict: verdictOf(deviation, tolerance) }];
  });
}

/** A rated voltage or current is a limit and not a value that a meter would find. */
function isValue({ dimension }: Quantity): boolean {
  return dimension === 'capacitance' || dimension === 'resistance' || dimension === 'inductance';
}

function toleranceOf({ low, nominal, high }: Quantity): MarkedAndMeasured['tolerance'] {
  const [below, above] = [(nominal - (low ?? nominal)) / nominal, ((high ?? nominal) - nominal) / nominal];
  if (below > 0 || above > 0) return { below: Math.max(below, 0), above: Math.max(above, 0), isMarked: true };
  return { below: USUAL_TOLERANCE, above: USUAL_TOLERANCE, isMarked: false };
}

function verdictOf(
  { low, high }: MarkedAndMeasured['deviation'],
  { below, above }: MarkedAndMeasured['tolerance'],
): MarkedAndMeasured['verdict'] {
  const slack = 1e-9;
  if (low >= -below - slack && high <= above + slack) return 'within';
  return high < -below - slack || low > above + slack ? 'outside' : 'straddles';
}
