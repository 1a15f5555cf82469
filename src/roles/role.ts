import type { Dimension } from '../units/dimension.ts';

/** Part class, the name by which derating policies know it. */
export type PartClass =
  | 'fuse'
  | 'thermistor'
  | 'varistor'
  | 'safety capacitor'
  | 'film capacitor'
  | 'ceramic capacitor'
  | 'aluminium electrolytic'
  | 'polymer capacitor'
  | 'capacitor'
  | 'magnetic'
  | 'resistor'
  | 'rectifier'
  | 'transistor'
  | 'integrated circuit'
  | 'isolator'
  | 'mechanical'
  | 'cell'
  | 'sensor';

/** Kebab-case id of a part role, equal to its file stem in this folder. */
export type RoleId = string;

/** What a part does in its stage, declared once. */
export interface Role {
  readonly id: RoleId;
  /** Trade name, lower case: "bulk capacitor". */
  readonly name: string;
  /** Other words the trade uses for it. */
  readonly alsoCalled: readonly string[];
  readonly partClass: PartClass;
  /** Dimension of a bare number in its rating ("470" in a resistor row), null where a bare number is refused. */
  readonly bareNumber: Dimension | null;
  /** What its rating usually holds. */
  readonly rates: readonly Dimension[];
  /** Plausible span of each, SI, outside of which a slip is likely; with the reason. */
  readonly plausible: readonly { readonly dimension: Dimension; readonly low: number; readonly high: number; readonly reason: string }[];
  readonly meaning: string;
  /** A rating line that shows how it is written. */
  readonly example: string;
}
