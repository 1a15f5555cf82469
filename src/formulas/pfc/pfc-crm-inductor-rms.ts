import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Rms over the mains cycle of the triangular inductor current. */
export const pfcCrmInductorRms = defineFormula({
  id: 'pfc-crm-inductor-rms',
  title: 'Inductor rms current of a critical-conduction PFC',
  subject: 'pfc',
  meaning: 'Rms over the mains cycle of the triangular inductor current.',
  expression: 'I_{L} = \\frac{\\hat{I}_{L}}{\\sqrt{6}}',
  output: { tex: 'I_{L}', dimension: 'current', meaning: 'rms current', unit: 'A' },
  inputs: {
    peak: { tex: '\\hat{I}_{L}', dimension: 'current', meaning: 'peak current at the crest', unit: 'A' },
  },
  compute({ peak }) {
    return peak / Math.sqrt(6);
  },
  validity: ['Critical conduction.'],
  source: cite(PUBLICATIONS.texasTransitionPfc, 'p. 24, eq. 10'),
  examples: [
    { source: cite(PUBLICATIONS.texasTransitionPfc, 'p. 24, eq. 10'), inputs: { peak: '5.4254 A' }, printed: '2.2 A', kind: 'published' },
    {
      source: workedWith('numerical integration over the mains cycle'),
      inputs: { peak: '5.425 A' },
      printed: '2.21475 A',
      kind: 'independent',
    },
  ],
});
