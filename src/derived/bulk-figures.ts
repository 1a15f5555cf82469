import type { Entry, Part } from '../entry/entry.ts';
import { storedEnergy } from '../formulas/bulk/stored-energy.ts';
import { rcDischargeTime } from '../formulas/capacitor/rc-discharge-time.ts';
import { CUSTOMARY } from '../standards/customary-values.ts';
import { SAFE_VOLTAGE } from '../standards/stored-energy-cautions.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { assume } from '../values/assume.ts';
import { missing } from '../values/missing.ts';
import { isMissing, type Known } from '../values/value.ts';
import { bleedResistance } from './bleed-resistance.ts';
import { bulkCapacitance } from './bulk-capacitance.ts';
import type { BulkFigures, InputFigures } from './derived.ts';
import { assumed, edgeValue, isOf } from './fact-value.ts';
import { fittedParts } from './fitted-parts.ts';
import { largest } from './offered.ts';
import { hasPfc, PFC_KINDS } from './stage-kinds.ts';

const DIRECT = 'no bulk capacitor: the input is direct';

/** The bulk capacitor as a store: capacitance, voltage, energy, and the time to a safe voltage through the known way down. */
export function bulkFigures(entry: Entry, input: InputFigures): BulkFigures {
  const parts = fittedParts(entry, 'bulk-capacitor');
  const capacitance = capacitanceOf(entry, parts);
  const voltage = parts.length === 0 && isDirect(entry) ? missing(DIRECT) : bulkVoltage(entry, input);
  const bleed = isMissing(capacitance) && parts.length === 0 ? missing(capacitance.reason, capacitance.needs) : bleedResistance(entry);
  const end = assume(
    'voltage',
    SAFE_VOLTAGE.volts,
    SAFE_VOLTAGE.volts,
    SAFE_VOLTAGE.volts,
    'voltage taken as safe to touch',
    SAFE_VOLTAGE.source,
  );
  return {
    references: parts.flatMap((part) => part.references),
    capacitance,
    voltage,
    energy: applyFormula(storedEnergy, { capacitance, voltage }),
    bleed,
    timeToSafe: applyFormula(rcDischargeTime, { resistance: bleed, capacitance, start: voltage, end }),
  };
}

function capacitanceOf(entry: Entry, parts: readonly Part[]): Known<'capacitance'> {
  if (parts.length > 0) return bulkCapacitance(parts);
  return isDirect(entry) ? missing(DIRECT) : missing('no bulk capacitor among the parts', ['bulk capacitor']);
}

/**
 * Voltage that the bulk capacitor is charged to: the bus that a PFC stage or a bulk stage gives, else the customary bus of a
 * PFC, else the crest of the supply; never below that crest, which charges it whatever the PFC does.
 */
function bulkVoltage(entry: Entry, input: InputFigures): Known<'voltage'> {
  const bus = givenBus(entry) ?? (hasPfc(entry) ? assumed('voltage', CUSTOMARY.pfcBus) : null);
  return (bus === null ? null : largest([bus, input.peak])) ?? input.peak;
}

function givenBus(entry: Entry): Known<'voltage'> | null {
  const first = entry.stages.find((stage) => PFC_KINDS.includes(stage.kind) && isOf(stage.parameters['bus'], 'voltage'));
  const stage = first ?? entry.stages.find((candidate) => isOf(candidate.parameters['bus'], 'voltage'));
  const bus = stage?.parameters['bus'];
  return isOf(bus, 'voltage') ? edgeValue(bus, 'high', bus.path.join('.')) : null;
}

function isDirect(entry: Entry): boolean {
  return entry.nameplate.input?.kind === 'DC';
}
