import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Cross-section of a wire given in circular mils. */
export const circularMilArea = defineFormula({
  id: 'circular-mil-area',
  title: 'Area of a wire in circular mils',
  subject: 'wire',
  meaning: 'Cross-section of a wire given in circular mils.',
  expression: 'A = 5.06707\\cdot10^{-10}\\,\\mathrm{m^{2}}\\;N',
  output: { tex: 'A', dimension: 'area', meaning: 'cross-section', unit: 'mm²' },
  inputs: {
    mils: { tex: 'N', dimension: 'ratio', meaning: 'circular mils', unit: '1' },
  },
  compute({ mils }) {
    return 5.06707e-10 * mils;
  },
  validity: ['Copper without its enamel.'],
  remarks: ['The row for AWG 17 prints 13.39 where its own circular mils give 10.40.'],
  source: cite(PUBLICATIONS.rectifierFlybackTransformer, 'section 6, p. 16'),
  examples: [
    {
      source: cite(PUBLICATIONS.rectifierFlybackTransformer, 'p. 16, AWG 20'),
      inputs: { mils: '1024' },
      printed: '0.5188 mm²',
      kind: 'published',
      allowance: { fraction: 0.0001, reason: 'the source multiplies by 5.067 and cuts off' },
    },
    {
      source: cite(PUBLICATIONS.rectifierFlybackTransformer, 'p. 16, AWG 22'),
      inputs: { mils: '640.1' },
      printed: '0.3243 mm²',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.rectifierFlybackTransformer, 'p. 16, AWG 24'),
      inputs: { mils: '404' },
      printed: '0.2047 mm²',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.rectifierFlybackTransformer, 'p. 16, AWG 26'),
      inputs: { mils: '252.8' },
      printed: '0.1280 mm²',
      kind: 'published',
      allowance: { fraction: 0.0005, reason: 'the source multiplies by 5.067 and cuts off' },
    },
    {
      source: cite(PUBLICATIONS.rectifierFlybackTransformer, 'p. 16, AWG 28'),
      inputs: { mils: '158.8' },
      printed: '0.08046 mm²',
      kind: 'published',
      allowance: { fraction: 0.0001, reason: 'the source multiplies by 5.067 and cuts off' },
    },
    {
      source: cite(PUBLICATIONS.rectifierFlybackTransformer, 'p. 16, AWG 30'),
      inputs: { mils: '100' },
      printed: '0.05067 mm²',
      kind: 'published',
    },
  ],
});
