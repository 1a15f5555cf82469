import { findStage, STAGE_PARAMETER_KEYS, stageWords } from '../stages/index.ts';
import type { StageDeclaration } from '../stages/stage-kind.ts';
import type { Fact, Stage } from './entry.ts';
import { didYouMean } from './nearest-word.ts';
import { findPort } from './port-names.ts';
import { namesOf, readFact, type ReadingContext, textsOf } from './reading-context.ts';
import { atKey, atValue, readingFinding } from './reading-rules.ts';
import { type Named, resolveRepetition, type Resolved } from './repetition.ts';
import type { EntrySource } from './schema.ts';
import { readReset } from './read-reset.ts';
import { readTurns, readTurnsRatio, type WindingText } from './read-windings.ts';
import { splitEvidence } from './split-evidence.ts';

type StageFields = Exclude<NonNullable<EntrySource['stages']>[string], string>;

/** Reads the blocks of the power path in the order in which they stand. A block of unknown kind is reported and left out. */
export function readStages(context: ReadingContext, source: EntrySource['stages'], ports: readonly string[]): readonly Stage[] {
  const groups = new Map(
    Object.entries(source ?? {}).map(([id, value]): [string, Named<StageFields>] => {
      const fields: StageFields = typeof value === 'string' ? { is: value } : value;
      return [id, { fields, path: ['stages', id] }];
    }),
  );
  const targets = { ports, stages: [...groups.keys()] };
  return [...groups].flatMap(([id, group]) => {
    const names = { rule: 'unknown-stage', thing: 'block', known: () => targets.stages } as const;
    const resolved = resolveRepetition(context, group, (name) => groups.get(name) ?? null, names);
    const short = typeof source?.[id] === 'string';
    const kind = kindOf(context, id, resolved, short ? group : null);
    return kind === null ? [] : [readStage(context, id, group, resolved, kind, targets)];
  });
}

function kindOf(
  context: ReadingContext,
  id: string,
  resolved: Resolved<StageFields>,
  short: Named<StageFields> | null,
): StageDeclaration | null {
  const words = resolved.fields.is;
  if (words === undefined) {
    context.findings.push(
      readingFinding('missing-field', atKey(['stages', id]), `Block ${id} does not say what it is.`, {
        advice: 'Add is: with its name in the trade.',
        subject: id,
      }),
    );
    return null;
  }
  const kind = findStage(words);
  if (kind !== null) return kind;
  const place = atValue(short === null ? resolved.placeOf('is') : short.path);
  const advice = didYouMean(words, stageWords()) ?? 'Use the name of the trade: boost PFC, flyback, LLC half bridge, buck …';
  context.findings.push(readingFinding('unknown-stage', place, `Nobody calls a block "${words}".`, { advice, subject: id }));
  return null;
}

interface Targets {
  readonly ports: readonly string[];
  readonly stages: readonly string[];
}

function readStage(
  context: ReadingContext,
  id: string,
  group: Named<StageFields>,
  resolved: Resolved<StageFields>,
  kind: StageDeclaration,
  targets: Targets,
): Stage {
  const { fields } = resolved;
  return {
    id,
    kind: kind.kind,
    mode: fields.mode ?? null,
    parameters: readParameters(context, resolved, kind),
    ...readWindings(context, resolved, kind),
    cells: readCells(context, resolved),
    feeds: readFeeds(context, resolved, targets),
    alsoStated: textsOf(fields['also stated']),
    note: fields.note ?? null,
    path: group.path,
  };
}

/** What is said of a transformer, where the block has one; a buck has neither turns nor a ratio of them. */
function readWindings(
  context: ReadingContext,
  resolved: Resolved<StageFields>,
  kind: StageDeclaration,
): Pick<Stage, 'turns' | 'turnsEvidence' | 'turnsRatio' | 'reset'> {
  const evidence = resolved.fields.evidence ?? 'measured';
  const field = (key: 'turns' | 'turns ratio' | 'reset', fits: boolean): WindingText => {
    const text = resolved.fields[key];
    const path = resolved.placeOf(key);
    if (text !== undefined && !fits) {
      const advice = key === 'reset' ? 'It belongs to a forward converter.' : 'It belongs to the block with the transformer.';
      context.findings.push(readingFinding('parameter-out-of-place', atKey(path), `"${key}" is no parameter of ${kind.name}.`, { advice }));
    }
    return { text: fits ? text : undefined, path, evidence };
  };
  const isWound = kind.roles.includes('transformer');
  return {
    ...readTurns(context, field('turns', isWound)),
    turnsRatio: readTurnsRatio(context, field('turns ratio', isWound)),
    reset: readReset(context, field('reset', kind.kind === 'forward')),
  };
}

function readParameters(context: ReadingContext, resolved: Resolved<StageFields>, kind: StageDeclaration): Readonly<Record<string, Fact>> {
  const facts: Record<string, Fact> = {};
  for (const key of STAGE_PARAMETER_KEYS) {
    const text: unknown = Reflect.get(resolved.fields, key);
    if (typeof text !== 'string') continue;
    const place = resolved.placeOf(key);
    const parameter = kind.parameters.find((candidate) => candidate.key === key);
    if (parameter === undefined) {
      const known = kind.parameters.map((candidate) => candidate.key);
      const advice = known.length === 0 ? 'It has no parameters; use a note.' : `It has: ${known.join(', ')}.`;
      context.findings.push(
        readingFinding('parameter-out-of-place', atKey(place), `"${key}" is no parameter of ${kind.name}.`, { advice }),
      );
      continue;
    }
    const fact = readFact(context, { text, path: place, evidence: resolved.fields.evidence ?? 'measured' }, parameter.dimension);
    if (fact !== null) facts[key] = fact;
  }
  return facts;
}

/** "4S2P", "4S", "4s 2p". */
function readCells(context: ReadingContext, resolved: Resolved<StageFields>): Stage['cells'] {
  const text = resolved.fields.cells;
  if (text === undefined) return null;
  const groups = /^(?<series>\d{1,3})\s*s\s*(?:(?<parallel>\d{1,3})\s*p)?$/iu.exec(splitEvidence(text).text.trim())?.groups;
  const series = Number(groups?.['series'] ?? 0);
  const parallel = Number(groups?.['parallel'] ?? 1);
  if (series > 0 && parallel > 0) return { series, parallel };
  context.findings.push(
    readingFinding('unreadable-value', atValue(resolved.placeOf('cells')), `"${text}" does not say how cells are connected.`, {
      advice: 'Write cells in series and in parallel: 4S2P.',
    }),
  );
  return null;
}

function readFeeds(context: ReadingContext, resolved: Resolved<StageFields>, targets: Targets): readonly string[] {
  return namesOf(context, resolved.fields.feeds, resolved.placeOf('feeds')).flatMap(({ name, path, span }) => {
    if (targets.stages.includes(name)) return [name];
    const port = findPort(targets.ports, name);
    if (port !== null) return [port];
    const advice = didYouMean(name, [...targets.ports, ...targets.stages]) ?? undefined;
    context.findings.push(
      readingFinding(
        'unknown-port',
        atValue(path, span),
        `"${name}" is neither a port nor a block of this entry.`,
        advice === undefined ? {} : { advice },
      ),
    );
    return [];
  });
}
