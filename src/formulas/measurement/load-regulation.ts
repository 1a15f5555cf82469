import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** How far an output voltage falls from no load to full load, as a share of what it is without load. */
export const loadRegulation = defineFormula({
  id: 'load-regulation',
  title: 'Load regulation',
  subject: 'measurement',
  meaning: 'How far an output voltage falls from no load to full load, as a share of what it is without load. Negative where it rises.',
  expression: '\\frac{V_{0} - V_{L}}{V_{0}}',
  output: { tex: 'r_{L}', dimension: 'ratio', meaning: 'load regulation', unit: '%' },
  inputs: {
    unloaded: { tex: 'V_{0}', dimension: 'voltage', meaning: 'output voltage without load, or at the lowest load measured', unit: 'V' },
    loaded: { tex: 'V_{L}', dimension: 'voltage', meaning: 'output voltage at full load, or at the highest load measured', unit: 'V' },
  },
  compute({ unloaded, loaded }) {
    return (unloaded - loaded) / unloaded;
  },
  validity: ['Both at one line voltage, one setting and one place of measurement; the loads are said beside it.'],
  remarks: [
    'Others divide by the voltage at full load or by the nominal one; where the voltage falls by 1 %, that makes a hundredth of the figure.',
  ],
  source: cite(PUBLICATIONS.instrumentationTextbook, 'chapter 16, laboratory power supplies: load effect and load regulation'),
  examples: [
    {
      source: cite(PUBLICATIONS.instrumentationTextbook, 'example 16-1, p. 423: 12 V without load, 11.9 V at full load'),
      inputs: { unloaded: '12 V', loaded: '11.9 V' },
      printed: '0.83 %',
      kind: 'published',
    },
  ],
});
