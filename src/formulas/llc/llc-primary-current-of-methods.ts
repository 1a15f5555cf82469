import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Middle of what three papers give for the rms current in primary winding and tank; the interval runs over all of them. */
export const llcPrimaryCurrentOfMethods = defineFormula({
  id: 'llc-primary-current-of-methods',
  title: 'Primary current of an LLC by three methods',
  subject: 'llc',
  meaning: 'Middle of what three papers give for the rms current in primary winding and tank; the interval runs over all of them.',
  expression: 'I_{r} = \\tfrac{1}{3}\\left(I_{\\perp} + I_{\\eta} + I_{R}\\right)',
  output: { tex: 'I_{r}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    rightAngles: {
      tex: 'I_{\\perp}',
      dimension: 'current',
      meaning: 'load and magnetising current at right angles (Texas Instruments SLUP263)',
      unit: 'A',
    },
    withLoss: { tex: 'I_{\\eta}', dimension: 'current', meaning: 'with the loss counted in (Fairchild AN-4151)', unit: 'A' },
    resistive: { tex: 'I_{R}', dimension: 'current', meaning: 'tank taken as resistive at the lowest bus (Infineon ICE2HS01G)', unit: 'A' },
  },
  compute({ rightAngles, withLoss, resistive }) {
    return (rightAngles + withLoss + resistive) / 3;
  },
  validity: ['A method whose inputs are not known is left out of the mean and of the range.'],
  remarks: ['On the design of AN-4151 they give 1.24, 1.32 and 1.33 A; it measured a peak of 1.93 A, which is 1.36 A of a sine.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 23, beside SLUP263 and the ICE2HS01G design guide'),
  examples: [
    {
      source: workedWith('bc, on the design of AN-4151'),
      inputs: { rightAngles: '1.237 A', withLoss: '1.318 A', resistive: '1.328 A' },
      printed: '1.294 A',
      kind: 'independent',
    },
  ],
});
