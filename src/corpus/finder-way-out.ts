import { findSheets } from './find-sheets.ts';
import { CHOICE_GROUPS, RANGE_COLUMNS, withChoice, withRange, type FinderQuery } from './finder-query.ts';
import type { FinderRegister } from './finder-row.ts';
import { columnWords } from './finder-words.ts';

const CHOICE_WORDS = { kind: 'kind', family: 'topology', switches: 'switch technology', controllers: 'controller' } as const;

/** Which single range or group to open so that something is found; empty where no single one helps. */
export function finderWayOut(register: FinderRegister, query: FinderQuery): string {
  const ways = [
    ...RANGE_COLUMNS.filter((column) => query.ranges[column] !== undefined).map((column) => ({
      words: `the range of ${columnWords(column, register.currency).long.toLowerCase()}`,
      query: withRange(query, column, null),
    })),
    ...CHOICE_GROUPS.filter((group) => (query.choices[group] ?? []).length > 0).map((group) => ({
      words: `the choice of ${CHOICE_WORDS[group]}`,
      query: withChoice(query, group, []),
    })),
  ];
  const best = ways
    .map((way) => ({ ...way, count: findSheets(register.rows, way.query).length }))
    .sort((one, other) => other.count - one.count)[0];
  return best === undefined || best.count === 0 ? '' : `Without ${best.words} there would be ${String(best.count)}.`;
}
