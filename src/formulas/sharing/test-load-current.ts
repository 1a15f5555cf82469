import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Current that a port is loaded with at full load of an efficiency test, when it shares its power with other ports. */
export const testLoadCurrent = defineFormula({
  id: 'test-load-current',
  title: 'Test current of a shared port',
  subject: 'sharing',
  meaning: 'Current that a port is loaded with at full load of an efficiency test, when it shares its power with other ports.',
  expression: 'I_{L} = D\\,I',
  output: { tex: 'I_{L}', dimension: 'current', meaning: 'load current', unit: 'A' },
  inputs: {
    factor: { tex: 'D', dimension: 'ratio', meaning: 'load factor', unit: '1' },
    current: { tex: 'I', dimension: 'current', meaning: 'rated current of the port', unit: 'A' },
  },
  compute({ factor, current }) {
    return factor * current;
  },
  validity: [
    'Full load with all ports loaded at once; 75, 50 and 25 % are parts of it.',
    'At the lowest voltage a USB PD port is rated at 2 A, whatever it offers.',
  ],
  source: {
    title: '10 CFR 430 subpart B appendix Z (2022), uniform test method for external power supplies',
    section: 'several outputs: every load current times the derating factor D',
    standing: 'read',
    url: 'https://regulations.justia.com/regulations/fedreg/2022/08/19/2022-15975.html',
  },
  examples: [{ source: workedWith('bc'), inputs: { factor: '0.625', current: '3 A' }, printed: '1.875 A', kind: 'independent' }],
});
