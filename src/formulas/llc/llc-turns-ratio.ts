import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Turns ratio at which the output is met at resonance. */
export const llcTurnsRatio = defineFormula({
  id: 'llc-turns-ratio',
  title: 'Turns ratio of an LLC half bridge',
  subject: 'llc',
  meaning: 'Turns ratio at which the output is met at resonance.',
  expression: 'n = \\frac{M\\,V_{\\mathrm{in}}}{2\\,V_{o}}',
  output: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
  inputs: {
    gain: { tex: 'M', dimension: 'ratio', meaning: 'gain at resonance: 1 with a separate choke', unit: '1' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'voltage across the half bridge', unit: 'V' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
  },
  compute({ gain, input, output }) {
    return (gain * input) / (2 * output);
  },
  validity: ['Half bridge; a full bridge has twice the ratio.'],
  source: cite(PUBLICATIONS.fairchildResonant, 'eq. 16'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildResonant, 'eq. 16, step 3: 24 V and 0.9 V'),
      inputs: { gain: '1.12', input: '400 V', output: '24.9 V' },
      printed: '9.00',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.infineonResonant, 'p. 7, 2.2.4: 12 V and 0.1 V'),
      inputs: { gain: '1', input: '400 V', output: '12.1 V' },
      printed: '16.5',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasResonant, 'design example, drop left out, 16.25 rounded down'),
      inputs: { gain: '1', input: '390 V', output: '12 V' },
      printed: '16',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 3'),
      inputs: { gain: '1', input: '380 V', output: '48 V' },
      printed: '3.958',
      kind: 'published',
    },
  ],
});
