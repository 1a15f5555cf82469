import { halfBridgeSwitchRms } from '../../formulas/llc/half-bridge-switch-rms.ts';
import { llcCapacitorOverloadVoltage } from '../../formulas/llc/llc-capacitor-overload-voltage.ts';
import { llcCapacitorPeakVoltage } from '../../formulas/llc/llc-capacitor-peak-voltage.ts';
import { llcCentreTapRms } from '../../formulas/llc/llc-centre-tap-rms.ts';
import { llcRectifierMean } from '../../formulas/llc/llc-rectifier-mean.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import type { Known } from '../../values/value.ts';
import { BUS_SIDE } from './bus-side.ts';
import { frequencyOf, tankCurrent, tankCurrentMethods, tankPeak } from './llc-currents.ts';
import { llcGainCurve } from './llc-gain-curve.ts';
import { llcOperating } from './llc-operating.ts';
import { llcAsks } from './ratio-asks.ts';
import { OUTPUT_SIDE, resonantReverseVoltage, secondaryOf } from './secondary-side.ts';
import type { Corner, RoleCurrent, StageGiven, StageModel, Stress } from './stage-model.ts';
import { currentStress, voltageAgainstRating, voltageStress, worstCorner } from './stress.ts';
import { wanted } from './wanted.ts';

function switches(given: StageGiven): readonly Stress[] {
  return [voltageStress('off-state voltage', given.input.highest), peak(given)];
}

function peak(given: StageGiven): Stress {
  const isOwn = given.parameter('peak current', 'current', 'high') !== null;
  return { ...currentStress('peak current', () => tankPeak(given)), methods: isOwn ? [] : tankCurrentMethods(given) };
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
  const normal = { ...voltageStress('peak voltage in normal operation', stress, corner), methods: tankCurrentMethods(given) };
  const limit = given.parameter('current limit', 'current', 'high');
  return limit === null ? [normal] : [normal, atCurrentLimit(given, limit)];
}

/** An overload swings the capacitor as far as the current limit lets it, for moments. */
function atCurrentLimit(given: StageGiven, limit: Known<'current'>): Stress {
  const stress = applyFormula(llcCapacitorOverloadVoltage, {
    input: given.input.highest,
    limit,
    frequency: given.parameter('lowest frequency', 'frequency', 'low') ?? frequencyOf(given),
    capacitance: wanted(given, 'Cr', 'capacitance', 'low'),
  });
  return voltageAgainstRating('peak voltage at the current limit', stress, 'overload, lowest frequency');
}

function rectifier(given: StageGiven, isDiode: boolean): readonly Stress[] {
  const mean = (): Corner<'current'> => worstCorner(given, ({ current }) => applyFormula(llcRectifierMean, { current }));
  return [voltageStress('reverse voltage', resonantReverseVoltage(given, isDiode)), currentStress('mean current', mean)];
}

/** Each rectifier carries one half wave, two of them behind a centre tap and four in a bridge, where two stand in its way at a time. */
function rectifierRms(given: StageGiven): RoleCurrent {
  const secondary = secondaryOf(given);
  const legs = secondary === 'full bridge' ? 4 : 2;
  const { stress, corner } = worstCorner(given, ({ current }) => applyFormula(llcCentreTapRms, { current }));
  const unknown = missing(`whether the secondary of ${given.id} has a centre tap is not known`, [`turns of ${given.id}`]);
  return { current: secondary === null ? unknown : stress, corner: corner ?? 'full load', places: legs, carrying: legs };
}

/** Half-bridge resonant converter: switches see the bus alone, rectifiers of a centre tap twice the output. */
export const LLC_HALF_BRIDGE_MODEL: StageModel = {
  stresses: {
    ...BUS_SIDE,
    ...OUTPUT_SIDE,
    'primary-switch': switches,
    'clamp-switch': switches,
    'resonant-capacitor': resonantCapacitor,
    'resonant-inductor': (given) => [peak(given)],
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
    'synchronous-rectifier': rectifierRms,
  },
  assumes: [
    'The lowest frequency that was given, else the resonance of the tank.',
    'A sine in the tank and a triangle of magnetising current; published methods for its rms, as a range.',
    'A choke of its own, unless Lp says that the leakage of the transformer resonates, shared equally by both sides.',
  ],
  refuses: [
    'The reverse voltage of the rectifiers where the turns do not show whether there is a centre tap.',
    'Overload, unless the current limit is given: the resonant capacitor sees more when it acts.',
  ],
};
