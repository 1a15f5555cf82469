import type { DataPath, Finding } from '../diagnostics/finding.ts';
import { readDate } from './calendar-date.ts';
import type { Entry, Part } from './entry.ts';
import { knownStages } from './part-role.ts';
import { readBody } from './read-body.ts';
import { readClaims } from './read-claims.ts';
import { readDevice, readSample } from './read-device.ts';
import { readEfficiency } from './read-efficiency.ts';
import { readInsulation } from './read-insulation.ts';
import { readLogs } from './read-logs.ts';
import { readMeasurements } from './read-measurements.ts';
import { readNameplate } from './read-nameplate.ts';
import { readParts } from './read-parts.ts';
import { readPhotos } from './read-photos.ts';
import { readPortList, type PortNames } from './read-port-list.ts';
import { readPorts } from './read-ports.ts';
import { readAnswers, readCorrections, readFormerAddresses, readRecall, readSources } from './read-record.ts';
import { readCellsOpened, readDischarged, readPoweredOpen } from './read-safety.ts';
import { readShape } from './read-shape.ts';
import { readSharing } from './read-sharing.ts';
import { readStages } from './read-stages.ts';
import type { ReadingContext } from './reading-context.ts';
import { atKey, readingFinding } from './reading-rules.ts';
import type { EntrySource } from './schema.ts';

/** One entry as it comes from its file: address, place, and the data that YAML gave. */
export interface EntryInput {
  /** Folder name, which is its address. */
  readonly slug: string;
  /** Path from the content folder, with forward slashes. */
  readonly file: string;
  readonly frontmatter: unknown;
}

/**
 * Reads an entry: its shape, then every text in it. All findings come in one run; what is wrong is left out and the rest is read.
 * `entry` is null only where the data are no group of keys at all. Never throws.
 */
export function readEntry(input: EntryInput): { readonly entry: Entry | null; readonly findings: readonly Finding[] } {
  const shape = readShape(input.frontmatter, input.slug);
  if (shape.source === null) return { entry: null, findings: shape.findings };
  const context: ReadingContext = { findings: [], gaps: shape.gaps };
  const entry = readSections(context, input, shape.source);
  return { entry, findings: withoutRepeats([...shape.findings, ...notCausedBy(shape.findings, context.findings)]) };
}

/** What is missing only because its shape was wrong and it was left out has been said already. */
function notCausedBy(shape: readonly Finding[], findings: readonly Finding[]): readonly Finding[] {
  const left = shape.flatMap(({ where }) => (where.in === 'data' ? [where.path] : []));
  const beneath = (path: DataPath): boolean => left.some((gone) => path.every((segment, index) => gone[index] === segment));
  return findings.filter(({ rule, where }) => rule !== 'missing-field' || where.in !== 'data' || !beneath(where.path));
}

function readSections(context: ReadingContext, input: EntryInput, source: EntrySource): Entry {
  const ports = readPorts(context, source.ports);
  const portNames = ports.map(({ id }) => id);
  const stages = readStages(context, source.stages, portNames);
  const parts = readParts(context, source.parts, knownStages(Object.keys(source.stages ?? {}), stages));
  return {
    slug: input.slug,
    file: input.file,
    ...readHead(context, source),
    device: readDevice(context, source.device),
    sample: readSample(source.sample),
    nameplate: readNameplate(context, source.nameplate),
    body: readBody(context, source.body),
    ports,
    sharing: readSharing(context, source.sharing, portNames),
    stages,
    parts,
    insulation: readInsulation(context, source.insulation),
    efficiency: readEfficiency(context, source.measurements?.efficiency, portNames),
    measurements: readMeasurements(context, source.measurements, portNames),
    instruments: source.measurements?.instruments ?? {},
    claims: readClaims(context, source.claims),
    logs: readLogs(source.logs, portNaming(context, portNames)),
    photos: readPhotos(context, source.photos, referencesOf(parts)),
    ...readRecord(context, source),
  };
}

type Head = Pick<Entry, 'number' | 'title' | 'summary' | 'status' | 'published' | 'author'>;

function readHead(context: ReadingContext, source: EntrySource): Head {
  const status = source.status ?? 'draft';
  if (status === 'published' && source.published === undefined) {
    context.findings.push(
      readingFinding('missing-field', atKey(['status']), 'A published entry has no day of publication.', {
        advice: 'Add published: with the day, such as 2026-03-14.',
      }),
    );
  }
  return {
    number: source.number ?? null,
    title: source.title,
    summary: source.summary ?? null,
    status,
    published: readDate(context, source.published, ['published']),
    author: source.author ?? null,
  };
}

type Record = Pick<
  Entry,
  'answers' | 'corrections' | 'formerAddresses' | 'recall' | 'sources' | 'derating' | 'discharged' | 'poweredOpen' | 'cellsOpened'
>;

function readRecord(context: ReadingContext, source: EntrySource): Record {
  return {
    answers: readAnswers(context, source.answers),
    corrections: readCorrections(context, source.corrections),
    formerAddresses: readFormerAddresses(context, source['former addresses']),
    recall: readRecall(context, source.recall),
    sources: readSources(context, source.sources),
    derating: source.derating ?? null,
    discharged: readDischarged(context, source.discharged),
    poweredOpen: readPoweredOpen(source['powered open']),
    cellsOpened: readCellsOpened(source['cells opened']),
  };
}

/** Names of measured ports, made those of the entry; a name that it does not have is reported and kept as written. */
function portNaming(context: ReadingContext, ports: readonly string[]): PortNames {
  return (text: string | undefined, path: DataPath): string | null => {
    const names = readPortList(context, text, path, ports);
    return names.length === 0 ? null : names.join(', ');
  };
}

function referencesOf(parts: readonly Part[]): readonly string[] {
  return parts.flatMap(({ references }) => references);
}

/** A value that `same as` repeats is read more than once; what is wrong with it is said once. */
function withoutRepeats(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Set<string>();
  return findings.filter((finding) => {
    const key = JSON.stringify([finding.rule, finding.where, finding.message]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
