import { CUSTOMARY } from '../../standards/customary-values.ts';
import { assume } from '../../values/assume.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { StageGiven, StageModel, Stress } from './stage-model.ts';
import { voltageAgainstRating, voltageStress } from './stress.ts';

/** Highest steady voltage of a 12 V vehicle; a supply that is printed for more is a 24 V one. */
const TWELVE_VOLT_VEHICLE = 16;

/**
 * What a load dump leaves at the input: what the suppressor lets through where there is one, else the suppressed pulse of a 12 V
 * vehicle. Nothing is said for 24 V vehicles, whose pulse the maker of the vehicle specifies.
 */
function loadDump(given: StageGiven): Known<'voltage'> {
  if (given.suppressor !== null) {
    return missing(`what ${given.suppressor} lets through in a load dump is not known`, [`clamping voltage of ${given.suppressor}`]);
  }
  if (!isMissing(given.supply.highest) && given.supply.highest.nominal > TWELVE_VOLT_VEHICLE) {
    return missing('the load dump of a 24 V vehicle is as its maker specifies', ['load-dump test of the vehicle']);
  }
  const { low, nominal, high, reason, source } = CUSTOMARY.suppressedLoadDump;
  return assume('voltage', low, nominal, high, reason, source);
}

function steadyAndTransient(quantity: string, given: StageGiven): readonly Stress[] {
  const steady = voltageStress(quantity, given.output.highest, 'highest input');
  if (!isVehicle(given)) return [steady];
  const jump = jumpStart(given);
  const dump = voltageAgainstRating('voltage in a load dump', loadDump(given));
  return jump === null ? [steady, dump] : [steady, voltageAgainstRating('voltage in a jump start', jump), dump];
}

/** What a car charger hangs on, and whatever else its author says so of; a USB or laboratory input is none. */
function isVehicle(given: StageGiven): boolean {
  return given.supply.isVehicle || /load.dump|vehicle|reverse/u.test(given.mode) || given.suppressor !== null;
}

/** A 12 V vehicle may be started from a 24 V one; null where the input is made for as much anyway. */
function jumpStart(given: StageGiven): Known<'voltage'> | null {
  const { low, nominal, high, reason, source } = CUSTOMARY.jumpStart;
  const { highest } = given.output;
  return isMissing(highest) || highest.nominal >= nominal ? null : assume('voltage', low, nominal, high, reason, source);
}

/** Direct input: its parts stand the highest input until it shuts down, and in a vehicle the transients. */
export const DC_INPUT_MODEL: StageModel = {
  stresses: {
    'input-capacitor': (given) => steadyAndTransient('voltage', given),
    'load-switch': (given) => steadyAndTransient('off-state voltage', given),
    'rectifier-diode': (given) => [voltageStress('reverse voltage', given.output.highest, 'reversed poles')],
  },
  operating: (given) => [
    { name: 'highest input voltage', value: given.output.highest },
    { name: 'lowest input voltage', value: given.output.lowest },
  ],
  assumes: [
    'The input rises to the voltage at which the block shuts down, where that is given.',
    'A car charger hangs on a vehicle; another direct input where its mode or a suppressor says so.',
    'A suppressed load dump of 35 V and a jump start of 24 V in a 12 V vehicle, from memory.',
  ],
  refuses: ['What a suppressor lets through, without its clamping voltage.', 'The load dump of a 24 V vehicle.'],
};
