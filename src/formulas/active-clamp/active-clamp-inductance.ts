import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Magnetising inductance for a lowest switching frequency at full load. */
export const activeClampInductance = defineFormula({
  id: 'active-clamp-inductance',
  title: 'Magnetising inductance of an active-clamp flyback',
  subject: 'active-clamp',
  meaning: 'Magnetising inductance for a lowest switching frequency at full load.',
  expression: 'L_{m} = \\frac{D^{2} V_{\\mathrm{in}}^{2}\\,\\eta\\,(1 - K)}{2 P_{o}\\,f_{\\min}}',
  output: { tex: 'L_{m}', dimension: 'inductance', meaning: 'magnetising inductance', unit: 'µH' },
  inputs: {
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty at the lowest bulk voltage', unit: '1' },
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    efficiency: { tex: '\\eta', dimension: 'ratio', meaning: 'efficiency', unit: '%' },
    resonance: { tex: 'K', dimension: 'ratio', meaning: 'share of the period for the resonant swing, 0.05 to 0.06', unit: '1' },
    power: { tex: 'P_{o}', dimension: 'power', meaning: 'output power', unit: 'W' },
    frequency: { tex: 'f_{\\min}', dimension: 'frequency', meaning: 'lowest switching frequency', unit: 'kHz' },
  },
  compute({ duty, input, efficiency, resonance, power, frequency }) {
    return (duty ** 2 * input ** 2 * efficiency * (1 - resonance)) / (2 * power * frequency);
  },
  validity: ['Transition mode.'],
  source: cite(PUBLICATIONS.texasActiveClamp, 'eq. 23'),
  examples: [
    {
      source: workedWith('bc: 0.6, 80 V, 93 %, 0.05, 65 W, 150 kHz'),
      inputs: { duty: '0.6', input: '80 V', efficiency: '0.93', resonance: '0.05', power: '65 W', frequency: '150 kHz' },
      printed: '104.39 µH',
      kind: 'independent',
    },
  ],
});
