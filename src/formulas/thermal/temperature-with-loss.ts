import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Temperature of a part from its loss and its whole thermal resistance to the air. */
export const temperatureWithLoss = defineFormula({
  id: 'temperature-with-loss',
  title: 'Temperature with a loss',
  subject: 'thermal',
  meaning: 'Temperature of a part from its loss and its whole thermal resistance to the air.',
  expression: 'T = T_{a} + P\\,R_{\\theta}',
  output: { tex: 'T', dimension: 'temperature', meaning: 'temperature', unit: '°C' },
  inputs: {
    ambient: { tex: 'T_{a}', dimension: 'temperature', meaning: 'air temperature', unit: '°C' },
    loss: { tex: 'P', dimension: 'power', meaning: 'loss', unit: 'W' },
    resistance: { tex: 'R_{\\theta}', dimension: 'thermal resistance', meaning: 'thermal resistance to the air', unit: 'K/W' },
  },
  compute({ ambient, loss, resistance }) {
    return ambient + loss * resistance;
  },
  validity: ['Steady state.'],
  remarks: ['LTC3780 prints 113 °C for its switch C with a loss of 1.08 W; its own 1.27 W gives 120.6 °C.'],
  source: cite(PUBLICATIONS.linearBuckBoost3780, 'p. 23'),
  examples: [
    {
      source: cite(PUBLICATIONS.linearBuckBoost3780, 'p. 23, switch B'),
      inputs: { ambient: '70 °C', loss: '0.09 W', resistance: '40 K/W' },
      printed: '73.6 °C',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.stBuckRegulator, 'p. 28: printed as about 110 °C'),
      inputs: { ambient: '70 °C', loss: '0.93 W', resistance: '42 K/W' },
      printed: '110 °C',
      kind: 'published',
      allowance: { fraction: 0.005, reason: 'the source says about 110 °C; its numbers give 109.1 °C' },
    },
  ],
});
