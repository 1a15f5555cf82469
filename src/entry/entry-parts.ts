import type { DataPath } from '../diagnostics/finding.ts';
import type { RoleId } from '../roles/role.ts';
import type { StageKind } from '../stages/stage-kind.ts';
import type { Rating } from '../units/quantity.ts';
import type { EntryEvidence, Fact, MadeBy } from './entry-facts.ts';

export interface Stage {
  /** The author's name for it: "main", "out C1". */
  readonly id: string;
  readonly kind: StageKind;
  /** Mode words: "critical conduction", "quasi-resonant". */
  readonly mode: string | null;
  readonly parameters: Readonly<Record<string, Fact>>;
  /** Turns of the windings, primary first, where given. */
  readonly turns: readonly number[];
  /** How the turns are known. */
  readonly turnsEvidence: EntryEvidence;
  /** The ratio as somebody stated or measured it, beside or instead of the turns; null where not given. */
  readonly turnsRatio: TurnsRatio | null;
  /** How the core of a forward converter is reset; null where not given. */
  readonly reset: CoreReset | null;
  /** Cells of a battery pack: 4S2P is 4 in series, 2 in parallel. */
  readonly cells: { readonly series: number; readonly parallel: number } | null;
  /** Ports or stages it feeds; empty means the next stage. */
  readonly feeds: readonly string[];
  readonly alsoStated: readonly string[];
  readonly note: string | null;
  readonly path: DataPath;
}

/** Primary over secondary: as a number, or by the voltages of two windings under test. */
export type TurnsRatio =
  | { readonly by: 'ratio'; readonly ratio: Fact<'ratio'> }
  | { readonly by: 'winding voltages'; readonly primary: Fact<'voltage'>; readonly secondary: Fact<'voltage'> };

/** What takes the core of a forward converter back to where it began, in each cycle. */
export interface CoreReset {
  readonly by: 'winding' | 'RCD' | 'active clamp' | 'two switches' | 'resonance';
  /** Turns of the reset winding; null where not counted. */
  readonly turns: number | null;
  /** Primary turns to reset turns, where they are stated as a ratio: "1:1". */
  readonly ratio: readonly [primary: number, reset: number] | null;
  readonly written: string;
  readonly evidence: EntryEvidence;
  readonly path: DataPath;
}

type Fitting = 'fitted' | 'not fitted' | 'absent' | 'unknown';

/** One identified part, or several equal ones named in one key. */
export interface Part {
  /** All references of the key: ["Q2", "Q3"]. */
  readonly references: readonly string[];
  readonly role: RoleId;
  /** Stage under which it stands, or "case" and "elsewhere" for parts of no stage. */
  readonly stage: string;
  readonly alsoIn: readonly string[];
  readonly maker: string | null;
  readonly number: string | null;
  readonly marking: string | null;
  readonly package: string | null;
  readonly technology: string | null;
  readonly rating: Rating | null;
  readonly evidence: EntryEvidence;
  /** Pieces per reference: the count of the rating, or the count field. */
  readonly count: number;
  /** How several pieces are connected; `separate` where each stands for itself, one for each phase or port. */
  readonly arrangement: 'single' | 'parallel' | 'series' | 'separate';
  readonly fitting: Fitting;
  /** What the part itself measured, beside what is marked on it. */
  readonly measured: Rating | null;
  readonly alsoStated: readonly string[];
  readonly datasheet: string | null;
  readonly note: string | null;
  /** Fields that the part's own fact sheet gave, where the entry left them out; absent where there are none. */
  readonly fromFactSheet?: readonly string[];
  /** What made its measured values. */
  readonly madeBy?: MadeBy;
  readonly path: DataPath;
}

export interface InsulationPlace {
  readonly id: string;
  readonly between: string | null;
  readonly kind: 'functional' | 'basic' | 'supplementary' | 'reinforced' | null;
  readonly clearance: Fact<'length'> | null;
  readonly creepage: Fact<'length'> | null;
  readonly slot: Fact<'length'> | null;
  readonly thickness: Fact<'length'> | null;
  readonly sheet: boolean | null;
  readonly workingVoltage: Fact<'voltage'> | null;
  readonly withstand: Fact<'voltage'> | null;
  readonly materialGroup: 'I' | 'II' | 'IIIa' | 'IIIb' | null;
  readonly pollutionDegree: 1 | 2 | 3 | null;
  readonly altitude: Fact<'length'> | null;
  readonly method: string | null;
  readonly alsoStated: readonly string[];
  readonly note: string | null;
  readonly path: DataPath;
}
