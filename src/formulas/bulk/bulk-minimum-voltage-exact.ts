import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Valley of the voltage on a bulk capacitor without PFC, where the falling voltage meets the next rising half wave. */
export const bulkMinimumVoltageExact = defineFormula({
  id: 'bulk-minimum-voltage-exact',
  title: 'Lowest bulk voltage, end of discharge worked exactly',
  subject: 'bulk',
  meaning: 'Valley of the voltage on a bulk capacitor without PFC, where the falling voltage meets the next rising half wave.',
  expression:
    '2V_{\\mathrm{ac}}^{2} - V_{\\min}^{2} = \\frac{2P_{\\mathrm{in}}}{C\\,f_{L}}\\left(\\frac{1}{4} + \\frac{1}{2\\pi}\\arcsin\\frac{V_{\\min}}{\\sqrt{2}\\,V_{\\mathrm{ac}}}\\right)',
  output: { tex: 'V_{\\min}', dimension: 'voltage', meaning: 'lowest bulk voltage', unit: 'V' },
  inputs: {
    rms: { tex: 'V_{\\mathrm{ac}}', dimension: 'voltage', meaning: 'mains voltage, rms', unit: 'V' },
    power: { tex: 'P_{\\mathrm{in}}', dimension: 'power', meaning: 'power drawn from the mains: output power over efficiency', unit: 'W' },
    frequency: { tex: 'f_{L}', dimension: 'frequency', meaning: 'mains frequency', unit: 'Hz' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'bulk capacitance', unit: 'µF' },
  },
  compute({ rms, power, frequency, capacitance }) {
    const peak = Math.SQRT2 * rms;
    const surplus = (share: number): number =>
      1 - share ** 2 - (2 * power * (0.25 + Math.asin(share) / (2 * Math.PI))) / (capacitance * frequency * peak ** 2);
    if (!(surplus(0) > 0)) return Number.NaN;
    let low = 0;
    let high = 1;
    for (let step = 0; step < 60; step += 1) {
      const middle = (low + high) / 2;
      if (surplus(middle) > 0) low = middle;
      else high = middle;
    }
    return low * peak;
  },
  validity: ['The load draws constant power.', 'Without a meeting point above zero the capacitor is too small and there is no result.'],
  remarks: [
    'SLUS223F, eq. 9, writes the arc sine over π instead of 2π and so finds 126 µF for its 48 W example; the capacitor discharges for a quarter of the cycle and the arc sine over 2π, which gives 97 µF. Stepping through the cycle in time confirms the form that stands here.',
  ],
  source: cite(PUBLICATIONS.texasPrimaryRegulated, '8.2.2.6, eq. 9, solved for the voltage'),
  examples: [
    {
      source: workedWith('time stepping of the mains cycle, constant power'),
      inputs: { rms: '90 V', power: '72 W', frequency: '60 Hz', capacitance: '120 µF' },
      printed: '93.45 V',
      kind: 'independent',
      allowance: { fraction: 0.01, reason: 'the discharge is taken to begin at the crest, the steps begin it a little later' },
    },
    {
      source: workedWith('time stepping of the mains cycle, constant power'),
      inputs: { rms: '115 V', power: '72 W', frequency: '60 Hz', capacitance: '120 µF' },
      printed: '135.7 V',
      kind: 'independent',
      allowance: { fraction: 0.005, reason: 'the discharge is taken to begin at the crest, the steps begin it a little later' },
    },
    {
      source: workedWith('time stepping of the mains cycle, constant power'),
      inputs: { rms: '230 V', power: '72 W', frequency: '50 Hz', capacitance: '120 µF' },
      printed: '308.3 V',
      kind: 'independent',
      allowance: { fraction: 0.002, reason: 'the discharge is taken to begin at the crest, the steps begin it a little later' },
    },
  ],
});
