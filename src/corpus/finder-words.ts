import { RANGE_COLUMNS, type FinderQuery, type NumberColumn, type RangeColumn } from './finder-query.ts';
import type { FinderRegister } from './finder-row.ts';

/** One column of numbers: its words, unit and decimals. */
export interface ColumnWords {
  readonly head: string;
  readonly long: string;
  readonly unit: string;
  readonly decimals: number;
}

/** Words of every column; the price has the currency of the register. */
export function columnWords(column: NumberColumn, currency: string | null): ColumnWords {
  switch (column) {
    case 'watts':
      return { head: 'Rated W', long: 'Rated power', unit: 'W', decimals: 0 };
    case 'volume':
      return { head: 'Volume cm³', long: 'Volume', unit: 'cm³', decimals: 1 };
    case 'density':
      return { head: 'W/cm³', long: 'Power density', unit: 'W/cm³', decimals: 3 };
    case 'specific':
      return { head: 'W/kg', long: 'Power per mass', unit: 'W/kg', decimals: 0 };
    case 'mass':
      return { head: 'Mass g', long: 'Mass', unit: 'g', decimals: 0 };
    case 'efficiency':
      return { head: 'Eff. %', long: 'Efficiency', unit: '%', decimals: 1 };
    case 'ports':
      return { head: 'Ports', long: 'Ports', unit: '', decimals: 0 };
    case 'year':
      return { head: 'Year', long: 'Year', unit: '', decimals: 0 };
    case 'price':
      return { head: currency === null ? 'Price' : `Price ${currency}`, long: 'Price', unit: currency ?? '', decimals: 0 };
  }
}

/** The query as a sentence: "60 to 140 W, up to 260 cm³, wall charger or desktop charger"; empty for an empty query. */
export function querySentence(query: FinderQuery, { currency, families }: Pick<FinderRegister, 'currency' | 'families'>): string {
  const ranges = RANGE_COLUMNS.flatMap((column) => {
    const range = query.ranges[column];
    return range === undefined ? [] : [rangeWords(column, range.low, range.high, currency)];
  });
  const choices = [
    ...[query.choices.kind, query.choices.family?.map((id) => families[id] ?? id), query.choices.switches].map(either),
    query.choices.controllers === undefined ? '' : `with ${either(query.choices.controllers)}`,
  ];
  return [...ranges, ...choices].filter((piece) => piece !== '').join(', ');
}

function rangeWords(column: RangeColumn, low: number | null, high: number | null, currency: string | null): string {
  const unit = column === 'ports' ? (high === 1 ? 'port' : 'ports') : columnWords(column, currency).unit;
  const after = unit === '' ? '' : `\u00A0${unit}`;
  if (low === null) return `${column === 'year' ? 'until' : 'up to'} ${String(high)}${after}`;
  if (high === null) return `from ${String(low)}${after}`;
  return low === high ? `${String(low)}${after}` : `${String(low)} to ${String(high)}${after}`;
}

function either(words: readonly string[] | undefined): string {
  return (words ?? []).join(' or ');
}
