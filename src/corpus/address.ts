/** How the letters of a name usually look: part numbers in capitals with hyphens, makers' names with one capital a word. */
interface Custom {
  readonly capitals: 'all' | 'first of a word';
  readonly separator: '-' | ' ';
}

const PART_NUMBER: Custom = { capitals: 'all', separator: '-' };
const MAKER_NAME: Custom = { capitals: 'first of a word', separator: ' ' };

/** Longest address that is written out; file systems take 255 bytes a name. */
const LONGEST = 120;

/**
 * Address of a part number, such as `og7014` for "OG7014". Two different numbers never share one: what is unusual in a
 * number (small letters, a slash, a space) is written out between tildes, so the number can be read back from its address.
 * An address depends on the number alone, and stays when other parts are added.
 */
export function partAddress(number: string): string {
  return addressOf(number, PART_NUMBER);
}

/** Address of a maker, such as `kiln-lane` for "Kiln Lane"; the same promise as for parts. */
export function makerAddress(name: string): string {
  return addressOf(name, MAKER_NAME);
}

/**
 * Last piece of the address of a list's further pages: `page~2`. Written-out addresses hold tildes in pairs and shortened
 * ones are long, so no part or maker can claim it.
 */
export function pageAddress(page: number): string {
  return `page~${String(page)}`;
}

function addressOf(text: string, custom: Custom): string {
  const written = writeOut(text, custom);
  if (written === '') return '~';
  if (written.length <= LONGEST) return written;
  // An odd count of tildes tells a shortened address from a written-out one.
  return `${written.replaceAll('~', '').slice(0, 60).padEnd(60, '-')}~${digest(text)}`;
}

/** Plain characters as they are, in small letters; letters of the other case and other characters between tildes. */
function writeOut(text: string, custom: Custom): string {
  let address = '';
  let escape: 'letters' | 'codes' | null = null;
  let insideWord = false;
  const close = (): void => {
    if (escape !== null) address += '~';
    escape = null;
  };
  for (const character of text) {
    const isLetter = /^[A-Za-z]$/.test(character);
    const isDigit = /^[0-9]$/.test(character);
    if (isLetter && isCapital(character) !== (custom.capitals === 'all' || !insideWord)) {
      if (escape !== 'letters') {
        close();
        address += '~';
        escape = 'letters';
      }
      address += character.toLowerCase();
    } else if (isLetter || isDigit || character === custom.separator || character === '&') {
      close();
      address += character === custom.separator ? '-' : character === '&' ? '+' : character.toLowerCase();
    } else {
      const code = String(character.codePointAt(0) ?? 0);
      if (escape === 'codes') address += `.${code}`;
      else {
        close();
        address += `~${code}`;
        escape = 'codes';
      }
    }
    insideWord = isLetter || isDigit;
  }
  close();
  return address;
}

function isCapital(letter: string): boolean {
  return letter >= 'A' && letter <= 'Z';
}

/** Sixteen hexadecimal digits from two runs of the FNV-1a hash (32 bit) with different starts. */
function digest(text: string): string {
  return hash(text, 0x811c9dc5) + hash(text, 0x01000193);
}

function hash(text: string, start: number): string {
  let sum = start;
  for (let index = 0; index < text.length; index += 1) sum = Math.imul(sum ^ text.charCodeAt(index), 0x01000193);
  return (sum >>> 0).toString(16).padStart(8, '0');
}
