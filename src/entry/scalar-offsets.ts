/** How many source characters an escape in a double-quoted scalar takes, by the sign behind the backslash. */
const ESCAPE_LENGTHS: Readonly<Record<string, number>> = { x: 4, u: 6, U: 10 };

/**
 * Offsets in the source of a scalar for each offset of its decoded value, end included: quotes, escapes, folded lines and block
 * indentation taken into account. Where the two can't be aligned, the rest maps to the end.
 * @param source the scalar as written, quotes or block header included
 * @param start index in `source` at which its content starts
 */
export function scalarOffsets(source: string, start: number, value: string, quote: 'single' | 'double' | 'none'): readonly number[] {
  const offsets: number[] = [];
  let at = start;
  let index = 0;
  while (index < value.length) {
    at = skipFolding(source, at, value.charAt(index), quote);
    const step = stepAt(source, at, value, index, quote);
    for (let piece = 0; piece < step.decoded; piece += 1) offsets.push(at);
    index += step.decoded;
    at += step.written;
  }
  offsets.push(Math.min(at, source.length));
  return offsets;
}

/** Passes over line breaks, indentation and escaped line ends that the value does not hold. */
function skipFolding(source: string, from: number, wanted: string, quote: 'single' | 'double' | 'none'): number {
  let at = from;
  for (;;) {
    const sign = source.charAt(at);
    if (sign === '\\' && quote === 'double' && /[\r\n]/u.test(source.charAt(at + 1))) at += 2;
    else if (sign === wanted || !/[\r\n\t ]/u.test(sign) || at >= source.length) return at;
    else if (/[\r\n]/u.test(sign) && /[ \n]/u.test(wanted)) return at;
    else at += 1;
  }
}

interface Step {
  readonly written: number;
  readonly decoded: number;
}

function stepAt(source: string, at: number, value: string, index: number, quote: 'single' | 'double' | 'none'): Step {
  if (quote === 'double' && source.charAt(at) === '\\') {
    const code = value.codePointAt(index) ?? 0;
    return { written: ESCAPE_LENGTHS[source.charAt(at + 1)] ?? 2, decoded: code > 0xffff ? 2 : 1 };
  }
  if (quote === 'single' && source.startsWith("''", at)) return { written: 2, decoded: 1 };
  if (at >= source.length) return { written: 0, decoded: 1 };
  return { written: source.startsWith('\r\n', at) ? 2 : 1, decoded: 1 };
}
