import type { z } from 'zod';
import type { DataPath, Finding } from '../diagnostics/finding.ts';
import { didYouMean } from './nearest-word.ts';
import { atKey, atValue, readingFinding } from './reading-rules.ts';
import { ENTRY_SCHEMA } from './schema.ts';
import { keysAt } from './schema-keys.ts';

type Issue = z.core.$ZodIssue;

/** A fault of shape and the place in the data that has to go for the rest to be read. */
export interface ShapeFault {
  readonly finding: Finding;
  readonly remove: DataPath;
}

/** Every fault that the schema names, in the author's words. */
export function shapeFaults(issues: readonly Issue[], data: unknown): readonly ShapeFault[] {
  return issues.flatMap((issue) => faultsOf(issue, [], data));
}

function faultsOf(issue: Issue, above: DataPath, data: unknown): readonly ShapeFault[] {
  const path = [...above, ...issue.path.map((segment) => (typeof segment === 'number' ? segment : String(segment)))];
  const value = valueAt(data, path);
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey(path, key));
  if (issue.code === 'invalid_union') return unionFaults(issue, path, data);
  if (issue.code === 'invalid_type') return [typeFault(path, value, [wordFor(issue.expected)])];
  if (issue.code === 'invalid_value') return [choiceFault(path, value, issue.values.map(String))];
  if (issue.code === 'too_small') return [shapeFault(path, `${name(path)} is empty.`, 'Fill it in, or take the line out.')];
  return [shapeFault(path, `${name(path)} cannot be ${shown(value)}.`)];
}

function unknownKey(path: DataPath, key: string): ShapeFault {
  const known = keysAt(ENTRY_SCHEMA, path);
  const place = path.length === 0 ? 'an entry' : name(path);
  const advice = didYouMean(key, known) ?? (known.length > 0 && known.length < 20 ? `Known here: ${known.join(', ')}.` : undefined);
  const message = `"${key}" is no key of ${place}.`;
  return {
    finding: readingFinding('unknown-key', atKey([...path, key]), message, advice === undefined ? {} : { advice }),
    remove: [...path, key],
  };
}

/** Of several shapes that a value may have, the one that it comes nearest to is judged. */
function unionFaults(issue: Extract<Issue, { code: 'invalid_union' }>, path: DataPath, data: unknown): readonly ShapeFault[] {
  const value = valueAt(data, path);
  const fitting = issue.errors.filter((branch) => !branch.some((inner) => inner.path.length === 0 && isMismatch(inner)));
  const nearest = [...fitting].sort((a, b) => a.length - b.length)[0];
  if (nearest !== undefined && nearest.length > 0) return nearest.flatMap((inner) => faultsOf(inner, path, data));
  const refusals = issue.errors.flat().flatMap(leaves);
  const choices = refusals.flatMap((inner) => (inner.code === 'invalid_value' ? inner.values.map(String) : []));
  const expected = refusals.flatMap((inner) => (inner.code === 'invalid_type' ? [wordFor(inner.expected)] : []));
  if (choices.length > 0 && (typeof value === 'string' || (typeof value === 'number' && !expected.includes('text'))))
    return [choiceFault(path, value, choices)];
  return [typeFault(path, value, expected.length > 0 ? expected : ['something else'])];
}

/** The plain refusals inside alternatives of alternatives. */
function leaves(issue: Issue): readonly Issue[] {
  return issue.code === 'invalid_union' ? issue.errors.flat().flatMap(leaves) : [issue];
}

function isMismatch(issue: Issue): boolean {
  if (issue.code === 'invalid_union')
    return issue.errors.every((branch) => branch.some((inner) => inner.path.length === 0 && isMismatch(inner)));
  return issue.code === 'invalid_type' || issue.code === 'invalid_value';
}

function typeFault(path: DataPath, value: unknown, expected: readonly string[]): ShapeFault {
  if (value === undefined) return missing(path);
  if (value === null) return shapeFault(path, `${name(path)} is empty.`, 'Fill it in, or take the line out.');
  if (expected.includes('text') && typeof value === 'number') {
    // What was written is in the quoted line; the number that YAML made of it may have lost its zeros.
    const message = `${name(path)} is a bare number; text is wanted here.`;
    const advice = 'Put it in quotes as it is written here, zeros included; a quantity needs its unit too.';
    return { finding: readingFinding('unquoted-number', atValue(path), message, { advice }), remove: path };
  }
  return shapeFault(path, `${name(path)} should be ${[...new Set(expected)].join(' or ')}, and is ${shown(value)}.`);
}

function missing(path: DataPath): ShapeFault {
  const field = String(path.at(-1) ?? '');
  const holder = path.length > 1 ? name(path.slice(0, -1)) : 'The entry';
  return {
    finding: readingFinding('missing-field', atKey(path), `${holder} has no ${field}.`, { advice: `Add ${field}.` }),
    remove: path.slice(0, -1),
  };
}

function choiceFault(path: DataPath, value: unknown, choices: readonly string[]): ShapeFault {
  if (value === undefined) return missing(path);
  const advice = (typeof value === 'string' ? didYouMean(value, choices) : null) ?? `One of: ${choices.join(', ')}.`;
  return shapeFault(path, `${name(path)} is ${shown(value)}, which is none of ${choices.join(', ')}.`, advice);
}

function shapeFault(path: DataPath, message: string, advice?: string): ShapeFault {
  return { finding: readingFinding('wrong-shape', atValue(path), message, advice === undefined ? {} : { advice }), remove: path };
}

/** "parts › pfc › C5 › rating"; items of lists count from 1. */
function name(path: DataPath): string {
  if (path.length === 0) return 'The entry';
  return path.map((segment) => (typeof segment === 'number' ? `${segment + 1}` : segment)).join(' › ');
}

function shown(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'a group of keys';
  if (typeof value === 'string') return `"${value.length > 60 ? `${value.slice(0, 60)}…` : value}"`;
  if (typeof value === 'number') return `the number ${String(value)}`;
  if (typeof value === 'boolean') return value ? 'true' : 'false';
  return value === null ? 'empty' : 'something that no file can hold';
}

function wordFor(expected: string): string {
  const words: Readonly<Record<string, string>> = {
    string: 'text',
    number: 'a number',
    int: 'a whole number',
    boolean: 'yes or no',
    array: 'a list',
    object: 'a group of keys',
    record: 'a group of keys',
  };
  return words[expected] ?? expected;
}

function valueAt(data: unknown, path: DataPath): unknown {
  let value = data;
  for (const segment of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, segment)) return undefined;
    value = Reflect.get(value, segment);
  }
  return value;
}
