import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Angle for which a rectifier with a capacitor conducts in each cycle, in radians. */
export const conductionAngle = defineFormula({
  id: 'conduction-angle',
  title: 'Conduction angle of a peak rectifier',
  subject: 'bulk',
  meaning: 'Angle for which a rectifier with a capacitor conducts in each cycle, in radians.',
  expression: '\\varphi = \\sqrt{\\frac{2V_{r}}{V_{p}}}',
  output: { tex: '\\varphi', dimension: 'ratio', meaning: 'conduction angle, rad', unit: '1' },
  inputs: {
    crest: { tex: 'V_{p}', dimension: 'voltage', meaning: 'crest voltage', unit: 'V' },
    ripple: { tex: 'V_{r}', dimension: 'voltage', meaning: 'ripple, peak to peak', unit: 'V' },
  },
  compute({ crest, ripple }) {
    return Math.sqrt((2 * ripple) / crest);
  },
  validity: ['The ripple is small against the crest.'],
  source: cite(PUBLICATIONS.sedraTextbook, 'example 3.9, p. 181'),
  examples: [
    {
      source: cite(PUBLICATIONS.sedraTextbook, 'example 3.9, p. 181'),
      inputs: { crest: '100 V', ripple: '2 V' },
      printed: '0.2',
      kind: 'published',
    },
  ],
});
