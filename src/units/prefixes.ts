/** A decimal prefix with the spellings that people use. `m` and `M` are never taken for each other. */
export interface Prefix {
  readonly symbol: string;
  readonly exponent: number;
  /** Spellings before a symbol. */
  readonly spellings: readonly string[];
  /** Capital spellings of label printing ("220UF"), used only before F and H, where nothing else can be meant. */
  readonly capitals: readonly string[];
  readonly word: string;
}

export const PREFIXES: readonly Prefix[] = [
  { symbol: 'p', exponent: -12, spellings: ['p'], capitals: ['P'], word: 'pico' },
  { symbol: 'n', exponent: -9, spellings: ['n'], capitals: ['N'], word: 'nano' },
  { symbol: 'µ', exponent: -6, spellings: ['µ', 'u'], capitals: ['U'], word: 'micro' },
  { symbol: 'm', exponent: -3, spellings: ['m'], capitals: [], word: 'milli' },
  { symbol: '', exponent: 0, spellings: [''], capitals: [], word: '' },
  { symbol: 'k', exponent: 3, spellings: ['k', 'K'], capitals: [], word: 'kilo' },
  { symbol: 'M', exponent: 6, spellings: ['M'], capitals: [], word: 'mega' },
  { symbol: 'G', exponent: 9, spellings: ['G'], capitals: [], word: 'giga' },
];

/** The prefix with this symbol; the empty one where there is none. */
export function prefixOf(symbol: string): Prefix {
  const found = PREFIXES.find((prefix) => prefix.symbol === symbol);
  return found ?? { symbol: '', exponent: 0, spellings: [''], capitals: [], word: '' };
}
