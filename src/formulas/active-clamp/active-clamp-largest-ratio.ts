import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Turns ratio at which the switch of an active-clamp flyback reaches the voltage allowed for it. */
export const activeClampLargestRatio = defineFormula({
  id: 'active-clamp-largest-ratio',
  title: 'Largest turns ratio of an active-clamp flyback',
  subject: 'active-clamp',
  meaning: 'Turns ratio at which the switch of an active-clamp flyback reaches the voltage allowed for it.',
  expression: 'n_{\\max} = \\frac{V_{DS} - V_{\\mathrm{in}} - \\Delta V}{V_{o}}',
  output: { tex: 'n_{\\max}', dimension: 'ratio', meaning: 'largest turns ratio', unit: '1' },
  inputs: {
    allowed: { tex: 'V_{DS}', dimension: 'voltage', meaning: 'voltage allowed for the switch', unit: 'V' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    ripple: { tex: '\\Delta V', dimension: 'voltage', meaning: 'ripple of the clamp', unit: 'V' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
  },
  compute({ allowed, input, ripple, output }) {
    return allowed > input + ripple ? (allowed - input - ripple) / output : Number.NaN;
  },
  validity: ['Highest bulk voltage and highest output voltage.'],
  remarks: ['TIDA-01622 prints 6.87 for a 650 V switch without the allowance that leads to it.'],
  source: cite(PUBLICATIONS.texasActiveClamp, 'eq. 19'),
  examples: [
    {
      source: workedWith('bc: 520 V allowed, 375 V, 10 V, 20.1 V'),
      inputs: { allowed: '520 V', input: '375 V', ripple: '10 V', output: '20.1 V' },
      printed: '6.716',
      kind: 'independent',
    },
  ],
});
