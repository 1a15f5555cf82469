import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Energy that a charged capacitor holds and can release into whoever touches it. */
export const storedEnergy = defineFormula({
  id: 'stored-energy',
  title: 'Stored energy of a capacitor',
  subject: 'bulk',
  meaning: 'Energy that a charged capacitor holds and can release into whoever touches it.',
  expression: 'E = \\tfrac{1}{2}\\,C\\,V^{2}',
  output: { tex: 'E', dimension: 'energy', meaning: 'stored energy', unit: 'J' },
  inputs: {
    capacitance: { tex: 'C', dimension: 'capacitance', meaning: 'capacitance', unit: 'µF' },
    voltage: { tex: 'V', dimension: 'voltage', meaning: 'voltage it is charged to', unit: 'V' },
  },
  compute({ capacitance, voltage }) {
    return 0.5 * capacitance * voltage ** 2;
  },
  validity: ['Capacitance that falls with voltage (class 2 ceramic) holds less.'],
  source: cite(PUBLICATIONS.storeyTextbook, 'chapter 13'),
  examples: [
    {
      source: cite(PUBLICATIONS.storeyTextbook, 'example 13.7, p. 275'),
      inputs: { capacitance: '10 µF', voltage: '100 V' },
      printed: '50.0 mJ',
      kind: 'published',
    },
    {
      source: {
        title: 'Engineering ToolBox, Capacitors: energy and power',
        section: 'example 10 µF, 230 V',
        standing: 'read',
        url: 'https://www.engineeringtoolbox.com/capacitors-energy-power-d_1389.html',
      },
      inputs: { capacitance: '10 µF', voltage: '230 V' },
      printed: '0.26 J',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.amethermInrush, 'worked example'),
      inputs: { capacitance: '2350 µF', voltage: '746.59 V' },
      printed: '655.00 J',
      kind: 'published',
      allowance: { fraction: 0.0001, reason: 'printed with two decimals although rounded to a whole joule: 654.94 J' },
    },
    {
      source: cite(PUBLICATIONS.softSwitchingSeminar, '1.3, switch at 63 V'),
      inputs: { capacitance: '330 pF', voltage: '63 V' },
      printed: '0.65 µJ',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.softSwitchingSeminar, '1.3, switch at 220 V'),
      inputs: { capacitance: '330 pF', voltage: '220 V' },
      printed: '7.98 µJ',
      kind: 'published',
      allowance: { fraction: 0.0008, reason: 'the source cuts 7.986 off' },
    },
    {
      source: cite(PUBLICATIONS.softSwitchingSeminar, '1.3, switch at 426 V'),
      inputs: { capacitance: '330 pF', voltage: '426 V' },
      printed: '29.9 µJ',
      kind: 'published',
    },
  ],
});
