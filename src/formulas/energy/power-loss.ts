import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Power that stays in a device or a stage as heat. */
export const powerLoss = defineFormula({
  id: 'power-loss',
  title: 'Loss',
  subject: 'energy',
  meaning: 'Power that stays in a device or a stage as heat.',
  expression: 'P_{d} = P_{\\mathrm{in}} - P_{o}',
  output: { tex: 'P_{d}', dimension: 'power', meaning: 'loss', unit: 'W' },
  inputs: {
    input: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn', unit: 'W' },
    output: { tex: 'P_{o}', dimension: 'power', meaning: 'power delivered', unit: 'W' },
  },
  compute({ input, output }) {
    return input - output;
  },
  validity: ['Both at the same moment; nothing is stored or taken from a store between them.'],
  remarks: ['The difference of two close powers: a meter good to 0.2 % on 100 W leaves 0.4 W of doubt on the loss.'],
  source: { title: 'Definition', section: 'difference of powers', standing: 'common practice' },
  examples: [{ source: workedWith('bc'), inputs: { input: '107.3 W', output: '100.1 W' }, printed: '7.2 W', kind: 'independent' }],
});
