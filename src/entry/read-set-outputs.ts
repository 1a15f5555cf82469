import type { Fact } from './entry.ts';
import { piecesBetween } from './pieces-between.ts';
import { readFact, type ReadingContext, type Written } from './reading-context.ts';
import { atValue, readingFinding } from './reading-rules.ts';

/** Voltages that were set at the ports of a run: one for all of them, or one each. */
export interface SetOutputs {
  /** The voltage of every port; null where they differ, or none is written. */
  readonly common: Fact<'voltage'> | null;
  readonly each: readonly (Fact<'voltage'> | null)[];
}

/** Reads "20 V", which holds for every port, or one voltage a port with plus signs between: "20 V + 9 V". */
export function readSetOutputs(context: ReadingContext, ports: readonly string[], output: Written | null): SetOutputs {
  const none = { common: null, each: ports.map(() => null) };
  if (output === null) return none;
  const pieces = piecesBetween(output.text, /\+/u);
  if (pieces.length === 1) {
    const common = readFact(context, output, 'voltage');
    return { common, each: ports.map(() => common) };
  }
  const each = pieces.map(({ piece }) => readFact(context, { ...output, text: piece }, 'voltage'));
  if (each.length === ports.length) {
    const [first] = each;
    const isCommon = first !== undefined && each.every((one) => one?.quantity.nominal === first?.quantity.nominal);
    return { common: isCommon ? first : null, each };
  }
  const named =
    ports.length === 0 ? 'No port is named' : `${ports.join(' + ')} ${ports.length === 1 ? 'is 1' : `are ${String(ports.length)}`}`;
  const message = `${named} and "${output.text}" has ${String(pieces.length)} voltages.`;
  context.findings.push(
    readingFinding('loads-mismatch', atValue(output.path), message, {
      advice: 'Write one voltage for all ports, or one a port: 20 V + 9 V.',
    }),
  );
  return none;
}
