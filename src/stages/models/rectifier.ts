import { BUS_SIDE, bridgeCurrent } from './bus-side.ts';
import type { StageModel } from './stage-model.ts';
import { voltageStress } from './stress.ts';

/** A bridge on the mains: each diode blocks the crest of the highest line, and the bridge carries the mean of the rectified current. */
export const RECTIFIER_MODEL: StageModel = {
  stresses: {
    ...BUS_SIDE,
    'rectifier-diode': (given) => [voltageStress('reverse voltage', given.supply.peak, 'highest line')],
    'synchronous-rectifier': (given) => [voltageStress('reverse voltage', given.supply.peak, 'highest line')],
    // The film capacitor behind the bridge: a PFC lets it fall with the line, but never keeps the crest off it.
    'filter-capacitor': (given) => [voltageStress('voltage', given.supply.peak, 'highest line')],
  },
  operating: (given) => (given.supply.kind === 'AC' ? [{ name: 'mean current of the bridge', value: bridgeCurrent(given) }] : []),
  assumes: [
    'Efficiency of 85 to 95 % where none was measured.',
    'A filter capacitor of the bridge stands behind it.',
    'The lowest line is the lowest printed one: a mains 10 % below it makes every current larger by as much.',
  ],
  refuses: ['The peak of the charging current, which depends on the impedance of the mains.'],
};
