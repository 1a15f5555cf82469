import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Power that a running port loses when one more device is plugged in. */
export const powerDrop = defineFormula({
  id: 'power-drop',
  title: 'Fall of a port',
  subject: 'sharing',
  meaning: 'Power that a running port loses when one more device is plugged in.',
  expression: 'P_{d} = P_{\\mathrm{before}} - P_{\\mathrm{after}}',
  output: { tex: 'P_{d}', dimension: 'power', meaning: 'fall', unit: 'W' },
  inputs: {
    before: { tex: 'P_{\\mathrm{before}}', dimension: 'power', meaning: 'share before', unit: 'W' },
    after: { tex: 'P_{\\mathrm{after}}', dimension: 'power', meaning: 'share after', unit: 'W' },
  },
  compute({ before, after }) {
    return before - after;
  },
  validity: ['Both shares are those of one port; a pool after it is the most that the port can still get.'],
  source: { title: 'Definition', section: 'difference of powers', standing: 'common practice' },
  examples: [{ source: workedWith('bc'), inputs: { before: '60 W', after: '37.5 W' }, printed: '22.5 W', kind: 'independent' }],
});
