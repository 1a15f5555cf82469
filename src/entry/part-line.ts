import type { DataPath } from '../diagnostics/finding.ts';
import type { Role } from '../roles/role.ts';
import type { Rating } from '../units/quantity.ts';
import type { EntryEvidence, Part } from './entry.ts';
import { readReferences } from './part-references.ts';
import type { EntrySource } from './schema.ts';

type PartsSource = Exclude<NonNullable<EntrySource['parts']>, string>;
export type PartFields = Exclude<PartsSource[string][string], string>;

/** Words that stand in the place of a part. */
export const FITTINGS: Readonly<Record<string, Part['fitting']>> = {
  absent: 'absent',
  'not fitted': 'not fitted',
  unknown: 'unknown',
  none: 'absent',
  NC: 'not fitted',
  DNP: 'not fitted',
};

/** One key under one stage. */
export interface Line {
  readonly key: string;
  readonly stage: string;
  readonly value: string | PartFields;
  readonly path: DataPath;
}

/** A part of which no more is known than its line says. */
export function partOf(
  line: Line,
  known: {
    readonly role: Role;
    readonly references: readonly string[];
    readonly fitting: Part['fitting'];
    readonly rating?: Rating | null;
    readonly evidence?: EntryEvidence;
    readonly count?: number;
    readonly arrangement?: Part['arrangement'];
  },
): Part {
  return {
    references: known.references,
    role: known.role.id,
    stage: line.stage,
    alsoIn: [],
    maker: null,
    number: null,
    marking: null,
    package: null,
    technology: null,
    rating: known.rating ?? null,
    evidence: known.evidence ?? 'marked',
    count: known.count ?? 1,
    arrangement: known.arrangement ?? 'single',
    fitting: known.fitting,
    measured: null,
    alsoStated: [],
    datasheet: null,
    note: null,
    path: line.path,
  };
}

/** References of a key, ranges opened. */
export function referencesOf(key: string): readonly string[] {
  return readReferences(key).map(({ reference }) => reference);
}
