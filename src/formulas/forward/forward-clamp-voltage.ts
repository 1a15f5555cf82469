import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Voltage to which an active clamp settles above the input, so that the core is reset in the rest of the cycle. */
export const forwardClampVoltage = defineFormula({
  id: 'forward-clamp-voltage',
  title: 'Clamp voltage of an active-clamp forward',
  subject: 'forward',
  meaning: 'Voltage to which an active clamp settles above the input, so that the core is reset in the rest of the cycle.',
  expression: 'V_{c} = \\frac{D}{1 - D}\\,V_{\\mathrm{in}}',
  output: { tex: 'V_{c}', dimension: 'voltage', meaning: 'voltage over the clamp, above the input', unit: 'V' },
  inputs: {
    input: { tex: 'V_{\\mathrm{in}}', dimension: 'voltage', meaning: 'bulk voltage', unit: 'V' },
    duty: { tex: 'D', dimension: 'ratio', meaning: 'duty of the primary switch', unit: '1' },
  },
  compute({ input, duty }) {
    return duty < 1 ? (input * duty) / (1 - duty) : Number.NaN;
  },
  validity: ['A duty below 1; the ripple of the clamp capacitor is left out.'],
  remarks: ['The switch sees the input and this, which is the input over what is left of the cycle: it is lowest at a duty of one half.'],
  source: { title: 'Active-clamp forward', section: 'volt-seconds of the transformer', standing: 'common practice' },
  examples: [{ source: workedWith('Python: 48 V, 0.4'), inputs: { input: '48 V', duty: '0.4' }, printed: '32.0 V', kind: 'independent' }],
});
