import { boostInductorRipple } from '../../formulas/buck/boost-inductor-ripple.ts';
import { inductorPeakCurrent } from '../../formulas/buck/inductor-peak-current.ts';
import { inputCurrent } from '../../formulas/mains/input-current.ts';
import { mainsPeak } from '../../formulas/mains/mains-peak.ts';
import { pfcCcmPeakCurrent } from '../../formulas/pfc/pfc-ccm-peak-current.ts';
import { pfcCcmSwitchRms } from '../../formulas/pfc/pfc-ccm-switch-rms.ts';
import { pfcCrmInductorRms } from '../../formulas/pfc/pfc-crm-inductor-rms.ts';
import { pfcCrmPeakCurrent } from '../../formulas/pfc/pfc-crm-peak-current.ts';
import { pfcCrmSwitchRms } from '../../formulas/pfc/pfc-crm-switch-rms.ts';
import { pfcDiodeMean } from '../../formulas/pfc/pfc-diode-mean.ts';
import { CUSTOMARY } from '../../standards/customary-values.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { exact } from '../../values/exact.ts';
import type { Known } from '../../values/value.ts';
import { BUS_SIDE, drawnPower } from './bus-side.ts';
import type { RoleCurrent, StageGiven, StageModel } from './stage-model.ts';
import { currentStress, voltageStress } from './stress.ts';

const CORNER = 'lowest line, full load';

/** Whether the author says that the inductor current never falls to zero. Chargers run critical conduction, so that is the default. */
function isContinuous(given: StageGiven): boolean {
  return /continuous/u.test(given.mode) && !/discontinuous/u.test(given.mode);
}

/** Peak of the inductor and switch current at the crest of the lowest line; the author's own figure first. */
export function pfcPeakCurrent(given: StageGiven): Known<'current'> {
  const own = given.parameter('peak current', 'current', 'high');
  if (own !== null) return own;
  const at = { power: drawnPower(given), rms: given.supply.lowest };
  if (!isContinuous(given)) return applyFormula(pfcCrmPeakCurrent, at);
  const swing = rippleOf(given);
  if (swing !== null) {
    const crest = applyFormula(pfcCcmPeakCurrent, { ...at, ripple: exact('ratio', 0) });
    return applyFormula(inductorPeakCurrent, { current: crest, ripple: swing });
  }
  const { low, nominal, high, reason, source } = CUSTOMARY.inductorRipple;
  return applyFormula(pfcCcmPeakCurrent, { ...at, ripple: assume('ratio', low, nominal, high, reason, source) });
}

/** Ripple of the inductor in continuous conduction at the crest of the lowest line: as given, else from its inductance; null where neither is known. */
function rippleOf(given: StageGiven): Known<'current'> | null {
  const own = given.parameter('ripple current', 'current', 'high');
  if (own !== null) return own;
  const [inductance, frequency] = [given.parameter('L', 'inductance', 'low'), given.parameter('frequency', 'frequency', 'low')];
  if (inductance === null || frequency === null) return null;
  const input = applyFormula(mainsPeak, { rms: given.supply.lowest });
  return applyFormula(boostInductorRipple, { input, output: given.input.highest, inductance, frequency });
}

function switchRms(given: StageGiven): RoleCurrent {
  const at = { rms: given.supply.lowest, bus: given.input.highest };
  const current = isContinuous(given)
    ? applyFormula(pfcCcmSwitchRms, { ...at, power: drawnPower(given) })
    : applyFormula(pfcCrmSwitchRms, { ...at, peak: pfcPeakCurrent(given) });
  return { current, corner: CORNER, places: 1, carrying: 1 };
}

/** In continuous conduction the line current, its ripple left out. */
export function pfcInductorRms(given: StageGiven): RoleCurrent {
  const current = isContinuous(given)
    ? applyFormula(inputCurrent, {
        power: given.power,
        efficiency: given.efficiency,
        powerFactor: exact('ratio', 1),
        voltage: given.supply.lowest,
      })
    : applyFormula(pfcCrmInductorRms, { peak: pfcPeakCurrent(given) });
  return { current, corner: CORNER, places: 1, carrying: 1 };
}

/** Boost PFC: switch and diode block the bus, the inductor carries twice the crest of the line current in critical conduction. */
export const BOOST_PFC_MODEL: StageModel = {
  stresses: {
    ...BUS_SIDE,
    'pfc-switch': (given) => [
      voltageStress('off-state voltage', given.input.highest),
      currentStress('peak current', () => ({ stress: pfcPeakCurrent(given), corner: CORNER })),
    ],
    'synchronous-rectifier': (given) => [voltageStress('off-state voltage', given.input.highest)],
    'pfc-diode': (given) => [
      voltageStress('reverse voltage', given.input.highest),
      currentStress('mean current', () => ({
        stress: applyFormula(pfcDiodeMean, { power: given.power, bus: given.input.lowest }),
        corner: 'full load',
      })),
    ],
    'pfc-inductor': (given) => [currentStress('peak current', () => ({ stress: pfcPeakCurrent(given), corner: CORNER }))],
  },
  operating: (given) => [{ name: 'peak current of the PFC inductor', value: pfcPeakCurrent(given) }],
  rms: { 'pfc-switch': switchRms, 'pfc-inductor': pfcInductorRms },
  assumes: [
    'Critical conduction where no mode is given.',
    'A bus of 380 to 400 V where none is given, and never below the crest of the highest line.',
    'The lowest line is the lowest printed one: a mains 10 % below it makes every current larger by as much.',
    'An inductor ripple of 20 to 50 % in continuous conduction where neither it nor inductance and frequency are given.',
  ],
  refuses: ['Overshoot of the bus at a load step, which comes on top.'],
};
