import { halfBridgeSwitchRms } from '../../formulas/llc/half-bridge-switch-rms.ts';
import { llcCapacitorPeakVoltage } from '../../formulas/llc/llc-capacitor-peak-voltage.ts';
import { llcCentreTapRms } from '../../formulas/llc/llc-centre-tap-rms.ts';
import { llcLoadCurrent } from '../../formulas/llc/llc-load-current.ts';
import { llcMagnetisingCurrentTriangle } from '../../formulas/llc/llc-magnetising-current-triangle.ts';
import { llcPrimaryCurrent } from '../../formulas/llc/llc-primary-current.ts';
import { llcRectifierMean } from '../../formulas/llc/llc-rectifier-mean.ts';
import { llcResonantFrequency } from '../../formulas/llc/llc-resonant-frequency.ts';
import { sinePeakCurrent } from '../../formulas/llc/sine-peak-current.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import type { Known } from '../../values/value.ts';
import { BUS_SIDE } from './bus-side.ts';
import { llcGainCurve } from './llc-gain-curve.ts';
import { llcOperating } from './llc-operating.ts';
import { llcAsks } from './ratio-asks.ts';
import { OUTPUT_SIDE, resonantReverseVoltage } from './secondary-side.ts';
import type { Corner, OutputPoint, StageGiven, StageModel, Stress } from './stage-model.ts';
import { currentStress, voltageAgainstRating, voltageStress, worstCorner } from './stress.ts';
import { wanted } from './wanted.ts';

/** Lowest frequency that was given, else the resonance of the tank. */
function frequencyOf(given: StageGiven): Known<'frequency'> {
  const own = given.parameter('frequency', 'frequency', 'low') ?? given.parameter('resonance', 'frequency', 'low');
  if (own !== null) return own;
  const tank = { inductance: wanted(given, 'Lr', 'inductance', 'high'), capacitance: wanted(given, 'Cr', 'capacitance', 'high') };
  return applyFormula(llcResonantFrequency, tank);
}

/** Rms in primary winding and tank at one output: load and magnetising current at right angles. */
function tankCurrent(given: StageGiven, point: OutputPoint): Known<'current'> {
  const { turnsRatio } = given;
  const load = applyFormula(llcLoadCurrent, { current: point.current, turnsRatio });
  const magnetising = applyFormula(llcMagnetisingCurrentTriangle, {
    turnsRatio,
    output: point.voltage,
    frequency: frequencyOf(given),
    inductance: wanted(given, 'Lm', 'inductance', 'low'),
  });
  return applyFormula(llcPrimaryCurrent, { load, magnetising });
}

function tankPeak(given: StageGiven): Corner<'current'> {
  const own = given.parameter('peak current', 'current', 'high');
  if (own !== null) return { stress: own, corner: null };
  return worstCorner(given, (point) => applyFormula(sinePeakCurrent, { rms: tankCurrent(given, point) }));
}

function switches(given: StageGiven): readonly Stress[] {
  return [voltageStress('off-state voltage', given.input.highest), currentStress('peak current', () => tankPeak(given))];
}

function resonantCapacitor(given: StageGiven): readonly Stress[] {
  const { stress, corner } = worstCorner(given, (point) =>
    applyFormula(llcCapacitorPeakVoltage, {
      input: given.input.highest,
      current: tankCurrent(given, point),
      frequency: frequencyOf(given),
      capacitance: wanted(given, 'Cr', 'capacitance', 'low'),
    }),
  );
  return [voltageStress('peak voltage in normal operation', stress, corner)];
}

function rectifier(given: StageGiven, isDiode: boolean): readonly Stress[] {
  const mean = (): Corner<'current'> => worstCorner(given, ({ current }) => applyFormula(llcRectifierMean, { current }));
  return [voltageStress('reverse voltage', resonantReverseVoltage(given, isDiode)), currentStress('mean current', mean)];
}

/** Half-bridge resonant converter: switches see the bus alone, rectifiers of a centre tap twice the output. */
export const LLC_HALF_BRIDGE_MODEL: StageModel = {
  stresses: {
    ...BUS_SIDE,
    ...OUTPUT_SIDE,
    'primary-switch': switches,
    'clamp-switch': switches,
    'resonant-capacitor': resonantCapacitor,
    'resonant-inductor': (given) => switches(given).slice(1),
    'synchronous-rectifier': (given) => rectifier(given, false),
    'rectifier-diode': (given) => rectifier(given, true),
    // A suppressed overshoot of a switching node that is tied to both rails by the body diodes.
    'clamp-diode': (given) => [voltageAgainstRating('reverse voltage', given.input.highest)],
  },
  asks: llcAsks,
  operating: llcOperating,
  gainCurve: llcGainCurve,
  rms: {
    'primary-switch': (given) => {
      const { stress, corner } = worstCorner(given, (point) => applyFormula(halfBridgeSwitchRms, { current: tankCurrent(given, point) }));
      return { current: stress, corner: corner ?? 'full load', places: 2, carrying: 2 };
    },
    'synchronous-rectifier': (given) => {
      const { stress, corner } = worstCorner(given, ({ current }) => applyFormula(llcCentreTapRms, { current }));
      return { current: stress, corner: corner ?? 'full load', places: 2, carrying: 2 };
    },
  },
  assumes: [
    'The lowest frequency that was given, else the resonance of the tank.',
    'A sine in the tank and a triangle of magnetising current.',
  ],
  refuses: [
    'The reverse voltage of the rectifiers where the turns do not show whether there is a centre tap.',
    'Overload: the resonant capacitor sees more when the current limit acts, and the limit is not known.',
  ],
};
