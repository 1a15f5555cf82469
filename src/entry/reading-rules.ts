import type { RuleDeclaration } from '../diagnostics/rule-declaration.ts';
import type { DataPath, Finding, Severity, Whereabouts } from '../diagnostics/finding.ts';

/** Declaration of a rule that the reader of entries reports, so that it has its page and can be explained. */
export type ReadingRule = RuleDeclaration<string>;

const YAML = 'YAML 1.2.2, yaml.org/spec/1.2.2';
const FORMAT = 'entry format, version 1';
const PRACTICE = 'common practice';

/** Rules that the reader of entries reports, file and YAML first, then shape, then texts, then names. */
export const READING_RULES = [
  {
    id: 'missing-frontmatter',
    title: 'A file does not begin with its data',
    severity: 'error',
    why: 'The data of a teardown stand between two lines of three dashes at the top of its file; without them there is no entry.',
    advice: 'Begin the file with a line ---, write the data, and end them with another line ---.',
    source: FORMAT,
  },
  {
    id: 'empty-entry',
    title: 'A file holds no data',
    severity: 'error',
    why: 'There is nothing to publish.',
    advice: 'Write at least a title and the device, or start again from the template.',
    source: FORMAT,
  },
  {
    id: 'file-too-large',
    title: 'A file is larger than an entry can be',
    severity: 'error',
    why: 'An entry of sixty parts has some 24 KB; a file of more than 256 KB is usually a log or a picture pasted into it.',
    advice: 'Put logs and pictures beside the entry and name them in it.',
    source: FORMAT,
  },
  {
    id: 'yaml-syntax',
    title: 'The data are not well-formed YAML',
    severity: 'error',
    why: 'What stands behind the place could be read in more than one way, so it is not read at all.',
    advice: 'Correct the line; put text with colons, number signs or brackets in quotes.',
    source: YAML,
  },
  {
    id: 'duplicate-key',
    title: 'A key stands twice in one group',
    severity: 'error',
    why: 'Only one of the two could count, and nobody could say which.',
    advice: 'Merge the two, or rename one.',
    source: `${YAML}, section 3.2.1.3`,
  },
  {
    id: 'yaml-refused',
    title: 'A feature of YAML that entries do not use',
    severity: 'error',
    why: 'Anchors, aliases, merge keys and tags let one line change another far away, or swell a small file without bound.',
    advice: 'Write the value out; for a port, stage or part that repeats, use same as.',
    source: `${YAML}, sections 3.2.2.2 and 6.9`,
  },
  {
    id: 'yaml-too-deep',
    title: 'Data are nested deeper than an entry can be',
    severity: 'error',
    why: 'The format needs six levels; more than twenty are a slip of brackets.',
    advice: 'Close the brackets where they belong.',
    source: FORMAT,
  },
  {
    id: 'hash-cuts-value',
    title: 'A number sign may have cut a value short',
    severity: 'warning',
    why: 'In YAML a number sign after a space starts a comment: 420V #120uF is read as 420V.',
    advice: 'Put the whole value in quotes, or a space behind the sign where a comment is meant.',
    source: `${YAML}, section 6.6`,
  },
  {
    id: 'blank-left',
    title: 'A blank of the template is not filled in',
    severity: 'error',
    why: 'What stands between the marks ‹ and › is an example and nothing that was seen on this device.',
    advice: 'Write your own value without the marks, or take the line out.',
    source: FORMAT,
  },
  {
    id: 'unknown-key',
    title: 'A key that the format does not know',
    severity: 'error',
    why: 'A mistyped key would leave its value unread, and the page would look right without it.',
    advice: 'Correct the key; remarks go under note.',
    source: FORMAT,
  },
  {
    id: 'wrong-shape',
    title: 'A value has the wrong shape',
    severity: 'error',
    why: 'A list, a group or a word stands where the format has something else.',
    advice: 'Write it as the example shows.',
    source: FORMAT,
  },
  {
    id: 'missing-field',
    title: 'A field that an entry needs is missing',
    severity: 'error',
    why: 'The page cannot be built without it.',
    advice: 'Add it.',
    source: FORMAT,
  },
  {
    id: 'unquoted-number',
    title: 'A bare number where text is wanted',
    severity: 'error',
    why: 'YAML keeps the value and loses the writing: 1.10 becomes 1.1, 012 becomes 12, 1e3 becomes 1000.',
    advice: 'Put it in quotes; a quantity needs its unit too.',
    source: `${YAML}, section 10.3.2`,
  },
  {
    id: 'unreadable-value',
    title: 'A value that cannot be read',
    severity: 'error',
    why: 'Nothing is guessed: what cannot be read whole is not used at all.',
    advice: 'Write it as the trade does: number, space, unit.',
    source: FORMAT,
  },
  {
    id: 'value-remark',
    title: 'A value that can be read, with a remark',
    severity: 'note',
    why: 'It was read, but its writing can be misunderstood or is not likely.',
    advice: 'Write it as the remark says, or answer the finding.',
    source: PRACTICE,
  },
  {
    id: 'unknown-role',
    title: 'A part role that nobody uses',
    severity: 'error',
    why: 'Checks know parts by their role; a part without one is checked by none.',
    advice: 'Use a word of the trade; the list of roles has them all.',
    source: FORMAT,
  },
  {
    id: 'role-out-of-place',
    title: 'A part in a block that does not hold its kind',
    severity: 'warning',
    why: 'Stress is computed by block; a part under the wrong one is judged by the wrong voltages.',
    advice: 'Put it under its own block, or name the block under also in.',
    source: PRACTICE,
  },
  {
    id: 'unknown-stage',
    title: 'A block of the power path that is not known',
    severity: 'error',
    why: 'A block is known by its name in the trade; parts, feeds and measurements name it by its own name under stages.',
    advice: 'Correct the name, or add the block under stages.',
    source: FORMAT,
  },
  {
    id: 'parameter-out-of-place',
    title: 'A parameter that its block does not have',
    severity: 'error',
    why: 'No formula of this block uses it, so it would be left unread.',
    advice: 'Move it to the block it belongs to, or into a note.',
    source: FORMAT,
  },
  {
    id: 'unknown-port',
    title: 'A port that is not there',
    severity: 'error',
    why: 'Allocations, feeds and measurements name ports by the names that stand under ports.',
    advice: 'Correct the name, or add the port.',
    source: FORMAT,
  },
  {
    id: 'unknown-part',
    title: 'A part that is not there',
    severity: 'error',
    why: 'Callouts, measured stresses and same as name parts by their references.',
    advice: 'Correct the reference, or add the part.',
    source: FORMAT,
  },
  {
    id: 'duplicate-reference',
    title: 'A reference stands at two parts',
    severity: 'error',
    why: 'A link to it, a callout and an answer could mean either.',
    advice: 'Rename one; any label will do that is unique in the entry.',
    source: FORMAT,
  },
  {
    id: 'shares-mismatch',
    title: 'Ports and powers of an allocation do not match',
    severity: 'error',
    why: 'It cannot be told which port has which power, or which of them share one.',
    advice: 'One power a port; bracket ports that share one: C1 + (C2 + A1): 45 W + 15 W.',
    source: FORMAT,
  },
  {
    id: 'loads-mismatch',
    title: 'Ports and what was measured at them do not match',
    severity: 'error',
    why: 'It cannot be told which port carried what, so nothing could be computed of the point.',
    advice: 'One amount a port, in the order of the ports: 20.01 V 2.5 A + 8.97 V 1.1 A, 65.2 W.',
    source: FORMAT,
  },
  {
    id: 'repetition-circle',
    title: 'A repetition that leads back to itself',
    severity: 'error',
    why: 'There is nothing to repeat.',
    advice: 'Let same as name one that is written out.',
    source: FORMAT,
  },
] as const satisfies readonly ReadingRule[];

/** Id of a rule of the entry reader. */
export type ReadingRuleId = (typeof READING_RULES)[number]['id'];

const BY_ID: ReadonlyMap<string, ReadingRule> = new Map(READING_RULES.map((rule) => [rule.id, rule]));

/** What a finding of the reader may say beyond its message. */
export interface FindingDetails {
  readonly severity?: Severity;
  readonly advice?: string;
  readonly subject?: string;
}

/** A finding of the entry reader: why, advice and source come from its rule unless it has better advice of its own. */
export function readingFinding(rule: ReadingRuleId, where: Whereabouts, message: string, details: FindingDetails = {}): Finding {
  const declared = BY_ID.get(rule);
  return {
    rule,
    severity: details.severity ?? declared?.severity ?? 'error',
    where,
    message,
    ...(declared === undefined ? {} : { why: declared.why, source: declared.source }),
    ...(details.advice === undefined && declared === undefined ? {} : { advice: details.advice ?? declared?.advice ?? '' }),
    ...(details.subject === undefined ? {} : { subject: details.subject }),
  };
}

/** The value at a path, or a piece of its text. */
export function atValue(path: DataPath, span?: { readonly start: number; readonly end: number }): Whereabouts {
  return span === undefined
    ? { in: 'data', path, part: 'value' }
    : { in: 'data', path, part: 'value', span: { start: span.start, end: span.end } };
}

/** The key at a path, or a piece of its text. */
export function atKey(path: DataPath, span?: { readonly start: number; readonly end: number }): Whereabouts {
  return span === undefined
    ? { in: 'data', path, part: 'key' }
    : { in: 'data', path, part: 'key', span: { start: span.start, end: span.end } };
}
