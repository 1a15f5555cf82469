import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Valley of the voltage on a bulk capacitor without PFC, from the share of the half cycle in which it charges. */
export const bulkMinimumVoltageByDuty = defineFormula({
  id: 'bulk-minimum-voltage-by-duty',
  title: 'Lowest bulk voltage from the charging duty',
  subject: 'bulk',
  meaning: 'Valley of the voltage on a bulk capacitor without PFC, from the share of the half cycle in which it charges.',
  expression: 'V_{\\min} = \\sqrt{2V_{\\mathrm{ac}}^{2} - \\frac{P_{\\mathrm{in}}\\,(1 - D_{\\mathrm{ch}})}{C\\,f_{L}}}',
  output: { tex: 'V_{\\min}', dimension: 'voltage', meaning: 'lowest bulk voltage', unit: 'V' },
  inputs: {
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    frequency: { tex: 'f_{L}', dimension: 'frequency', meaning: 'mains frequency', unit: 'Hz' },
    chargingDuty: { tex: 'D_{\\mathrm{ch}}', dimension: 'ratio', meaning: 'charging duty, about 0.2', unit: '1' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'bulk capacitance', unit: 'µF' },
  },
  compute({ rms, power, frequency, chargingDuty, capacitance }) {
    return Math.sqrt(2 * rms ** 2 - (power * (1 - chargingDuty)) / (capacitance * frequency));
  },
  validity: ['The load draws constant power.', 'Below a capacitance that can carry the half cycle there is no valley above zero.'],
  source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 3'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 3 and appendix step 2, p. 13'),
      inputs: { rms: '85 V', power: '67 W', frequency: '60 Hz', chargingDuty: '0.2', capacitance: '150 µF' },
      printed: '92 V',
      kind: 'published',
    },
  ],
});
