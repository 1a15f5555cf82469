/** A quantity found in running text. */
export interface SearchQuantity {
  /** Place in the folded text. */
  readonly start: number;
  readonly end: number;
  /** The same for every way of writing it: "=4.7e-7F" for 0.47 µF, 470 nF and 470n. */
  readonly key: string;
  /** As understood: "0.47 µF". */
  readonly words: string;
}

const PREFIXES: Readonly<Record<string, number>> = { '': 1, p: 1e-12, n: 1e-9, u: 1e-6, m: 1e-3, k: 1e3, M: 1e6, G: 1e9 };

/** Units as they are written in any case, and what they are called in a key. */
const UNITS: Readonly<Record<string, string>> = {
  'w/cm3': 'W/cm3',
  'w/in3': 'W/in3',
  'w/kg': 'W/kg',
  wh: 'Wh',
  ah: 'Ah',
  hz: 'Hz',
  ohm: 'ohm',
  ohms: 'ohm',
  r: 'ohm',
  vdc: 'V',
  vac: 'V',
  v: 'V',
  a: 'A',
  w: 'W',
  f: 'F',
  h: 'H',
  j: 'J',
  s: 's',
  g: 'g',
  m: 'm',
  '%': '%',
  '°c': '°C',
};

/** One-letter units that are words or other marks when a space or a capital stands before them in a sentence ("5 a day", "4S"). */
const ONLY_TIGHT = /^[ashgmfrj]$/u;

const NUMBER = String.raw`(\d+(?:[.,]\d+)?)`;
const UNIT = String.raw`(W\/cm3|W\/in3|W\/kg|Wh|Ah|Hz|ohms?|VDC|VAC|°C|[VAWFHJRsgm%])`;
const NEXT = String.raw`(?=$|[^\p{L}\p{N}]|\d+(?:[.,]\d+)?\s?[pnumkMG]?[VAW]\b)`;
const WRITTEN = new RegExp(String.raw`${NUMBER}(\s?)([pnumkMG]?)${UNIT}${NEXT}`, 'giu');
/** The letter stands for the decimal point: 4k7, 2R2, 0R1, 2n2; and numbers with a prefix alone: 10k, 470n. IEC 60062:2016, clause 5 (from memory). */
const LETTER_CODE = /(\d+)([RrKkMnpuNPU])(\d*)(?![\p{L}\p{N}.])/gu;

/**
 * Finds quantities in a folded text (see `searchText`). `isQuery`: what a person types into a search field, where "20 v" is a voltage.
 */
export function searchQuantities(text: string, isQuery = false): readonly SearchQuantity[] {
  const found: SearchQuantity[] = [];
  let last = -1;
  for (const match of text.matchAll(WRITTEN)) {
    const [whole, digits = '', space = '', prefix = '', unit = ''] = match;
    const start = match.index;
    if (!startsThere(text, start, last)) continue;
    const name = UNITS[unit.toLowerCase()];
    const scale = PREFIXES[prefixOf(prefix)];
    if (name === undefined || scale === undefined || (prefix !== '' && !takesPrefix(name))) continue;
    if (!isQuery && ((space !== '' && ONLY_TIGHT.test(unit)) || unit === 'S' || unit === 'G')) continue;
    if (unit === 'S') continue;
    last = start + whole.length;
    found.push(quantity(start, last, Number(digits.replace(',', '.')), scale, name, prefixOf(prefix)));
  }
  for (const match of text.matchAll(LETTER_CODE)) {
    const [whole, before = '', letter = '', after = ''] = match;
    const start = match.index;
    if (!startsThere(text, start, -1) || found.some((each) => start < each.end && start + whole.length > each.start)) continue;
    const prefix = letter === 'R' || letter === 'r' ? '' : prefixOf(letter);
    const unit = 'npu'.includes(prefix) && prefix !== '' ? 'F' : 'ohm';
    found.push(
      quantity(start, start + whole.length, Number(`${before}.${after === '' ? '0' : after}`), PREFIXES[prefix] ?? 1, unit, prefix),
    );
  }
  return found.sort((one, other) => one.start - other.start);
}

function startsThere(text: string, start: number, last: number): boolean {
  if (start === 0 || start === last) return true;
  return !/[\p{L}\p{N}.,]/u.test(text.charAt(start - 1));
}

/** Only M and m differ by case; every other prefix letter has one meaning. */
function prefixOf(letter: string): string {
  return letter === 'M' || letter === 'm' || letter === 'G' ? letter : letter.toLowerCase();
}

function takesPrefix(unit: string): boolean {
  return unit !== '%' && unit !== '°C' && !unit.startsWith('W/');
}

function quantity(start: number, end: number, number: number, scale: number, unit: string, prefix: string): SearchQuantity {
  const value = Number((number * scale).toPrecision(6));
  const shownUnit = unit === 'ohm' ? 'Ω' : unit.replace('cm3', 'cm³').replace('in3', 'in³');
  return { start, end, key: `=${String(value)}${unit}`, words: `${String(number)}\u00A0${prefix === 'u' ? 'µ' : prefix}${shownUnit}` };
}
