import type { DataPath } from '../diagnostics/finding.ts';
import { piecesBetween } from './pieces-between.ts';
import { findPort, portAdvice } from './port-names.ts';
import type { ReadingContext } from './reading-context.ts';
import { atValue, readingFinding } from './reading-rules.ts';

/** Names of ports as written, made those of the entry where it has them. */
export type PortNames = (text: string | undefined, path: DataPath) => string | null;

/**
 * The ports of a text, with commas or plus signs between them: "C1", "C1 + C2", "C1, C2". A name that the entry does not have is reported
 * and kept as written; one that stands twice is reported and counts once.
 */
export function readPortList(
  context: ReadingContext,
  text: string | undefined,
  path: DataPath,
  ports: readonly string[],
): readonly string[] {
  const found: string[] = [];
  for (const { piece, start } of piecesBetween(text ?? '', /[,+]/u)) {
    if (piece === '') continue;
    const span = { start, end: start + piece.length };
    const port = findPort(ports, piece);
    if (port === null) {
      const advice = portAdvice(ports, piece);
      context.findings.push(
        readingFinding('unknown-port', atValue(path, span), `There is no port "${piece}".`, { advice, subject: piece }),
      );
    }
    const name = port ?? piece;
    if (found.includes(name)) {
      context.findings.push(
        readingFinding('loads-mismatch', atValue(path, span), `${name} stands twice.`, {
          advice: 'Name each port once.',
          subject: name,
        }),
      );
    } else found.push(name);
  }
  return found;
}
