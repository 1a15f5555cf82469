import { createHash } from 'node:crypto';
import { readFileSync, statSync } from 'node:fs';
import type { Finding } from '../diagnostics/finding.ts';
import { readingFinding } from '../entry/reading-rules.ts';
import { pipelineFinding } from './pipeline-rule.ts';

/** Largest entry, and largest file that an author writes beside the entries, in bytes. */
const LARGEST_ENTRY = 256 * 1024;

/** Text of a file with the hash of its bytes, or why it could not be read. */
export type ReadText =
  { readonly ok: true; readonly text: string; readonly hash: string } | { readonly ok: false; readonly finding: Finding };

/** Reads a UTF-8 file of limited size; a byte order mark is dropped. */
export function readText(path: string, largest: number = LARGEST_ENTRY): ReadText {
  let bytes: Buffer;
  try {
    const { size } = statSync(path);
    if (size > largest) return { ok: false, finding: tooLarge(size, largest) };
    bytes = readFileSync(path);
  } catch (error) {
    return { ok: false, finding: pipelineFinding('file-unreadable', `The file could not be read (${errorCode(error)})`) };
  }
  return decode(bytes);
}

function decode(bytes: Buffer): ReadText {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { ok: true, text, hash: createHash('sha256').update(bytes).digest('hex') };
  } catch {
    return { ok: false, finding: pipelineFinding('file-not-utf8', notUtf8(bytes), firstBadByte(bytes)) };
  }
}

function notUtf8(bytes: Buffer): string {
  const isUtf16 = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  return isUtf16 ? 'The file is UTF-16 text, not UTF-8' : 'The file is not UTF-8 text: a byte here belongs to no character';
}

function firstBadByte(bytes: Buffer): { readonly in: 'file'; readonly line: number; readonly column: number } {
  const before = new TextDecoder('utf-8').decode(bytes).split('\uFFFD', 1)[0] ?? '';
  const lines = before.split('\n');
  return { in: 'file', line: lines.length, column: (lines.at(-1) ?? '').length + 1 };
}

/** Said before the file is read, so that a log of a gigabyte is not. */
function tooLarge(size: number, largest: number): Finding {
  const message = `The file has ${String(Math.ceil(size / 1024))} KB; at most ${String(largest / 1024)} KB are read.`;
  return readingFinding('file-too-large', { in: 'file', line: 1, column: 1 }, message);
}

/** The system's word for a failure ("ENOENT"), for people who can use it. */
export function errorCode(error: unknown): string {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : 'unknown reason';
}
