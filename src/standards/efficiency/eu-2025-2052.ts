import type { EfficiencyRule } from './efficiency-rule.ts';

/** The rule that follows, with a limit at a tenth of the load, the loss of a cable taken off, and a row of its own for adaptive supplies. */
export const eu2025: EfficiencyRule = {
  id: 'eu-2025-2052',
  name: '(EU) 2025/2052',
  applies: 'from 14 December 2028; USB PD supplies above 100 W from 14 December 2030',
  lines: [230],
  settings: 'highest and lowest',
  lowestVoltageAmps: 2,
  mostAtLowest: null,
  usbPdUpToVolts: null,
  countsOthersAtLowest: true,
  severalPorts: 'read',
  leavesOutUnsustained: false,
  average: {
    'basic voltage': { small: [0.5, 0.169], middle: [0.071, 0.00115, 0.67], large: 0.89, standing: 'read' },
    'low voltage': { small: [0.517, 0.091], middle: [0.0834, 0.0011, 0.609], large: 0.88, standing: 'read' },
    'multiple voltage': { small: [0.497, 0.067], middle: [0.078, 0.0013, 0.64], large: 0.88, standing: 'read' },
  },
  // Adaptive supplies (Table 3): a source of USB PD is one.
  atTenth: {
    aboveWatts: 10,
    lines: {
      'basic voltage': { small: null, middle: [0.071, 0.00115, 0.57], large: 0.79, standing: 'read' },
      'low voltage': { small: null, middle: [0.0834, 0.0011, 0.509], large: 0.78, standing: 'read' },
      'multiple voltage': { small: null, middle: [0.078, 0.0013, 0.54], large: 0.78, standing: 'read' },
    },
  },
  noLoad: {
    'basic voltage': { upTo49: 0.075, above49: 0.15, standing: 'read' },
    'low voltage': { upTo49: 0.075, above49: 0.15, standing: 'read' },
    'multiple voltage': { upTo49: 0.075, above49: 0.15, standing: 'read' },
  },
  noLoadForEachPort: { more: 0.025, most: 0.3 },
  cableOhms: { upTo3A: 0.13, above3A: 0.1 },
  otherCable: { length: 1, areaUpTo3A: 0.519e-6, areaUpTo5A: 0.653e-6 },
  source: {
    title: 'Commission Regulation (EU) 2025/2052 (OJ L, 24.11.2025)',
    section: 'Annex II, Tables 1, 3, 4 and 5, points 1(f) to 1(k); Annex IV, points 3(a) to 3(c) and 5',
    standing: 'read',
    url: 'http://data.europa.eu/eli/reg/2025/2052/oj',
  },
};
