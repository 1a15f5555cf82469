import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Temperature of a junction from the loss and the chain of thermal resistances to the air. */
export const junctionTemperature = defineFormula({
  id: 'junction-temperature',
  title: 'Junction temperature',
  subject: 'thermal',
  meaning: 'Temperature of a junction from the loss and the chain of thermal resistances to the air.',
  expression: 'T_{j} = T_{a} + P\\,(R_{1} + R_{2} + R_{3})',
  output: { tex: 'T_{j}', dimension: 'temperature', meaning: 'junction temperature', unit: '°C' },
  inputs: {
    ambient: { tex: 'T_{a}', dimension: 'temperature', meaning: 'air temperature', unit: '°C' },
    loss: { tex: 'P', dimension: 'power', meaning: 'loss', unit: 'W' },
    junction: { tex: 'R_{1}', dimension: 'thermal resistance', meaning: 'junction to case', unit: 'K/W' },
    mounting: { tex: 'R_{2}', dimension: 'thermal resistance', meaning: 'case to heat sink', unit: 'K/W' },
    sink: { tex: 'R_{3}', dimension: 'thermal resistance', meaning: 'heat sink to air', unit: 'K/W' },
  },
  compute({ ambient, loss, junction, mounting, sink }) {
    return ambient + loss * (junction + mounting + sink);
  },
  validity: ['Steady state; the air is the air around the part, inside the case.'],
  source: cite(PUBLICATIONS.openHeatNotes, 'heat dissipation example'),
  examples: [
    {
      source: cite(PUBLICATIONS.openHeatNotes, 'heat dissipation example'),
      inputs: { ambient: '20 °C', loss: '5 W', junction: '5 K/W', mounting: '1 K/W', sink: '6 K/W' },
      printed: '80 °C',
      kind: 'published',
    },
    {
      source: workedWith('bc'),
      inputs: { ambient: '20 °C', loss: '5 W', junction: '5 K/W', mounting: '1 K/W', sink: '6 K/W' },
      printed: '80.0 °C',
      kind: 'independent',
    },
  ],
});
