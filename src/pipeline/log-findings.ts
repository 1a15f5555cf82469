import { createReadStream } from 'node:fs';
import { createInterface } from 'node:readline';
import type { Finding } from '../diagnostics/finding.ts';
import { LOG_RULES, type LogFault, type LogPlace } from '../logs/log-rule.ts';

/** Faults of a log as findings: in the entry, and in the file with line and column. */
export async function logFindings(
  path: string,
  faults: readonly LogFault[],
  delimiter: string,
): Promise<{ readonly inEntry: readonly Finding[]; readonly inFile: readonly Finding[] }> {
  const inFile = faults.filter(({ at }) => at.in === 'file');
  const cells = inFile.flatMap(({ at }) => (at.in === 'file' && at.cell !== null ? [at.line] : []));
  const lines = cells.length === 0 ? new Map<number, string>() : await linesAt(path, new Set(cells));
  return {
    inEntry: faults.flatMap((fault) =>
      fault.at.in === 'entry' ? [logFinding(fault, { in: 'data', path: fault.at.path, part: fault.at.part })] : [],
    ),
    inFile: inFile.map((fault) => logFinding(fault, placeOf(fault.at, lines, delimiter))),
  };
}

/** A finding of a rule on logs. */
export function logFinding({ rule, message, severity }: Omit<LogFault, 'at'>, where: Finding['where']): Finding {
  const declared = LOG_RULES.find(({ id }) => id === rule);
  if (declared === undefined) return { rule, severity: 'error', where, message };
  const { why, advice, source } = declared;
  return { rule, severity: severity ?? declared.severity, where, message, why, advice, source };
}

function placeOf(at: LogPlace, lines: ReadonlyMap<number, string>, delimiter: string): Finding['where'] {
  if (at.in === 'entry') return { in: 'data', path: at.path, part: at.part };
  return { in: 'file', line: at.line, column: at.cell === null ? 1 : columnOf(lines.get(at.line) ?? '', at.cell, delimiter) };
}

/** Column at which a cell begins, minding quotes. */
function columnOf(line: string, cell: number, delimiter: string): number {
  let [quoted, passed] = [false, 0];
  for (let at = 0; at < line.length; at += 1) {
    if (passed === cell) return at + 1;
    if (line[at] === '"') quoted = !quoted;
    if (line[at] === delimiter && !quoted) passed += 1;
  }
  return line.length + 1;
}

/** The lines of these numbers, the file read once more as far as the last of them. */
async function linesAt(path: string, wanted: ReadonlySet<number>): Promise<Map<number, string>> {
  const lines = new Map<number, string>();
  const source = createReadStream(path);
  let number = 0;
  for await (const line of createInterface({ input: source, crlfDelay: Infinity })) {
    number += 1;
    if (wanted.has(number)) lines.set(number, number === 1 ? line.replace(/^\uFEFF/, '') : line);
    if (lines.size === wanted.size) break;
  }
  source.destroy();
  return lines;
}
