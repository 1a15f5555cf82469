import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Product of rms voltage and rms current: what a printed input of volts and amperes allows the device to draw. */
export const apparentPower = defineFormula({
  id: 'apparent-power',
  title: 'Apparent power',
  subject: 'mains',
  meaning: 'Product of rms voltage and rms current: what a printed input of volts and amperes allows the device to draw.',
  expression: 'S = V\\,I',
  output: { tex: 'S', dimension: 'apparent power', meaning: 'apparent power', unit: 'VA' },
  inputs: {
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'supply voltage, rms', unit: 'V' },
    current: { tex: 'I', dimension: 'current', meaning: 'supply current, rms', unit: 'A' },
  },
  compute({ voltage, current }) {
    return voltage * current;
  },
  validity: [],
  source: cite(PUBLICATIONS.circuitTheory, 'apparent power'),
  examples: [
    {
      source: workedWith('bc, from the volts and amperes measured in Infineon DN 2013-01, table 2'),
      inputs: { voltage: '229.9 V', current: '1.1304 A' },
      printed: '259.879 VA',
      kind: 'independent',
    },
  ],
});
