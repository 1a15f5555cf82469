/** A number sign inside brackets whose comment holds the bracket that should close them: offsets in the YAML text. */
export interface SwallowedBracket {
  readonly start: number;
  /** End of the line. */
  readonly end: number;
  readonly bracket: '}' | ']';
}

/**
 * Lines such as "C5: { rating: 420V #120uF }": the comment takes the closing bracket with it, and the parser complains
 * somewhere below. Quoted text is passed over.
 */
export function swallowedBrackets(yaml: string): readonly SwallowedBracket[] {
  return [...yaml.matchAll(/[^\r\n]+/gu)].flatMap((line) => {
    const found = inLine(line[0]);
    return found === null ? [] : [{ start: line.index + found.at, end: line.index + line[0].length, bracket: found.bracket }];
  });
}

function inLine(line: string): { readonly at: number; readonly bracket: '}' | ']' } | null {
  const open: ('}' | ']')[] = [];
  let quote = '';
  for (let at = 0; at < line.length; at += 1) {
    const sign = line.charAt(at);
    if (quote !== '') {
      if (sign === quote) quote = '';
    } else if ((sign === '"' || sign === "'") && /(?:^|[{[,:])\s*$/u.test(line.slice(0, at))) quote = sign;
    else if (sign === '{' || sign === '[') open.push(sign === '{' ? '}' : ']');
    else if (sign === '}' || sign === ']') open.pop();
    else if (sign === '#' && /\s/u.test(line.charAt(at - 1))) {
      const bracket = open.at(-1);
      return bracket !== undefined && line.includes(bracket, at) ? { at, bracket } : null;
    }
  }
  return null;
}
