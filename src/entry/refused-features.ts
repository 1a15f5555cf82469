import { type Event, EVENT_ID, getScalarValue, SCALAR_STYLE } from 'js-yaml';
import type { Finding } from '../diagnostics/finding.ts';
import { readingFinding, type ReadingRuleId } from './reading-rules.ts';

/** Deepest nesting of an entry; the format itself needs six levels. */
const DEEPEST = 20;

/** Keys that mean something to the language this is written in and never to an entry. */
const RESERVED_KEYS: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

interface Group {
  readonly map: boolean;
  /** In a map: whether the next node is a key. */
  keyNext: boolean;
}

interface Scan {
  readonly yaml: string;
  readonly offset: number;
  readonly stack: Group[];
  readonly findings: Finding[];
  tooDeep: boolean;
}

/**
 * What an entry may not hold although YAML allows it: anchors, aliases, tags, merge keys, reserved keys, nesting deeper than
 * twenty; and values that a number sign has cut short (a warning).
 */
export function refusedFeatures(yaml: string, events: readonly Event[], offset: number): readonly Finding[] {
  const scan: Scan = { yaml, offset, stack: [], findings: [], tooDeep: false };
  for (const event of events) visit(scan, event);
  return scan.findings;
}

function visit(scan: Scan, event: Event): void {
  if (event.type === EVENT_ID.POP) {
    scan.stack.pop();
    return;
  }
  if (event.type === EVENT_ID.DOCUMENT) {
    scan.stack.push({ map: false, keyNext: false });
    return;
  }
  refuseProperties(scan, event);
  const isKey = turn(scan);
  if (event.type === EVENT_ID.MAPPING || event.type === EVENT_ID.SEQUENCE) {
    scan.stack.push({ map: event.type === EVENT_ID.MAPPING, keyNext: event.type === EVENT_ID.MAPPING });
    if (scan.stack.length - 1 > DEEPEST && !scan.tooDeep) {
      scan.tooDeep = true;
      report(scan, 'yaml-too-deep', event.start, event.start + 1, `The data are nested deeper than ${DEEPEST} levels here.`);
    }
    if (isKey) report(scan, 'yaml-refused', event.start, event.start + 1, 'A list or a group stands as a key.');
  }
  if (event.type === EVENT_ID.SCALAR) visitScalar(scan, event, isKey);
}

/** Whether the node that comes now is a key of its map; the next one then is the value. */
function turn(scan: Scan): boolean {
  const group = scan.stack.at(-1);
  if (group === undefined || !group.map) return false;
  const isKey = group.keyNext;
  group.keyNext = !isKey;
  return isKey;
}

type Node = Exclude<Event, { type: typeof EVENT_ID.POP } | { type: typeof EVENT_ID.DOCUMENT }>;

function refuseProperties(scan: Scan, event: Node): void {
  if (event.type === EVENT_ID.ALIAS) {
    report(
      scan,
      'yaml-refused',
      event.anchorStart - 1,
      event.anchorEnd,
      `The alias *${scan.yaml.slice(event.anchorStart, event.anchorEnd)} stands for a value elsewhere.`,
    );
    return;
  }
  if (event.anchorStart >= 0) {
    report(
      scan,
      'yaml-refused',
      event.anchorStart - 1,
      event.anchorEnd,
      `The anchor &${scan.yaml.slice(event.anchorStart, event.anchorEnd)} names a value to be repeated.`,
    );
  }
  if (event.tagStart >= 0) {
    report(
      scan,
      'yaml-refused',
      event.tagStart,
      event.tagEnd,
      `The tag ${scan.yaml.slice(event.tagStart, event.tagEnd)} changes how a value is read.`,
    );
  }
}

function visitScalar(scan: Scan, event: Extract<Event, { type: typeof EVENT_ID.SCALAR }>, isKey: boolean): void {
  if (isKey) {
    const key = getScalarValue(scan.yaml, event);
    if (key === '<<') report(scan, 'yaml-refused', event.valueStart, event.valueEnd, 'The merge key << copies values from elsewhere.');
    if (RESERVED_KEYS.has(key))
      report(scan, 'yaml-refused', event.valueStart, event.valueEnd, `The key ${key} is reserved and cannot be used.`);
    return;
  }
  if (event.style === SCALAR_STYLE.PLAIN && event.valueEnd > event.valueStart) warnOfHash(scan, event.valueStart, event.valueEnd);
}

/** "420V #120uF": a number, then a comment that begins without a space or is itself nothing but a quantity. */
function warnOfHash(scan: Scan, start: number, end: number): void {
  const comment = /^[ \t]+(?<comment>#[^\r\n]*)/u.exec(scan.yaml.slice(end))?.groups?.['comment'];
  if (comment === undefined || !/\d/u.test(scan.yaml.slice(start, end))) return;
  const looksLikeValue = /^#[^\s#]/u.test(comment) || /^#\s*[\d.,]+\s*[A-Za-zµμΩΩ°%"]{1,4}$/u.test(comment.trimEnd());
  if (!looksLikeValue) return;
  const value = scan.yaml.slice(start, end);
  const written = scan.yaml.slice(start, scan.yaml.indexOf(comment, end) + comment.length);
  report(scan, 'hash-cuts-value', start, start + written.length, `Of "${written}" only "${value}" was read; the rest is a comment.`);
}

function report(scan: Scan, rule: ReadingRuleId, start: number, end: number, message: string): void {
  scan.findings.push(readingFinding(rule, { in: 'text', start: scan.offset + Math.max(0, start), end: scan.offset + end }, message));
}
