import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Turns ratio at which the rectifier of an active-clamp flyback reaches the voltage allowed for it. */
export const activeClampSmallestRatio = defineFormula({
  id: 'active-clamp-smallest-ratio',
  title: 'Smallest turns ratio of an active-clamp flyback',
  subject: 'active-clamp',
  meaning: 'Turns ratio at which the rectifier of an active-clamp flyback reaches the voltage allowed for it.',
  expression: 'n_{\\min} = \\frac{V_{\\mathrm{in}}}{V_{SR} - V_{o} - \\Delta V}',
  output: { tex: 'n_{\\min}', dimension: 'ratio', meaning: 'smallest turns ratio', unit: '1' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    allowed: { tex: 'V_{SR}', dimension: 'voltage', meaning: 'voltage allowed for the rectifier', unit: 'V' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
    spike: { tex: '\\Delta V', dimension: 'voltage', meaning: 'spike on the rectifier', unit: 'V' },
  },
  compute({ input, allowed, output, spike }) {
    return allowed > output + spike ? input / (allowed - output - spike) : Number.NaN;
  },
  validity: ['Highest bulk voltage and highest output voltage.'],
  remarks: ['TIDA-01622 prints 4.68 for a 150 V rectifier without the allowance that leads to it.'],
  source: cite(PUBLICATIONS.texasActiveClamp, 'eq. 20'),
  examples: [
    {
      source: workedWith('bc: 375 V, 120 V allowed, 20 V, 10 V'),
      inputs: { input: '375 V', allowed: '120 V', output: '20 V', spike: '10 V' },
      printed: '4.167',
      kind: 'independent',
    },
  ],
});
