import { voltageWithMargin } from '../../formulas/flyback/voltage-with-margin.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { BUS_SIDE } from './bus-side.ts';
import { flybackPeakAtWorst, flybackPrimaryRms, flybackSecondaryRms } from './flyback-currents.ts';
import { flybackOperating } from './flyback-operating.ts';
import { clampAbove, flybackReverse, flybackSwitch } from './flyback-voltages.ts';
import { flybackAsks } from './ratio-asks.ts';
import { OUTPUT_SIDE } from './secondary-side.ts';
import type { StageGiven, StageModel, Stress } from './stage-model.ts';
import { currentStress, voltageWithAllowance, voltageStress, worstCorner } from './stress.ts';

/** Allowance for ringing that a maker's design puts on the reverse voltage of a diode. */
function withRinging(given: StageGiven): Stress {
  const source = { title: 'Maxim MAXREFDES1085 rev. 0 (2019)', section: 'secondary diode selection', standing: 'read' } as const;
  const margin = assume('ratio', 1.25, 1.25, 1.25, 'a quarter of the reverse voltage for ringing', source);
  const stress = applyFormula(voltageWithMargin, { margin, voltage: flybackReverse(given) });
  return voltageWithAllowance('reverse voltage with a quarter for ringing', stress, 'highest line');
}

/** Current stresses of the primary switch, shared by the flyback family. */
export function primaryPeak(given: StageGiven): Stress {
  return currentStress('peak current', () => {
    const { stress, corner } = flybackPeakAtWorst(given);
    return { stress, corner: corner === null ? null : `lowest line, ${corner}` };
  });
}

/** Mean current of an output rectifier: the output current. */
export function rectifierMean(given: StageGiven): Stress {
  return currentStress('mean current', () => worstCorner(given, ({ current }) => current));
}

/** Flyback with a passive clamp: the switch stands the bus, the reflected output and a spike that four papers reckon in four ways. */
export const FLYBACK_MODEL: StageModel = {
  stresses: {
    ...BUS_SIDE,
    ...OUTPUT_SIDE,
    'primary-switch': (given) => [flybackSwitch(given), primaryPeak(given)],
    'clamp-switch': (given) => [flybackSwitch(given)],
    'clamp-diode': (given) => [flybackSwitch(given, 'reverse voltage')],
    'clamp-capacitor': (given) => [voltageStress('voltage', clampAbove(given))],
    'synchronous-rectifier': (given) => [voltageStress('reverse voltage', flybackReverse(given), 'highest line')],
    'rectifier-diode': (given) => [
      voltageStress('reverse voltage', flybackReverse(given), 'highest line'),
      withRinging(given),
      rectifierMean(given),
    ],
  },
  asks: flybackAsks,
  operating: flybackOperating,
  rms: { 'primary-switch': flybackPrimaryRms, 'synchronous-rectifier': flybackSecondaryRms },
  assumes: [
    'Operation at the boundary of continuous conduction where no mode is given.',
    'The lowest line is the lowest printed one: a mains 10 % below it makes every current larger by as much.',
    'Without a known clamp or spike, the range over four published methods.',
  ],
  refuses: [
    'Reflected voltage and everything that follows where neither turns nor reflected voltage are given.',
    'Ringing of a synchronous rectifier.',
  ],
};
