import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Voltage of a secondary winding while it delivers: the output and the drop of its rectifier. */
export const windingVoltage = defineFormula({
  id: 'winding-voltage',
  title: 'Winding voltage',
  subject: 'rectifier',
  meaning: 'Voltage of a secondary winding while it delivers: the output and the drop of its rectifier.',
  expression: 'V_{w} = V_{o} + V_{F}',
  output: { tex: 'V_{w}', dimension: 'voltage', meaning: 'voltage of the winding', unit: 'V' },
  inputs: {
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage', unit: 'V' },
    drop: { tex: 'V_{F}', dimension: 'voltage', meaning: 'drop of the rectifier', unit: 'V' },
  },
  compute({ output, drop }) {
    return output + drop;
  },
  validity: ['The drops of winding and board are left out.'],
  source: { title: 'Definition', section: 'output and drop in series', standing: 'common practice' },
  examples: [
    {
      source: workedWith('bc, from the 24 V and 0.7 V of MAXREFDES1085'),
      inputs: { output: '24 V', drop: '0.7 V' },
      printed: '24.7 V',
      kind: 'independent',
    },
  ],
});
