import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Valley of the voltage on a bulk capacitor without PFC, from the time for which the bridge conducts. */
export const bulkMinimumVoltage = defineFormula({
  id: 'bulk-minimum-voltage',
  title: 'Lowest bulk voltage',
  subject: 'bulk',
  meaning: 'Valley of the voltage on a bulk capacitor without PFC, from the time for which the bridge conducts.',
  expression: 'V_{\\min} = \\sqrt{2V_{\\mathrm{ac}}^{2} - \\frac{2P_{\\mathrm{in}}}{C}\\left(\\frac{1}{2f_{L}} - t_{c}\\right)}',
  output: { tex: 'V_{\\min}', dimension: 'voltage', meaning: 'lowest bulk voltage', unit: 'V' },
  inputs: {
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    frequency: { tex: 'f_{L}', dimension: 'frequency', meaning: 'mains frequency', unit: 'Hz' },
    conduction: { tex: 't_{c}', dimension: 'time', meaning: 'conduction time of the bridge in each half cycle, about 3 ms', unit: 'ms' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'bulk capacitance', unit: 'µF' },
  },
  compute({ rms, power, frequency, conduction, capacitance }) {
    return Math.sqrt(2 * rms ** 2 - (2 * power * (1 / (2 * frequency) - conduction)) / capacitance);
  },
  validity: ['The load draws constant power.', 'Below a capacitance that can carry the half cycle there is no valley above zero.'],
  source: cite(PUBLICATIONS.powerIntegrationsAn17, 'p. 8'),
  examples: [
    {
      source: cite(PUBLICATIONS.powerIntegrationsAn17, 'p. 8: 15 W at 80 %, 85 V'),
      inputs: { rms: '85 V', power: '18.75 W', frequency: '60 Hz', conduction: '3.2 ms', capacitance: '33 µF' },
      printed: '93 V',
      kind: 'published',
    },
  ],
});
