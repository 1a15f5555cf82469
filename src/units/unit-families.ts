import type { Dimension } from './dimension.ts';

/** One unit with all prefixes that the trade puts before it, and whole spellings of symbol and word. */
export interface UnitFamily {
  readonly dimension: Dimension;
  readonly symbol: string;
  readonly symbols: readonly string[];
  readonly words: readonly string[];
  /** Symbols of the prefixes used; '' is the bare unit. */
  readonly prefixes: readonly string[];
  readonly exponent?: number;
  readonly factor?: number;
  readonly takesCapitalPrefix?: boolean;
  /** "4.7 k Ω", "300 m VP-P": a space between prefix and unit. */
  readonly takesSpacedPrefix?: boolean;
  readonly waveform?: 'AC' | 'DC';
  readonly isPeakToPeak?: boolean;
}

const SMALL = ['p', 'n', 'µ', 'm', ''];
const WIDE = ['n', 'µ', 'm', '', 'k', 'M'];

/** Units that take prefixes. Every spelling of a unit is a row here; nothing is split by letters while reading. */
export const UNIT_FAMILIES: readonly UnitFamily[] = [
  { dimension: 'voltage', symbol: 'V', symbols: ['V', 'v'], words: ['volt', 'volts'], prefixes: WIDE },
  {
    dimension: 'voltage',
    symbol: 'V',
    symbols: ['VAC', 'Vac', 'VAc', 'vac', 'Vrms', 'VRMS', 'Vr.m.s.', 'Va.c.'],
    words: [],
    prefixes: ['m', '', 'k'],
    waveform: 'AC',
  },
  {
    dimension: 'voltage',
    symbol: 'V',
    symbols: ['VDC', 'Vdc', 'VDc', 'vdc', 'Vd.c.'],
    words: [],
    prefixes: ['m', '', 'k'],
    waveform: 'DC',
  },
  {
    dimension: 'voltage',
    symbol: 'V',
    symbols: ['Vpp', 'VPP', 'Vp-p', 'VP-P', 'Vpk-pk', 'Vpkpk'],
    words: [],
    prefixes: ['µ', 'm', ''],
    isPeakToPeak: true,
    takesSpacedPrefix: true,
  },
  { dimension: 'current', symbol: 'A', symbols: ['A', 'a'], words: ['ampere', 'amperes', 'amp', 'amps'], prefixes: WIDE },
  { dimension: 'current', symbol: 'A', symbols: ['Arms', 'ARMS', 'AAC', 'Aac'], words: [], prefixes: ['µ', 'm', ''], waveform: 'AC' },
  { dimension: 'current', symbol: 'A', symbols: ['ADC', 'Adc'], words: [], prefixes: ['µ', 'm', ''], waveform: 'DC' },
  { dimension: 'power', symbol: 'W', symbols: ['W', 'w'], words: ['watt', 'watts'], prefixes: WIDE },
  { dimension: 'apparent power', symbol: 'VA', symbols: ['VA', 'va'], words: ['volt-ampere', 'volt-amperes'], prefixes: ['m', '', 'k'] },
  {
    dimension: 'resistance',
    symbol: 'Ω',
    symbols: ['Ω', 'ohm', 'Ohm', 'OHM', 'ohms', 'Ohms', 'OHMS', 'Ωs'],
    words: ['ohm', 'ohms'],
    prefixes: ['µ', 'm', '', 'k', 'M', 'G'],
    takesSpacedPrefix: true,
  },
  {
    dimension: 'capacitance',
    symbol: 'F',
    symbols: ['F', 'f'],
    words: ['farad', 'farads'],
    prefixes: SMALL,
    takesCapitalPrefix: true,
    takesSpacedPrefix: true,
  },
  {
    dimension: 'inductance',
    symbol: 'H',
    symbols: ['H'],
    words: ['henry', 'henries', 'henrys'],
    prefixes: ['n', 'µ', 'm', ''],
    takesCapitalPrefix: true,
    takesSpacedPrefix: true,
  },
  { dimension: 'frequency', symbol: 'Hz', symbols: ['Hz', 'HZ', 'hz'], words: ['hertz'], prefixes: ['m', '', 'k', 'M', 'G'] },
  { dimension: 'time', symbol: 's', symbols: ['s', 'sec', 'secs'], words: ['second', 'seconds'], prefixes: ['n', 'µ', 'm', ''] },
  { dimension: 'length', symbol: 'm', symbols: ['m'], words: ['metre', 'metres', 'meter', 'meters'], prefixes: ['n', 'µ', 'm', '', 'k'] },
  {
    dimension: 'mass',
    symbol: 'g',
    symbols: ['g'],
    words: ['gram', 'grams', 'gramme', 'grammes'],
    prefixes: ['µ', 'm', '', 'k'],
    exponent: -3,
  },
  { dimension: 'energy', symbol: 'J', symbols: ['J'], words: ['joule', 'joules'], prefixes: ['n', 'µ', 'm', '', 'k'] },
  {
    dimension: 'energy',
    symbol: 'Wh',
    symbols: ['Wh', 'WH', 'wh', 'W·h', 'W h', 'Whr'],
    words: ['watt-hour', 'watt-hours', 'watt hour', 'watt hours'],
    prefixes: ['m', '', 'k'],
    factor: 3600,
  },
  {
    dimension: 'charge',
    symbol: 'Ah',
    symbols: ['Ah', 'AH', 'ah', 'A·h', 'A h', 'Ahr'],
    words: ['ampere-hour', 'ampere-hours', 'amp-hour', 'amp-hours', 'amp hour', 'amp hours'],
    prefixes: ['µ', 'm', ''],
    factor: 3600,
  },
  { dimension: 'charge', symbol: 'C', symbols: [], words: ['coulomb', 'coulombs'], prefixes: ['n', 'µ', 'm', ''] },
];
