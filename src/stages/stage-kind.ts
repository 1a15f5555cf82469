import type { Dimension } from '../units/dimension.ts';
import type { RoleId } from '../roles/role.ts';
import type { StageModel } from './models/stage-model.ts';

/** Kebab-case id of a topology block, equal to its file stem in this folder. */
export type StageKind = string;

export interface StageParameter {
  /** Word in the entry: "bus", "Lr", "frequency". */
  readonly key: string;
  readonly dimension: Dimension;
  readonly meaning: string;
}

/** One topology block of the power path, declared once. */
export interface StageDeclaration {
  readonly kind: StageKind;
  /** Trade name, as entries write it: "LLC half bridge". */
  readonly name: string;
  readonly alsoCalled: readonly string[];
  /** Short word for the topology line of the title block; null for blocks that do not distinguish a family (input filter). */
  readonly short: string | null;
  /** Where it stands: before the barrier, across it, after it, or not isolated at all. */
  readonly side: 'primary' | 'barrier' | 'secondary' | 'none';
  readonly modes: readonly string[];
  readonly parameters: readonly StageParameter[];
  /** Roles it can hold. */
  readonly roles: readonly RoleId[];
  /** Short role words that mean something here: `switch` in a boost PFC is the PFC switch. */
  readonly shortRoles: Readonly<Record<string, RoleId>>;
  /** What it is and why designers choose it, own words. */
  readonly meaning: string;
  /** Stresses and operating values; a block without one gets no verdict. */
  readonly model?: StageModel;
}
