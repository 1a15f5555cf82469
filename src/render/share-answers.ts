import type { Entry } from '../entry/entry.ts';
import type { AddedDevice } from '../sharing/added-device.ts';
import { readerAnswers, type FullPower, type ReaderAnswers } from '../sharing/reader-answers.ts';
import type { ShareMatrix } from '../sharing/share-matrix.ts';
import { wattsInWords } from '../sharing/watts-in-words.ts';
import { listed, sentence } from './words.ts';

/** What readers ask first, each in one sentence: where full power is, what falls most, what happens to the others. */
export function shareAnswers(entry: Entry, matrix: ShareMatrix): readonly string[] {
  const answers = readerAnswers(matrix, entry);
  return [
    ...(answers.fullPower === null ? [] : [fullPowerSentence(answers.fullPower, matrix)]),
    ...fallSentence(answers),
    interruptionSentence(answers),
  ];
}

/** The same as a list. */
export function shareAnswerList(entry: Entry, matrix: ShareMatrix): string {
  if (matrix.ports.length < 2) return '';
  return `<ul class="answers">${shareAnswers(entry, matrix)
    .map((answer) => `<li>${sentence(answer)}</li>`)
    .join('')}</ul>`;
}

function fullPowerSentence({ total, ports, sets }: FullPower, matrix: ShareMatrix): string {
  const watts = wattsInWords(total.nominal);
  if (ports.length === matrix.ports.length) return `Full power, ${watts}, at each port alone.`;
  if (ports.length > 0)
    return `Full power, ${watts}, only at ${ports.length === 1 ? (ports[0] ?? '') : `${ports.slice(0, -1).join(', ')} or ${ports.at(-1) ?? ''}`}, alone.`;
  const some = sets.slice(0, 3).map(({ key }) => key);
  if (some.length > 0)
    return `Full power, ${watts}, at no port alone; together at ${listed(some)}${sets.length > 3 ? ` and ${sets.length - 3} more sets` : ''}.`;
  return `Full power, ${watts}, in no set that is known.`;
}

function fallSentence({ additions: { steps, unknown } }: ReaderAnswers): readonly string[] {
  const [worst] = steps;
  if (worst === undefined) return [];
  if (worst.fall > 0) return [`The largest fall: ${fallInWords(worst)}.`];
  return [
    unknown === 0
      ? 'No port loses power when another is plugged in.'
      : 'In no known case does a port lose power when another is plugged in.',
  ];
}

/** "C1 from 100 W to 50 W when C2 is added". */
function fallInWords({ port, from, to, added, before, after }: AddedDevice): string {
  const others = to.pool.filter((other) => other !== port);
  const shared = others.length === 0 ? '' : `, shared with ${listed(others)},`;
  const beside = before.ports.length === 1 ? '' : ` to ${before.key}`;
  const order = after.order === null ? '' : ` last`;
  return `${port} from ${wattsInWords(from.power.nominal)} to ${wattsInWords(to.power.nominal)}${shared} when ${added} is added${beside}${order}`;
}

/** What a port does when another device is plugged in, of one port and of several. */
const WHAT_HAPPENS = {
  keeps: ['runs on', 'run on'],
  dips: ['dips for a moment', 'dip for a moment'],
  drops: ['drops for a moment', 'drop for a moment'],
  'not tested': ['not tested', 'not tested'],
} as const;

/** Never left out: a reader with a router or a board on a port wants to know. */
export function interruptionSentence({ ports }: Pick<ReaderAnswers, 'ports'>): string {
  const kinds = (['keeps', 'dips', 'drops', 'not tested'] as const)
    .map((kind) => ({ kind, at: ports.filter(({ onNewPlug }) => onNewPlug === kind).map(({ port }) => port) }))
    .filter(({ at }) => at.length > 0);
  const [only] = kinds;
  if (kinds.length === 1 && only !== undefined) {
    if (only.kind === 'not tested') return 'Whether the others are interrupted when a device is added: not tested.';
    return {
      keeps: 'A new plug leaves the others running.',
      dips: 'A new plug makes the others dip for a moment.',
      drops: 'A new plug drops the others for a moment.',
    }[only.kind];
  }
  const parts = kinds.map(({ kind, at }) => `${listed(at)} ${WHAT_HAPPENS[kind][at.length === 1 ? 0 : 1]}`);
  return `When a device is added: ${parts.join('; ')}.`;
}
