import type { Formula } from '../values/formula.ts';
import { ACTIVE_CLAMP_FORMULAS } from './active-clamp/index.ts';
import { BUCK_FORMULAS } from './buck/index.ts';
import { BULK_FORMULAS } from './bulk/index.ts';
import { CABLE_FORMULAS } from './cable/index.ts';
import { CAPACITOR_FORMULAS } from './capacitor/index.ts';
import { ENERGY_FORMULAS } from './energy/index.ts';
import { FLYBACK_FORMULAS } from './flyback/index.ts';
import { FORWARD_FORMULAS } from './forward/index.ts';
import { GEOMETRY_FORMULAS } from './geometry/index.ts';
import { HALF_BRIDGE_FLYBACK_FORMULAS } from './half-bridge-flyback/index.ts';
import { LIFE_FORMULAS } from './life/index.ts';
import { LLC_FORMULAS } from './llc/index.ts';
import { LOSS_FORMULAS } from './loss/index.ts';
import { MAGNETICS_FORMULAS } from './magnetics/index.ts';
import { MAINS_FORMULAS } from './mains/index.ts';
import { MEASUREMENT_FORMULAS } from './measurement/index.ts';
import { PFC_FORMULAS } from './pfc/index.ts';
import { PROTECTION_FORMULAS } from './protection/index.ts';
import { RECTIFIER_FORMULAS } from './rectifier/index.ts';
import { RESISTOR_FORMULAS } from './resistor/index.ts';
import { SENSE_FORMULAS } from './sense/index.ts';
import { SHARING_FORMULAS } from './sharing/index.ts';
import { STRESS_FORMULAS } from './stress/index.ts';
import { THERMAL_FORMULAS } from './thermal/index.ts';
import { WIRE_FORMULAS } from './wire/index.ts';

/** Every formula, by subject folder and then by name; each folder lists its own. A test compares the lists with the folders. */
export const FORMULAS: readonly Formula[] = [
  ...ACTIVE_CLAMP_FORMULAS,
  ...BUCK_FORMULAS,
  ...BULK_FORMULAS,
  ...CABLE_FORMULAS,
  ...CAPACITOR_FORMULAS,
  ...ENERGY_FORMULAS,
  ...FLYBACK_FORMULAS,
  ...FORWARD_FORMULAS,
  ...GEOMETRY_FORMULAS,
  ...HALF_BRIDGE_FLYBACK_FORMULAS,
  ...LIFE_FORMULAS,
  ...LLC_FORMULAS,
  ...LOSS_FORMULAS,
  ...MAGNETICS_FORMULAS,
  ...MAINS_FORMULAS,
  ...MEASUREMENT_FORMULAS,
  ...PFC_FORMULAS,
  ...PROTECTION_FORMULAS,
  ...RECTIFIER_FORMULAS,
  ...RESISTOR_FORMULAS,
  ...SENSE_FORMULAS,
  ...SHARING_FORMULAS,
  ...STRESS_FORMULAS,
  ...THERMAL_FORMULAS,
  ...WIRE_FORMULAS,
];

/** The formula with this id, which an origin or a page address names; null where there is none. */
export function formulaOf(id: string): Formula | null {
  return FORMULAS.find((formula) => formula.id === id) ?? null;
}
