import { partRatingRemarks } from '../corpus/agreement/part-ratings.ts';
import { makerSpellingRemarks, partSpellingRemarks } from '../corpus/agreement/spellings.ts';
import type { AcrossRemark, StatedPlace } from '../corpus/agreement/stated-text.ts';
import type { PartFactsByNumber } from '../corpus/part-facts/part-facts.ts';
import type { Diagnostic, Finding } from '../diagnostics/finding.ts';
import { answerAmong } from '../entry/answer-for.ts';
import type { EntryRecord } from './entry-record.ts';
import type { EntrySteps } from './entry-steps.ts';
import { pipelineFinding, type FileFinding } from './pipeline-rule.ts';
import { placeInFiles } from './place-in-files.ts';
import { atTop } from './at-top.ts';

/** Places of other entries that a finding names. */
const MOST_PLACES = 3;

/** Findings on parts and makers that only show when all entries lie side by side, by the entry that each belongs to. */
export async function acrossFindings(
  content: string,
  records: readonly EntryRecord[],
  facts: PartFactsByNumber,
  given: EntrySteps | null,
): Promise<readonly { readonly slug: string; readonly diagnostic: Diagnostic }[]> {
  const parts = records.flatMap((record) => record.stated.parts);
  const remarks = [
    ...partRatingRemarks(parts, facts),
    ...partSpellingRemarks(parts, facts),
    ...makerSpellingRemarks(records.flatMap((record) => record.stated.makers)),
  ];
  if (remarks.length === 0) return [];
  const places = await placesOf(content, remarks, given);
  const answers = new Map(records.map((record) => [record.slug, record.stated.answers]));
  return remarks.flatMap((remark) => {
    const at = places.get(keyOf(remark.at));
    if (at === undefined) return [];
    const finding: Finding = { ...pipelineFinding(remark.rule, messageOf(remark, places)), subject: remark.subject };
    const answer = answerAmong(answers.get(remark.at.slug) ?? [], finding)?.because ?? null;
    const { file, line, column, endLine, endColumn } = at;
    return [{ slug: remark.at.slug, diagnostic: { ...atTop(file, finding), line, column, endLine, endColumn, answer } }];
  });
}

function messageOf({ message, others, at }: AcrossRemark, places: ReadonlyMap<string, Diagnostic>): string {
  const elsewhere = others.filter((place) => place.slug !== at.slug || others.every((other) => other.slug === at.slug));
  const named = elsewhere.slice(0, MOST_PLACES).flatMap((place) => {
    const found = places.get(keyOf(place));
    return found === undefined ? [] : [`${found.file}:${String(found.line)}:${String(found.column)}`];
  });
  const more = elsewhere.length > MOST_PLACES ? [`${String(elsewhere.length - MOST_PLACES)} more`] : [];
  return `${message} (${[...named, ...more].join(', ')}).`;
}

/** Lines and columns of everything that the remarks name; each file is read once. */
async function placesOf(
  content: string,
  remarks: readonly AcrossRemark[],
  given: EntrySteps | null,
): Promise<ReadonlyMap<string, Diagnostic>> {
  const wanted = new Map(
    remarks.flatMap(({ at, others }) => [at, ...others.slice(0, MOST_PLACES + 1)]).map((place) => [keyOf(place), place]),
  );
  const marks = [...wanted].map(([key, place]): FileFinding => {
    const where =
      place.cell === null
        ? ({ in: 'data', path: place.path, part: 'value' } as const)
        : ({ in: 'file', line: place.cell.line, column: place.cell.column } as const);
    return { file: place.cell?.file ?? place.file, finding: { rule: 'internal-fault', severity: 'note', where, message: key } };
  });
  return new Map((await placeInFiles(content, marks, given)).map((diagnostic) => [diagnostic.message, diagnostic]));
}

function keyOf({ file, path }: StatedPlace): string {
  return JSON.stringify([file, path]);
}
