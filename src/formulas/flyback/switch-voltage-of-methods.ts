import { defineFormula } from '../../values/define-formula.ts';
import { workedWith } from '../publications.ts';

/** Middle of what four papers give for the highest voltage of a flyback switch; the interval runs from the lowest to the highest of them. */
export const switchVoltageOfMethods = defineFormula({
  id: 'switch-voltage-of-methods',
  title: 'Switch voltage by four methods',
  subject: 'flyback',
  meaning:
    'Middle of what four papers give for the highest voltage of a flyback switch; the interval runs from the lowest to the highest of them.',
  expression: 'V_{DS} = \\tfrac{1}{4}\\left(V_{\\mathrm{clamp}} + V_{50} + V_{30} + V_{2.5}\\right)',
  output: { tex: 'V_{DS}', dimension: 'voltage', meaning: 'highest voltage', unit: 'V' },
  inputs: {
    clampAnalysis: {
      tex: 'V_{\\mathrm{clamp}}',
      dimension: 'voltage',
      meaning: 'by the clamp’s own balance (Fairchild AN-4137)',
      unit: 'V',
    },
    halfOvershoot: {
      tex: 'V_{50}',
      dimension: 'voltage',
      meaning: 'with half of the reflected voltage on top (Texas Instruments SLVAFK6)',
      unit: 'V',
    },
    bulkAllowance: {
      tex: 'V_{30}',
      dimension: 'voltage',
      meaning: 'with 30 % of the bulk voltage on top (Texas Instruments SLUS223F)',
      unit: 'V',
    },
    clampMultiple: {
      tex: 'V_{2.5}',
      dimension: 'voltage',
      meaning: 'with a clamp at 2.5 times the reflected voltage (Maxim MAXREFDES1085)',
      unit: 'V',
    },
  },
  compute({ clampAnalysis, halfOvershoot, bulkAllowance, clampMultiple }) {
    return (clampAnalysis + halfOvershoot + bulkAllowance + clampMultiple) / 4;
  },
  validity: [
    'Flyback with a passive clamp; an active clamp leaves no free spike.',
    'A method whose inputs are not known is left out of the mean and of the range.',
  ],
  remarks: [
    'Four papers reckon the same spike in four ways; on one design of 375 V and 85 V they give 502 to 587 V. The sheet shows their range, with each named.',
  ],
  source: { title: 'Four published methods side by side', section: 'AN-4137, SLVAFK6, SLUS223F, MAXREFDES1085', standing: 'read' },
  examples: [
    {
      source: workedWith('bc, on the design of AN-4137'),
      inputs: { clampAnalysis: '547.5 V', halfOvershoot: '502.5 V', bulkAllowance: '572.5 V', clampMultiple: '587.5 V' },
      printed: '552.5 V',
      kind: 'independent',
    },
  ],
});
