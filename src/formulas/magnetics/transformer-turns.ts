import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Least primary turns for a flux swing at the lowest frequency. */
export const transformerTurns = defineFormula({
  id: 'transformer-turns',
  title: 'Primary turns of an LLC transformer',
  subject: 'magnetics',
  meaning: 'Least primary turns for a flux swing at the lowest frequency.',
  expression: 'N_{p} = \\frac{n\\,V_{o}}{2 f_{\\min}\\,\\Delta B\\,A_{e}}',
  output: { tex: 'N_{p}', dimension: 'ratio', meaning: 'primary turns', unit: '1' },
  inputs: {
    turnsRatio: { tex: 'n', dimension: 'ratio', meaning: 'primary turns over secondary turns', unit: '1' },
    output: { tex: 'V_{o}', dimension: 'voltage', meaning: 'output voltage, with the drop of its rectifier', unit: 'V' },
    frequency: { tex: 'f_{\\min}', dimension: 'frequency', meaning: 'lowest switching frequency', unit: 'kHz' },
    swing: { tex: '\\Delta B', dimension: 'flux density', meaning: 'swing of the flux density', unit: 'mT' },
    area: { tex: 'A_{e}', dimension: 'area', meaning: 'effective area of the core', unit: 'mm²' },
  },
  compute({ turnsRatio, output, frequency, swing, area }) {
    return (turnsRatio * output) / (2 * frequency * swing * area);
  },
  validity: ['Half bridge; the swing is twice the peak.'],
  source: cite(PUBLICATIONS.infineonResonant, 'p. 9, eq. 13'),
  examples: [
    {
      source: cite(PUBLICATIONS.infineonResonant, 'p. 9, eq. 13'),
      inputs: { turnsRatio: '16.5', output: '12.1 V', frequency: '30 kHz', swing: '620 mT', area: '161 mm²' },
      printed: '33',
      kind: 'published',
    },
    {
      source: workedWith('Python'),
      inputs: { turnsRatio: '16.5', output: '12.1 V', frequency: '30 kHz', swing: '620 mT', area: '161 mm²' },
      printed: '33.34',
      kind: 'independent',
    },
  ],
});
