import { loadCurrent } from '../../formulas/energy/load-current.ts';
import { flybackBoundaryPeak } from '../../formulas/flyback/flyback-boundary-peak.ts';
import { flybackDcmDuty } from '../../formulas/flyback/flyback-dcm-duty.ts';
import { flybackDcmPeakFromPower } from '../../formulas/flyback/flyback-dcm-peak-from-power.ts';
import { flybackDcmSecondaryRms } from '../../formulas/flyback/flyback-dcm-secondary-rms.ts';
import { flybackDuty } from '../../formulas/flyback/flyback-duty.ts';
import { flybackOffDuty } from '../../formulas/flyback/flyback-off-duty.ts';
import { flybackPeakCurrent } from '../../formulas/flyback/flyback-peak-current.ts';
import { rampCurrent } from '../../formulas/flyback/ramp-current.ts';
import { secondaryPeakCurrent } from '../../formulas/flyback/secondary-peak-current.ts';
import { secondaryPulseCurrent } from '../../formulas/flyback/secondary-pulse-current.ts';
import { trapezoidRms } from '../../formulas/flyback/trapezoid-rms.ts';
import { triangleRms } from '../../formulas/flyback/triangle-rms.ts';
import { inputPower } from '../../formulas/mains/input-power.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { reflectedAt } from './reflected.ts';
import { wanted } from './wanted.ts';
import type { Corner, OutputPoint, RoleCurrent, StageGiven } from './stage-model.ts';
import { worstCorner } from './stress.ts';

type Amps = Known<'current'>;

/** How the current of the transformer runs: down to zero with a pause, down to zero and on again at once, or never to zero. */
export type Conduction = 'discontinuous' | 'boundary' | 'continuous';

/** From the mode words; without any the boundary, which quasi-resonant and transition-mode controllers keep at full load. */
export function conductionOf(given: StageGiven): Conduction {
  if (/discontinuous/u.test(given.mode)) return 'discontinuous';
  return /continuous/u.test(given.mode) ? 'continuous' : 'boundary';
}

function corner(given: StageGiven, point: OutputPoint) {
  return {
    power: applyFormula(inputPower, { power: point.power, efficiency: given.efficiency }),
    input: given.input.lowest,
    reflected: reflectedAt(given, point.voltage),
    inductance: wanted(given, 'Lm', 'inductance', 'low'),
    frequency: wanted(given, 'frequency', 'frequency', 'low'),
  };
}

/** Peak primary current at one output and the lowest line. */
export function flybackPeak(given: StageGiven, point: OutputPoint): Amps {
  const { power, input, reflected, inductance, frequency } = corner(given, point);
  switch (conductionOf(given)) {
    case 'discontinuous':
      return applyFormula(flybackDcmPeakFromPower, { power, inductance, frequency });
    case 'boundary':
      return applyFormula(flybackBoundaryPeak, { power, input, reflected });
    case 'continuous':
      return applyFormula(flybackPeakCurrent, {
        power,
        input,
        duty: applyFormula(flybackDuty, { reflected, input }),
        inductance,
        frequency,
      });
  }
}

/** The author's own figure for the peak, else the worst of all outputs. */
export function flybackPeakAtWorst(given: StageGiven): Corner<'current'> {
  const own = given.parameter('peak current', 'current', 'high');
  return own === null ? worstCorner(given, (point) => flybackPeak(given, point)) : { stress: own, corner: null };
}

/** Rms of the primary current, where it is largest. */
export function flybackPrimaryRms(given: StageGiven): RoleCurrent {
  return lowestLine(worstCorner(given, (point) => primaryRms(given, point)));
}

/** Conduction at one output: what is continuous at full load is not at a light one. */
function conductionAt(given: StageGiven, point: OutputPoint): Conduction {
  const conduction = conductionOf(given);
  if (conduction !== 'continuous') return conduction;
  const { middle, rise } = ramp(given, point);
  return !isMissing(middle) && !isMissing(rise) && 2 * middle.nominal < rise.nominal ? 'discontinuous' : 'continuous';
}

/** Primary current while the switch is on, in continuous conduction: its middle and its rise. */
function ramp(given: StageGiven, point: OutputPoint): { readonly duty: Known<'ratio'>; readonly middle: Amps; readonly rise: Amps } {
  const { power, input, reflected, inductance, frequency } = corner(given, point);
  const duty = applyFormula(flybackDuty, { reflected, input });
  return {
    duty,
    middle: applyFormula(secondaryPulseCurrent, { current: applyFormula(loadCurrent, { power, voltage: input }), share: duty }),
    rise: applyFormula(rampCurrent, { voltage: input, duty, inductance, frequency }),
  };
}

function primaryRms(given: StageGiven, point: OutputPoint): Amps {
  const { power, input, reflected, inductance, frequency } = corner(given, point);
  const conduction = conductionAt(given, point);
  if (conduction !== 'continuous') {
    const duty =
      conduction === 'boundary'
        ? applyFormula(flybackDuty, { reflected, input })
        : applyFormula(flybackDcmDuty, { power, inductance, frequency, input });
    return applyFormula(triangleRms, { peak: flybackPeak(given, point), duty });
  }
  return applyFormula(trapezoidRms, ramp(given, point));
}

/** Rms of the secondary current, where it is largest: often not at the highest output voltage. */
export function flybackSecondaryRms(given: StageGiven): RoleCurrent {
  return lowestLine(worstCorner(given, (point) => secondaryRms(given, point)));
}

function secondaryRms(given: StageGiven, point: OutputPoint): Amps {
  const { turnsRatio } = given;
  if (conductionAt(given, point) !== 'continuous') {
    const peak = applyFormula(secondaryPeakCurrent, { turnsRatio, primary: flybackPeak(given, point) });
    return applyFormula(flybackDcmSecondaryRms, { current: point.current, peak });
  }
  const { input, reflected } = corner(given, point);
  const share = applyFormula(flybackOffDuty, { reflected, input });
  const middle = applyFormula(secondaryPulseCurrent, { current: point.current, share });
  const rise = applyFormula(secondaryPeakCurrent, { turnsRatio, primary: ramp(given, point).rise });
  return applyFormula(trapezoidRms, { duty: share, middle, rise });
}

function lowestLine({ stress, corner: at }: Corner<'current'>): RoleCurrent {
  return { current: stress, corner: at === null ? 'lowest line' : `lowest line, ${at}`, places: 1, carrying: 1 };
}
