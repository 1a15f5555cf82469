import type { EfficiencyRule } from './efficiency-rule.ts';

/** The rule in force in the European Union, and in Great Britain as retained. */
export const eu2019: EfficiencyRule = {
  id: 'eu-2019-1782',
  name: '(EU) 2019/1782',
  applies: 'since 1 April 2020, until 14 December 2028',
  lines: [230],
  settings: 'each',
  lowestVoltageAmps: null,
  mostAtLowest: null,
  usbPdUpToVolts: null,
  countsOthersAtLowest: true,
  // What was read of it are its tables: they ask that voltage, current and power be stated for each set of several outputs, and do not say
  // how such outputs are loaded. The text of its measurements was not at hand, so the test of Appendix Z is taken for it.
  severalPorts: 'common practice',
  leavesOutUnsustained: false,
  average: {
    'basic voltage': { small: [0.5, 0.16], middle: [0.071, 0.0014, 0.67], large: 0.88, standing: 'read' },
    'low voltage': { small: [0.517, 0.087], middle: [0.0834, 0.0014, 0.609], large: 0.87, standing: 'read' },
    'multiple voltage': { small: [0.497, 0.067], middle: [0.075, 0, 0.561], large: 0.86, standing: 'read' },
  },
  atTenth: null,
  noLoad: {
    'basic voltage': { upTo49: 0.1, above49: 0.21, standing: 'read' },
    'low voltage': { upTo49: 0.1, above49: 0.21, standing: 'read' },
    'multiple voltage': { upTo49: 0.3, above49: 0.3, standing: 'read' },
  },
  noLoadForEachPort: null,
  cableOhms: null,
  otherCable: null,
  source: {
    title: 'Commission Regulation (EU) 2019/1782',
    section: 'Annex II, points 1(a) and 1(b); the dates are from memory',
    standing: 'read',
    url: 'https://www.legislation.gov.uk/eur/2019/1782',
  },
};
