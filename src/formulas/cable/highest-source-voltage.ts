import { SOURCE_VOLTAGE } from '../../standards/usb-output-limits.ts';
import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Upper edge of the band in which a USB PD source holds its voltage. */
export const highestSourceVoltage = defineFormula({
  id: 'highest-source-voltage',
  title: 'Highest voltage at a USB PD port',
  subject: 'cable',
  meaning: 'Upper edge of the band in which a source holds its voltage.',
  expression: 'V_{\\max} = 1.05\\,V_{0}',
  output: { tex: 'V_{\\max}', dimension: 'voltage', meaning: 'highest voltage at the port', unit: 'V' },
  inputs: { voltage: { tex: 'V_{0}', dimension: 'voltage', meaning: 'voltage that was asked for', unit: 'V' } },
  compute({ voltage }) {
    return voltage * (1 + SOURCE_VOLTAGE.tolerance);
  },
  validity: ['Fixed, PPS and AVS supplies of USB PD, at rest.'],
  source: SOURCE_VOLTAGE.source,
  examples: [
    { source: workedWith('bc: 12 V and 5 %'), inputs: { voltage: '12 V' }, printed: '12.60 V', kind: 'independent' },
    { source: workedWith('bc: 28 V and 5 %'), inputs: { voltage: '28 V' }, printed: '29.40 V', kind: 'independent' },
  ],
});
