import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Duty at which the winding, averaged over a cycle, gives the output. */
export const forwardDuty = defineFormula({
  id: 'forward-duty',
  title: 'Duty of a forward converter',
  subject: 'forward',
  meaning: 'Duty at which the winding, averaged over a cycle, gives the output.',
  expression: 'D = \\frac{n\\,V_{o}}{V_{\\mathrm{in}}}',
  output: { tex: 'D', dimension: 'ratio', meaning: 'duty of the primary switch', unit: '1' },
  inputs: {
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
  },
  compute({ turnsRatio, output, input }) {
    return (turnsRatio * output) / input;
  },
  validity: ['Continuous current in the output inductor.', 'Above 1 the output cannot be reached at this input.'],
  remarks: ['The upper switch of an asymmetrical half-bridge flyback follows the same relation.'],
  source: { title: 'Forward converter', section: 'volt-seconds of the output inductor', standing: 'common practice' },
  examples: [
    {
      source: workedWith('Python: 5.6 to 1, 12.5 V, 200 V'),
      inputs: { turnsRatio: '5.6', output: '12.5 V', input: '200 V' },
      printed: '0.350',
      kind: 'independent',
    },
  ],
});
