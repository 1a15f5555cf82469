import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Highest voltage across the clamp capacitor, with the swing that leakage and capacitor make around the reflected voltage. */
export const clampCapacitorPeakVoltage = defineFormula({
  id: 'clamp-capacitor-peak-voltage',
  title: 'Peak voltage of the clamp capacitor',
  subject: 'active-clamp',
  meaning: 'Highest voltage across the clamp capacitor, with the swing that leakage and capacitor make around the reflected voltage.',
  expression: "\\hat{V}_{c} = V_{r} + \\frac{\\hat{I}\\,\\sqrt{L_{k}/C}}{\\sin\\left(\\dfrac{D'}{2 f \\sqrt{L_{k} C}}\\right)}",
  output: { tex: '\\hat{V}_{c}', dimension: 'voltage', meaning: 'peak voltage of the capacitor', unit: 'V' },
  inputs: {
    reflected: { tex: 'V_{r}', dimension: 'voltage', meaning: 'reflected voltage', unit: 'V' },
    peak: { tex: '\\hat{I}', dimension: 'current', meaning: 'primary current when the main switch opens', unit: 'A' },
    leakage: { tex: 'L_{k}', dimension: 'inductance', meaning: 'leakage inductance, primary', unit: 'µH' },
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'clamp capacitance', unit: 'nF' },
    share: { tex: "D'", dimension: 'ratio', meaning: 'share of the period in which the clamp conducts', unit: '1' },
    frequency: { tex: 'f', dimension: 'frequency', meaning: 'switching frequency', unit: 'kHz' },
  },
  compute({ reflected, peak, leakage, capacitance, share, frequency }) {
    const half = share / (2 * frequency * Math.sqrt(leakage * capacitance));
    return half > 0 && half < Math.PI ? reflected + (peak * Math.sqrt(leakage / capacitance)) / Math.sin(half) : Number.NaN;
  },
  validity: [
    'The clamp conducts for the whole off-time, for less than one period of leakage and capacitor; its charge is balanced.',
    'The capacitor is tied to the bus; one that is tied to ground stands the bus on top.',
  ],
  source: cite(
    PUBLICATIONS.circuitTheory,
    'derived from the two equations of leakage and clamp capacitor while the clamp conducts; the tests integrate them step by step',
  ),
  examples: [
    {
      source: workedWith('numerical integration in Python, charge balanced by bisection: 120 V, 3 A, 2 µH, 140 nF, 60 % of 200 kHz'),
      inputs: { reflected: '120 V', peak: '3 A', leakage: '2 µH', capacitance: '140 nF', share: '0.6', frequency: '200 kHz' },
      printed: '157.54 V',
      kind: 'independent',
    },
  ],
});
