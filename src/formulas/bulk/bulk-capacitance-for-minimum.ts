import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Capacitance that keeps the bulk voltage without PFC above a floor, with the end of the discharge worked exactly. */
export const bulkCapacitanceForMinimum = defineFormula({
  id: 'bulk-capacitance-for-minimum',
  title: 'Bulk capacitance for a lowest voltage',
  subject: 'bulk',
  meaning: 'Capacitance that keeps the bulk voltage without PFC above a floor, with the end of the discharge worked exactly.',
  expression:
    'C = \\frac{2P_{\\mathrm{in}}\\left(\\frac{1}{4} + \\frac{1}{2\\pi}\\arcsin\\frac{V_{\\min}}{\\sqrt{2}\\,V_{\\mathrm{ac}}}\\right)}{(2V_{\\mathrm{ac}}^{2} - V_{\\min}^{2})\\,f_{L}}',
  output: { tex: 'C', dimension: 'capacitance', meaning: 'bulk capacitance', unit: 'µF' },
  inputs: {
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    floor: { tex: 'V_{\\min}', dimension: 'voltage', meaning: 'lowest bulk voltage', unit: 'V' },
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    frequency: { tex: 'f_{L}', dimension: 'frequency', meaning: 'mains frequency', unit: 'Hz' },
  },
  compute({ rms, floor, power, frequency }) {
    const peak = Math.SQRT2 * rms;
    const cycles = 0.25 + Math.asin(floor / peak) / (2 * Math.PI);
    return (2 * power * cycles) / ((peak ** 2 - floor ** 2) * frequency);
  },
  validity: ['The floor must lie below the crest of the mains.', 'The discharge is taken to begin at the crest.'],
  remarks: [
    'SLUS223F, eq. 9, writes the arc sine over π instead of 2π and so finds 126 µF for its 48 W example; the capacitor discharges for a quarter of the cycle and the arc sine over 2π, which gives 97 µF. Stepping through the cycle in time confirms the form that stands here.',
  ],
  source: cite(PUBLICATIONS.texasPrimaryRegulated, '8.2.2.6, eq. 9'),
  examples: [
    {
      source: workedWith('Python, from the inputs of SLUS223F, 9.2.2.1'),
      inputs: { rms: '85 V', floor: '75 V', power: '56.4706 W', frequency: '47 Hz' },
      printed: '97.272 µF',
      kind: 'independent',
    },
    {
      source: workedWith('time stepping of the mains cycle: 120 µF and 72 W fall to 93.45 V at 90 V 60 Hz'),
      inputs: { rms: '90 V', floor: '93.45 V', power: '72 W', frequency: '60 Hz' },
      printed: '120 µF',
      kind: 'independent',
      allowance: {
        fraction: 0.025,
        reason: 'the steps follow the charging current exactly, so the discharge begins a little after the crest',
      },
    },
  ],
});
