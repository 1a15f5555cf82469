import { prefixOf } from './prefixes.ts';
import type { Prefix } from './prefixes.ts';
import { SINGLE_UNITS } from './single-units.ts';
import { UNIT_FAMILIES } from './unit-families.ts';
import type { UnitFamily } from './unit-families.ts';
import type { RefusedSpelling, Unit } from './unit.ts';

/** Spellings that older parts carry; they are read by nobody the same way, so they are refused with the modern one. */
const REFUSED: readonly RefusedSpelling[] = [
  ...['mfd', 'MFD', 'Mfd', 'MF', 'mFd'].map((refused) => ({ refused, instead: 'µF' })),
  ...['mmfd', 'MMFD', 'mmF', 'MMF', 'µµF', 'uuF', 'µµf', 'mmf'].map((refused) => ({ refused, instead: 'pF' })),
];

const MILLIFARAD = 'a millifarad is a thousand microfarads, implausible in a small adapter; µF may be meant';

/** Dimensions that letter codes write. */
const CODED: readonly string[] = ['resistance', 'capacitance', 'inductance'];

/** Every spelling with the units it can stand for; the unit that needs no wish comes last. */
export const UNIT_SPELLINGS: ReadonlyMap<string, readonly Unit[]> = allSpellings();

export const REFUSED_SPELLINGS: ReadonlyMap<string, RefusedSpelling> = new Map(REFUSED.map((row) => [row.refused, row]));

function allSpellings(): Map<string, Unit[]> {
  const table = new Map<string, Unit[]>();
  for (const family of UNIT_FAMILIES) addFamily(table, family);
  for (const { spellings, ...single } of SINGLE_UNITS) {
    for (const spelling of spellings)
      add(table, spelling, completed({ ...single, isLetterCode: isLetterCode(spelling, single.dimension) }));
  }
  for (const units of table.values()) units.sort((one, other) => Number(other.onlyWhereWanted) - Number(one.onlyWhereWanted));
  return table;
}

function isLetterCode(spelling: string, dimension: string): boolean {
  return spelling.length === 1 && CODED.includes(dimension);
}

function completed(given: Partial<Unit> & Pick<Unit, 'dimension' | 'symbol'>): Unit {
  const plain = {
    exponent: 0,
    factor: 1,
    offset: 0,
    system: 'metric',
    waveform: null,
    isPeakToPeak: false,
    onlyWhereWanted: false,
    isLetterCode: false,
    remark: null,
  } as const;
  return { ...plain, ...given };
}

function add(table: Map<string, Unit[]>, spelling: string, unit: Unit): void {
  const known = table.get(spelling);
  if (known === undefined) table.set(spelling, [unit]);
  else if (!known.some((other) => other.dimension === unit.dimension)) known.push(unit);
}

function addFamily(table: Map<string, Unit[]>, family: UnitFamily): void {
  for (const symbol of family.prefixes) {
    const prefix = prefixOf(symbol);
    const unit = prefixedUnit(family, prefix);
    for (const spelling of prefixSpellings(family, prefix)) for (const base of family.symbols) add(table, spelling + base, unit);
    for (const word of family.words) for (const spelling of wordSpellings(prefix.word + word)) add(table, spelling, unit);
  }
}

function prefixedUnit(family: UnitFamily, prefix: Prefix): Unit {
  const isMillifarad = family.symbol === 'F' && prefix.symbol === 'm';
  return completed({
    dimension: family.dimension,
    symbol: prefix.symbol + family.symbol,
    exponent: prefix.exponent + (family.exponent ?? 0),
    factor: family.factor ?? 1,
    waveform: family.waveform ?? null,
    isPeakToPeak: family.isPeakToPeak ?? false,
    remark: isMillifarad ? { severity: 'warning', message: MILLIFARAD } : null,
  });
}

function prefixSpellings(family: UnitFamily, prefix: Prefix): string[] {
  const spellings = [...prefix.spellings, ...(family.takesCapitalPrefix === true ? prefix.capitals : [])];
  if (family.takesSpacedPrefix !== true || prefix.symbol === '') return spellings;
  return [...spellings, ...spellings.map((spelling) => `${spelling} `)];
}

function wordSpellings(word: string): string[] {
  return [word, word.charAt(0).toUpperCase() + word.slice(1)];
}
