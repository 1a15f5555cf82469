import { CABLE_DROP, SOURCE_VOLTAGE } from '../../standards/usb-output-limits.ts';
import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Lowest voltage that may rightly be read at the far end of a USB cable. */
export const lowestCableEndVoltage = defineFormula({
  id: 'lowest-cable-end-voltage',
  title: 'Lowest voltage at the end of a USB cable',
  subject: 'cable',
  meaning: 'What may rightly be left at the far end: the port may be 5 % low, and the cable may take 0.75 V.',
  expression: 'V_{\\min} = 0.95\\,V_{0} - 0.75\\,\\mathrm{V}',
  output: { tex: 'V_{\\min}', dimension: 'voltage', meaning: 'lowest voltage at the far end', unit: 'V' },
  inputs: { voltage: { tex: 'V_{0}', dimension: 'voltage', meaning: 'voltage that was asked for', unit: 'V' } },
  compute({ voltage }) {
    return voltage * (1 - SOURCE_VOLTAGE.tolerance) - CABLE_DROP.volts;
  },
  validity: ['Fixed, PPS and AVS supplies of USB PD, at rest.'],
  source: { ...SOURCE_VOLTAGE.source, section: 'Table 7.23, ±5 % at the port; 0.75 V of the cable as quoted in a public source file' },
  examples: [
    { source: workedWith('bc'), inputs: { voltage: '5 V' }, printed: '4.00 V', kind: 'independent' },
    { source: workedWith('bc'), inputs: { voltage: '20 V' }, printed: '18.25 V', kind: 'independent' },
  ],
});
