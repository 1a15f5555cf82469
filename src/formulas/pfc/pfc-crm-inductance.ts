import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Boost inductance for a lowest switching frequency in critical conduction, one phase. */
export const pfcCrmInductance = defineFormula({
  id: 'pfc-crm-inductance',
  title: 'Inductance of a critical-conduction PFC',
  subject: 'pfc',
  meaning: 'Boost inductance for a lowest switching frequency in critical conduction, one phase.',
  expression: 'L = \\frac{V_{\\mathrm{ac}}^{2}\\,(V_{o} - \\sqrt{2}\\,V_{\\mathrm{ac}})}{2 P_{\\mathrm{in}}\\,f_{\\min}\\,V_{o}}',
  output: { tex: 'L', dimension: 'inductance', meaning: 'inductance', unit: 'µH' },
  inputs: {
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    bus: { tex: 'V_{o}', dimension: 'voltage', meaning: 'voltage of the bus', unit: 'V' },
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    frequency: { tex: 'f_{\\min}', dimension: 'frequency', meaning: 'lowest switching frequency at the crest', unit: 'kHz' },
  },
  compute({ rms, bus, power, frequency }) {
    return bus > Math.SQRT2 * rms ? (rms ** 2 * (bus - Math.SQRT2 * rms)) / (2 * power * frequency * bus) : Number.NaN;
  },
  turningPoints({ bus }) {
    return { rms: (Math.SQRT2 * bus) / 3 };
  },
  validity: ['Critical conduction; one phase with its own power.'],
  remarks: ['The lowest frequency lies at the highest line for a bus below about 405 V, at the lowest line above.'],
  source: cite(PUBLICATIONS.fairchildBoundaryPfc, 'eq. 6, p. 5'),
  examples: [
    {
      source: cite(PUBLICATIONS.texasTransitionPfc, 'p. 24, eq. 8: one of two phases, 150 W at 92 %'),
      inputs: { rms: '85 V', bus: '390 V', power: '163.043 W', frequency: '45 kHz' },
      printed: '340 µH',
      kind: 'published',
      allowance: { fraction: 0.001, reason: 'the source rounds its result to ten microhenries' },
    },
    {
      source: cite(PUBLICATIONS.fairchildBoundaryPfc, 'p. 9, eq. 6: one channel, 200 W at 95 %'),
      inputs: { rms: '265 V', bus: '400 V', power: '210.526 W', frequency: '52 kHz' },
      printed: '202 µH',
      kind: 'published',
    },
  ],
});
