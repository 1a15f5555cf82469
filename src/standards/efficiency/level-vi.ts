import type { EfficiencyRule } from './efficiency-rule.ts';

/** Level VI of the United States: the table of the rule is a picture in every text copy, so its numbers are those of two independent copies. */
export const levelVi: EfficiencyRule = {
  id: 'level-vi',
  name: 'Level VI (United States)',
  applies: 'made on or after 10 February 2016',
  lines: [115],
  settings: 'highest and lowest',
  lowestVoltageAmps: 2,
  // Its definition of USB PD stops at 20 V: a supply of 28 V is tested with the current of its nameplate.
  mostAtLowest: 10,
  usbPdUpToVolts: 20,
  countsOthersAtLowest: false,
  severalPorts: 'read',
  leavesOutUnsustained: true,
  average: {
    'basic voltage': { small: [0.5, 0.16], middle: [0.071, 0.0014, 0.67], large: 0.88, standing: 'secondary' },
    'low voltage': { small: [0.517, 0.087], middle: [0.0834, 0.0014, 0.609], large: 0.87, standing: 'secondary' },
    'multiple voltage': { small: [0.497, 0.067], middle: [0.075, 0, 0.561], large: 0.86, standing: 'secondary' },
  },
  atTenth: null,
  noLoad: {
    'basic voltage': { upTo49: 0.1, above49: 0.21, standing: 'secondary' },
    'low voltage': { upTo49: 0.1, above49: 0.21, standing: 'secondary' },
    'multiple voltage': { upTo49: 0.3, above49: 0.3, standing: 'secondary' },
  },
  noLoadForEachPort: null,
  cableOhms: null,
  otherCable: null,
  source: {
    title: '10 CFR 430.32(w)(1)(ii), tested by 10 CFR 430 Subpart B Appendix Z (2022)',
    section:
      'limits as in two independent copies of the table; test rules read, with a load that cannot be held in 6(a)(1)(v)(B) and 6(b)(1)(vi)(B)',
    standing: 'secondary',
    url: 'https://regulations.justia.com/regulations/fedreg/2022/08/19/2022-15975.html',
  },
};
