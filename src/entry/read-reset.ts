import type { CoreReset } from './entry.ts';
import type { ReadingContext } from './reading-context.ts';
import { refuse, type WindingText } from './read-windings.ts';
import { splitEvidence } from './split-evidence.ts';

const RESETS: readonly (readonly [Exclude<CoreReset['by'], 'winding'>, RegExp])[] = [
  ['two switches', /two[\s-]?(?:switch(?:es)?|transistors?)|2[\s-]?switch/iu],
  ['active clamp', /active/iu],
  ['RCD', /\bRCD\b/iu],
  ['resonance', /resonan/iu],
];

/** "winding of 34 turns", "34 turns", "1:1", "RCD", "active clamp", "two-switch", "resonant". */
export function readReset(context: ReadingContext, { text: written, path, evidence: usual }: WindingText): CoreReset | null {
  if (written === undefined) return null;
  const { text, evidence } = splitEvidence(written);
  const known = { written: text.trim(), evidence: evidence ?? usual, path };
  const other = RESETS.find(([, words]) => words.test(text));
  if (other !== undefined) return { by: other[0], turns: null, ratio: null, ...known };
  const winding =
    /^\s*(?:reset\s+)?(?:winding)?\s*(?:of|,)?\s*(?:(?<over>\d{1,4})\s*:\s*(?<under>\d{1,4})|(?<turns>\d{1,4})\s*(?:turns?|t)?)?\s*$/iu.exec(
      text,
    );
  const { over, under, turns } = winding?.groups ?? {};
  const numbers = [over, under, turns].filter((one) => one !== undefined).map(Number);
  if (winding !== null && text.trim() !== '' && numbers.every((one) => one > 0)) {
    const ratio = over === undefined || under === undefined ? null : ([Number(over), Number(under)] as const);
    return { by: 'winding', turns: turns === undefined ? null : Number(turns), ratio, ...known };
  }
  refuse(
    context,
    path,
    `"${text}" does not say how the core is reset.`,
    'Write the turns of the reset winding (34 turns), or RCD, active clamp, two-switch or resonant.',
  );
  return null;
}
