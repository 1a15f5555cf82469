import { AUXILIARY_RECTIFIER } from './auxiliary-rectifier.ts';
import { BLEED_RESISTOR } from './bleed-resistor.ts';
import { BOOTSTRAP_CAPACITOR } from './bootstrap-capacitor.ts';
import { BRIDGE_RECTIFIER } from './bridge-rectifier.ts';
import { BUCK_SWITCH } from './buck-switch.ts';
import { BULK_CAPACITOR } from './bulk-capacitor.ts';
import { BYPASS_DIODE } from './bypass-diode.ts';
import { CELL } from './cell.ts';
import { CLAMP_CAPACITOR } from './clamp-capacitor.ts';
import { CLAMP_DIODE } from './clamp-diode.ts';
import { CLAMP_RESISTOR } from './clamp-resistor.ts';
import { CLAMP_SWITCH } from './clamp-switch.ts';
import { COMMON_MODE_CHOKE } from './common-mode-choke.ts';
import { CONNECTOR } from './connector.ts';
import { CONTROLLER } from './controller.ts';
import { CURRENT_SENSE_RESISTOR } from './current-sense-resistor.ts';
import { DIFFERENTIAL_CHOKE } from './differential-choke.ts';
import { DIGITAL_ISOLATOR } from './digital-isolator.ts';
import { DISCHARGE_IC } from './discharge-ic.ts';
import { DIVIDER_RESISTOR } from './divider-resistor.ts';
import { FILTER_CAPACITOR } from './filter-capacitor.ts';
import { GATE_DRIVER } from './gate-driver.ts';
import { HEAT_SPREADER } from './heat-spreader.ts';
import { INDUCTOR } from './inductor.ts';
import { INPUT_CAPACITOR } from './input-capacitor.ts';
import { INPUT_FUSE } from './input-fuse.ts';
import { INSULATION_BARRIER } from './insulation-barrier.ts';
import { LOAD_SWITCH } from './load-switch.ts';
import { MICROCONTROLLER } from './microcontroller.ts';
import { NTC_THERMISTOR } from './ntc-thermistor.ts';
import { OPTOCOUPLER } from './optocoupler.ts';
import { OUTPUT_CAPACITOR } from './output-capacitor.ts';
import { PFC_DIODE } from './pfc-diode.ts';
import { PFC_INDUCTOR } from './pfc-inductor.ts';
import { PFC_SWITCH } from './pfc-switch.ts';
import { POTTING } from './potting.ts';
import { PRIMARY_SWITCH } from './primary-switch.ts';
import { PROTECTION_IC } from './protection-ic.ts';
import { PROTOCOL_CONTROLLER } from './protocol-controller.ts';
import { RECTIFIER_DIODE } from './rectifier-diode.ts';
import { REGULATOR } from './regulator.ts';
import { RESONANT_CAPACITOR } from './resonant-capacitor.ts';
import { RESONANT_INDUCTOR } from './resonant-inductor.ts';
import { SHUNT_REFERENCE } from './shunt-reference.ts';
import { SNUBBER_CAPACITOR } from './snubber-capacitor.ts';
import { SNUBBER_RESISTOR } from './snubber-resistor.ts';
import { SUPPLY_CAPACITOR } from './supply-capacitor.ts';
import { SYNCHRONOUS_RECTIFIER } from './synchronous-rectifier.ts';
import { TEMPERATURE_SENSOR } from './temperature-sensor.ts';
import { TRANSFORMER } from './transformer.ts';
import { TRANSIENT_SUPPRESSOR } from './transient-suppressor.ts';
import { TRANSMITTER_COIL } from './transmitter-coil.ts';
import { VARISTOR } from './varistor.ts';
import { X_CAPACITOR } from './x-capacitor.ts';
import { Y_CAPACITOR } from './y-capacitor.ts';
import type { Role, RoleId } from './role.ts';

/** Every part role, in the order in which power usually meets them. */
export const ROLES: readonly Role[] = [
  INPUT_FUSE,
  NTC_THERMISTOR,
  VARISTOR,
  X_CAPACITOR,
  Y_CAPACITOR,
  COMMON_MODE_CHOKE,
  DIFFERENTIAL_CHOKE,
  BLEED_RESISTOR,
  DISCHARGE_IC,
  BRIDGE_RECTIFIER,
  BULK_CAPACITOR,
  FILTER_CAPACITOR,
  PFC_SWITCH,
  PFC_DIODE,
  BYPASS_DIODE,
  PFC_INDUCTOR,
  CONTROLLER,
  GATE_DRIVER,
  PRIMARY_SWITCH,
  CLAMP_SWITCH,
  CLAMP_CAPACITOR,
  CLAMP_DIODE,
  CLAMP_RESISTOR,
  SNUBBER_CAPACITOR,
  SNUBBER_RESISTOR,
  RESONANT_INDUCTOR,
  RESONANT_CAPACITOR,
  TRANSFORMER,
  OPTOCOUPLER,
  DIGITAL_ISOLATOR,
  SHUNT_REFERENCE,
  CURRENT_SENSE_RESISTOR,
  DIVIDER_RESISTOR,
  SUPPLY_CAPACITOR,
  AUXILIARY_RECTIFIER,
  SYNCHRONOUS_RECTIFIER,
  RECTIFIER_DIODE,
  OUTPUT_CAPACITOR,
  INPUT_CAPACITOR,
  BOOTSTRAP_CAPACITOR,
  BUCK_SWITCH,
  INDUCTOR,
  LOAD_SWITCH,
  REGULATOR,
  PROTOCOL_CONTROLLER,
  MICROCONTROLLER,
  TEMPERATURE_SENSOR,
  TRANSIENT_SUPPRESSOR,
  CONNECTOR,
  HEAT_SPREADER,
  POTTING,
  INSULATION_BARRIER,
  CELL,
  PROTECTION_IC,
  TRANSMITTER_COIL,
];

const BY_ID: ReadonlyMap<string, Role> = new Map(ROLES.map((role) => [role.id, role]));

const BY_WORDS: ReadonlyMap<string, Role> = new Map(
  ROLES.flatMap((role) => [role.name, role.id, ...role.alsoCalled].map((words): [string, Role] => [folded(words), role])),
);

/** Declaration of a role; null for an id that is not in the list. */
export function roleOf(id: RoleId): Role | null {
  return BY_ID.get(id) ?? null;
}

/** The role that somebody means by its trade name or another word for it; null where nobody calls a part so. */
export function findRole(words: string): Role | null {
  return BY_WORDS.get(folded(words)) ?? null;
}

/** Every name and other word for a role, for "did you mean". */
export function roleWords(): readonly string[] {
  return ROLES.flatMap((role) => [role.name, ...role.alsoCalled]);
}

/** Letters, digits and single spaces, lower case: "X-Capacitor" and "x capacitor" are one name. */
function folded(words: string): string {
  return words
    .toLowerCase()
    .replace(/[\s_‐-―-]+/gu, ' ')
    .trim();
}
