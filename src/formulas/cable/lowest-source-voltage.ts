import { SOURCE_VOLTAGE } from '../../standards/usb-output-limits.ts';
import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Lower edge of the band in which a USB PD source holds its voltage at its own receptacle. */
export const lowestSourceVoltage = defineFormula({
  id: 'lowest-source-voltage',
  title: 'Lowest voltage at a USB PD port',
  subject: 'cable',
  meaning: 'Lower edge of the band in which a source holds its voltage at its own receptacle.',
  expression: 'V_{\\min} = 0.95\\,V_{0}',
  output: { tex: 'V_{\\min}', dimension: 'voltage', meaning: 'lowest voltage at the port', unit: 'V' },
  inputs: { voltage: { tex: 'V_{0}', dimension: 'voltage', meaning: 'voltage that was asked for', unit: 'V' } },
  compute({ voltage }) {
    return voltage * (1 - SOURCE_VOLTAGE.tolerance);
  },
  validity: ['Fixed, PPS and AVS supplies of USB PD, at rest.'],
  source: SOURCE_VOLTAGE.source,
  examples: [
    { source: workedWith('bc: 12 V less 5 %'), inputs: { voltage: '12 V' }, printed: '11.40 V', kind: 'independent' },
    { source: workedWith('bc: 20 V less 5 %'), inputs: { voltage: '20 V' }, printed: '19.00 V', kind: 'independent' },
  ],
});
