import type { DataPath } from '../diagnostics/finding.ts';
import { readDate } from './calendar-date.ts';
import type { Answer, CitedSource, Correction, Recall } from './entry.ts';
import { listed, type ReadingContext } from './reading-context.ts';
import { atValue, readingFinding } from './reading-rules.ts';
import type { EntrySource } from './schema.ts';

/** Reads the author's answers to findings. */
export function readAnswers(context: ReadingContext, source: EntrySource['answers']): readonly Answer[] {
  return listed(context, source, ['answers']).map(({ item, path }) => ({ to: item.to, at: item.at ?? null, because: item.because, path }));
}

/** Reads the corrections in the order in which they stand; the date stays as written where it can't be read. */
export function readCorrections(context: ReadingContext, source: EntrySource['corrections']): readonly Correction[] {
  return listed(context, source, ['corrections']).map(({ item, path }) => ({
    date: readDate(context, item.date, [...path, 'date']) ?? item.date,
    where: item.where,
    was: item.was ?? null,
    is: item.is ?? null,
    why: item.why,
  }));
}

/** Reads the recall notice. */
export function readRecall(context: ReadingContext, source: EntrySource['recall']): Recall | null {
  if (source === undefined) return null;
  const date = readDate(context, source.date, ['recall', 'date']) ?? source.date;
  return { authority: source.authority, date, url: readAddress(context, source.url, ['recall', 'url']) ?? '', hazard: source.hazard };
}

/** Reads what the author drew on. */
export function readSources(context: ReadingContext, source: EntrySource['sources']): readonly CitedSource[] {
  return listed(context, source, ['sources']).map(({ item, path }) =>
    typeof item === 'string'
      ? { title: item, url: null, note: null }
      : {
          title: item.title,
          url: item.url === undefined ? null : readAddress(context, item.url, [...path, 'url']),
          note: item.note ?? null,
        },
  );
}

/** Reads addresses that the teardown had before. */
export function readFormerAddresses(context: ReadingContext, source: EntrySource['former addresses']): readonly string[] {
  return listed<string>(context, source, ['former addresses']).flatMap(({ item, path }) => {
    if (/^\/[^\s?#]*$/u.test(item) && !item.split('/').includes('..')) return [item];
    const message = `"${item}" is no address of this site.`;
    context.findings.push(
      readingFinding('unreadable-value', atValue(path), message, { advice: 'Begin with a slash: /teardowns/lm-q-100/.' }),
    );
    return [];
  });
}

/** An address of the web as written; anything but http and https is refused, since it becomes a link. */
function readAddress(context: ReadingContext, text: string, path: DataPath): string | null {
  if (/^https?:\/\/[^\s/]+\S*$/iu.test(text)) return text;
  const message = `"${text}" is no address of the web.`;
  context.findings.push(readingFinding('unreadable-value', atValue(path), message, { advice: 'Write it with https:// in front.' }));
  return null;
}
