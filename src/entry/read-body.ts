import { readSize } from '../units/read-size.ts';
import type { Body } from './entry.ts';
import { accepted, readFact, type ReadingContext, textsOf, written } from './reading-context.ts';
import type { EntrySource } from './schema.ts';
import { splitEvidence } from './split-evidence.ts';

/** Reads size, mass and case; measured unless the entry says otherwise. */
export function readBody(context: ReadingContext, source: EntrySource['body']): Body {
  const evidence = source?.evidence ?? 'measured';
  return {
    size: readOuterSize(context, source?.size, evidence),
    volume: readFact(context, written(source?.volume, ['body', 'volume'], evidence), 'volume'),
    mass: readFact(context, written(source?.mass, ['body', 'mass'], evidence), 'mass'),
    basis: source?.basis ?? 'cased',
    prongs: source?.prongs ?? null,
    cable: source?.cable ?? null,
    inlet: source?.inlet ?? null,
    plug: source?.plug ?? null,
    material: source?.material ?? null,
    alsoStated: textsOf(source?.['also stated']),
    note: source?.note ?? null,
  };
}

function readOuterSize(context: ReadingContext, text: string | undefined, inherited: NonNullable<Body['size']>['evidence']): Body['size'] {
  if (text === undefined) return null;
  const split = splitEvidence(text);
  const path = ['body', 'size'];
  const size = accepted(context, readSize(split.text), path);
  return size === null ? null : { size, evidence: split.evidence ?? inherited, path };
}
