import { ACTIVE_CLAMP_FLYBACK } from './active-clamp-flyback.ts';
import { ASYMMETRICAL_HALF_BRIDGE_FLYBACK } from './asymmetrical-half-bridge-flyback.ts';
import { BATTERY_PACK } from './battery-pack.ts';
import { BOOST } from './boost.ts';
import { BOOST_PFC } from './boost-pfc.ts';
import { BUCK } from './buck.ts';
import { BUCK_BOOST } from './buck-boost.ts';
import { BULK_CAPACITOR } from './bulk-capacitor.ts';
import { DC_INPUT } from './dc-input.ts';
import { FLYBACK } from './flyback.ts';
import { FORWARD } from './forward.ts';
import { INPUT_FILTER } from './input-filter.ts';
import { LINEAR } from './linear.ts';
import { LLC_HALF_BRIDGE } from './llc-half-bridge.ts';
import { PORT_CONTROL } from './port-control.ts';
import { RECTIFIER } from './rectifier.ts';
import { SECONDARY_RECTIFIER } from './secondary-rectifier.ts';
import { TOTEM_POLE_PFC } from './totem-pole-pfc.ts';
import { WIRELESS_TRANSMITTER } from './wireless-transmitter.ts';
import type { StageDeclaration, StageKind } from './stage-kind.ts';

/** Every topology block, in the order in which power usually meets them. */
export const STAGES: readonly StageDeclaration[] = [
  INPUT_FILTER,
  DC_INPUT,
  RECTIFIER,
  BULK_CAPACITOR,
  BOOST_PFC,
  TOTEM_POLE_PFC,
  FLYBACK,
  ACTIVE_CLAMP_FLYBACK,
  ASYMMETRICAL_HALF_BRIDGE_FLYBACK,
  LLC_HALF_BRIDGE,
  FORWARD,
  SECONDARY_RECTIFIER,
  BUCK,
  BOOST,
  BUCK_BOOST,
  LINEAR,
  BATTERY_PACK,
  WIRELESS_TRANSMITTER,
  PORT_CONTROL,
];

const BY_KIND: ReadonlyMap<string, StageDeclaration> = new Map(STAGES.map((stage) => [stage.kind, stage]));

const BY_WORDS: ReadonlyMap<string, StageDeclaration> = new Map(
  STAGES.flatMap((stage) =>
    [stage.name, stage.kind, ...stage.alsoCalled].map((words): [string, StageDeclaration] => [folded(words), stage]),
  ),
);

/** Declaration of a kind; null for a kind that is not in the list. */
export function stageOf(kind: StageKind): StageDeclaration | null {
  return BY_KIND.get(kind) ?? null;
}

/** The block that somebody means by its trade name or another word for it; null where nobody calls a block so. */
export function findStage(words: string): StageDeclaration | null {
  return BY_WORDS.get(folded(words)) ?? null;
}

/** Every name and other word for a block, for "did you mean". */
export function stageWords(): readonly string[] {
  return STAGES.flatMap((stage) => [stage.name, ...stage.alsoCalled]);
}

/** Every parameter key that some block declares, once. */
export const STAGE_PARAMETER_KEYS: readonly string[] = [...new Set(STAGES.flatMap((stage) => stage.parameters.map(({ key }) => key)))];

/** What a parameter is, for the schema that editors read; blocks that share a key share its meaning. */
export function parameterMeaning(key: string): string {
  for (const stage of STAGES) {
    const parameter = stage.parameters.find((candidate) => candidate.key === key);
    if (parameter !== undefined) return `${parameter.meaning}.`;
  }
  return '';
}

/** Letters, digits and single spaces, lower case: "LLC half-bridge" and "llc half bridge" are one name. */
function folded(words: string): string {
  return words
    .toLowerCase()
    .replace(/[\s_‐-―-]+/gu, ' ')
    .trim();
}
