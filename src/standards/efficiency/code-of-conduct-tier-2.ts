import type { EfficiencyRule } from './efficiency-rule.ts';

/** A voluntary agreement, which makers still quote. Its own text was not at hand: copies of it were, and some rows are from memory. */
export const codeOfConductTier2: EfficiencyRule = {
  id: 'code-of-conduct-tier-2',
  name: 'Code of Conduct, version 5, tier 2',
  applies: 'voluntary; from January 2016 for new models',
  lines: [115, 230],
  settings: 'each',
  lowestVoltageAmps: null,
  mostAtLowest: null,
  usbPdUpToVolts: null,
  countsOthersAtLowest: true,
  severalPorts: 'common practice',
  leavesOutUnsustained: false,
  average: {
    'basic voltage': { small: [0.5, 0.169], middle: [0.071, 0.00115, 0.67], large: 0.89, standing: 'secondary' },
    'low voltage': { small: [0.517, 0.091], middle: [0.0834, 0.0011, 0.609], large: 0.88, standing: 'secondary' },
    'multiple voltage': null,
  },
  atTenth: {
    aboveWatts: 0,
    lines: {
      // One copy prints 0.0014, which leaves a gap at 49 W; the later regulation prints 0.00115 with the same other numbers.
      'basic voltage': { small: [0.5, 0.06], middle: [0.071, 0.00115, 0.57], large: 0.79, standing: 'secondary' },
      'low voltage': { small: [0.517, 0], middle: [0.0834, 0.00127, 0.518], large: 0.78, standing: 'memory' },
      'multiple voltage': null,
    },
  },
  noLoad: {
    'basic voltage': { upTo49: 0.075, above49: 0.15, standing: 'secondary' },
    'low voltage': { upTo49: 0.075, above49: 0.15, standing: 'secondary' },
    'multiple voltage': null,
  },
  noLoadForEachPort: null,
  cableOhms: null,
  otherCable: null,
  source: {
    title: 'EU Code of Conduct on Energy Efficiency of External Power Supplies, version 5 (29 October 2013)',
    section: 'tier 2, as quoted; the row for low voltage at a tenth of the load is from memory',
    standing: 'secondary',
    url: 'https://electronicproducts-com-develop.go-vip.net/europes-code-of-conduct-version-5-released',
  },
};
