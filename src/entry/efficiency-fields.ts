import type { EfficiencyPoint } from './entry.ts';
import type { EntrySource } from './schema.ts';

type EfficiencySource = NonNullable<NonNullable<EntrySource['measurements']>['efficiency']>;

/** One run of efficiency as its author wrote it. */
export type EfficiencyRunSource = Exclude<EfficiencySource, readonly unknown[]>;

/** What a point is beyond the conditions that its run gives it. */
export type PointFields = Pick<
  EfficiencyPoint,
  'statistic' | 'loads' | 'load' | 'current' | 'input' | 'efficiency' | 'notSustained' | 'measuredOutput' | 'path'
>;

/** A point of which nothing is known. */
export const NO_FIELDS: Omit<PointFields, 'statistic' | 'path'> = {
  loads: [],
  load: null,
  current: null,
  input: null,
  efficiency: null,
  notSustained: null,
  measuredOutput: null,
};
