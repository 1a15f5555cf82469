import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Width of a board track for a current and a rise of its temperature. */
export const traceWidth = defineFormula({
  id: 'trace-width',
  title: 'Width of a track',
  subject: 'wire',
  meaning: 'Width of a board track for a current and a rise of its temperature.',
  expression: 'w = \\frac{1}{t}\\left(\\frac{I}{k\\,\\Delta T^{0.44}}\\right)^{1/0.725}',
  output: { tex: 'w', dimension: 'length', meaning: 'width', unit: 'mm' },
  inputs: {
    current: { tex: 'I', dimension: 'current', meaning: 'current', unit: 'A' },
    rise: { tex: '\\Delta T', dimension: 'temperature difference', meaning: 'rise of the temperature', unit: 'K' },
    factor: { tex: 'k', dimension: 'ratio', meaning: '0.048 on an outer, 0.024 on an inner layer', unit: '1' },
    thickness: { tex: 't', dimension: 'length', meaning: 'thickness of the copper', unit: 'µm' },
  },
  compute({ current, rise, factor, thickness }) {
    const squareMils = (current / (factor * rise ** 0.44)) ** (1 / 0.725);
    return (squareMils * 25.4e-6 ** 2) / thickness;
  },
  validity: ['A curve fit to old charts; IPC-2152 replaces it.'],
  remarks: ['The note prints 0.240 for inner layers; its own widths follow from 0.024.'],
  source: cite(PUBLICATIONS.boardTraceNote, 'p. 2 to 5'),
  examples: [
    {
      source: cite(PUBLICATIONS.boardTraceNote, 'p. 2, outer'),
      inputs: { current: '4.286 A', rise: '30 K', factor: '0.048', thickness: '34 µm' },
      printed: '1.18 mm',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.boardTraceNote, 'p. 3, outer'),
      inputs: { current: '10.354 A', rise: '30 K', factor: '0.048', thickness: '34 µm' },
      printed: '3.98 mm',
      kind: 'published',
      allowance: { fraction: 0.0012, reason: 'the source rounds the area' },
    },
    {
      source: cite(PUBLICATIONS.boardTraceNote, 'p. 4, outer'),
      inputs: { current: '25 A', rise: '30 K', factor: '0.048', thickness: '34 µm' },
      printed: '13.43 mm',
      kind: 'published',
      allowance: { fraction: 0.002, reason: 'the source rounds the area' },
    },
    {
      source: cite(PUBLICATIONS.boardTraceNote, 'p. 2, inner'),
      inputs: { current: '4.286 A', rise: '30 K', factor: '0.024', thickness: '34 µm' },
      printed: '3.07 mm',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.boardTraceNote, 'p. 4, inner'),
      inputs: { current: '25 A', rise: '30 K', factor: '0.024', thickness: '34 µm' },
      printed: '34.95 mm',
      kind: 'published',
      allowance: { fraction: 0.002, reason: 'the source rounds the area' },
    },
  ],
});
