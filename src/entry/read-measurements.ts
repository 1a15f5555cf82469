import type { DataPath } from '../diagnostics/finding.ts';
import type { Dimension } from '../units/dimension.ts';
import type { MeasuredPoint, MeasuredSubject } from './entry.ts';
import { readQuantity } from '../units/read-quantity.ts';
import { readPortList } from './read-port-list.ts';
import { atKey, atValue, readingFinding } from './reading-rules.ts';
import { listed, readAnyFact, type ReadingContext } from './reading-context.ts';
import type { EntrySource } from './schema.ts';

type MeasurementsSource = NonNullable<EntrySource['measurements']>;
type Figures = NonNullable<MeasurementsSource[MeasuredSubject]>;
type PointFields = Exclude<Extract<Figures, readonly unknown[]>[number], string>;

/** What a subject is measured in, and what the key of its short form says. */
const SUBJECTS: Readonly<Record<MeasuredSubject, { readonly dimensions: readonly Dimension[]; readonly key: string }>> = {
  standby: { dimensions: ['power', 'current'], key: 'line' },
  ripple: { dimensions: ['voltage'], key: 'output' },
  thermal: { dimensions: ['temperature'], key: 'place' },
  'touch current': { dimensions: ['current'], key: 'line' },
  'touch voltage': { dimensions: ['voltage'], key: 'line' },
  inrush: { dimensions: ['current'], key: 'line' },
  'hold-up': { dimensions: ['time'], key: 'line' },
  'pin voltage': { dimensions: ['voltage'], key: 'after' },
  stress: { dimensions: ['voltage', 'current'], key: 'place' },
  frequency: { dimensions: ['frequency'], key: 'place' },
  regulation: { dimensions: ['voltage'], key: 'output' },
  droop: { dimensions: ['voltage'], key: 'output' },
  'sustained power': { dimensions: ['power'], key: 'after' },
  'delivered energy': { dimensions: ['energy', 'charge'], key: 'output' },
  'recharge energy': { dimensions: ['energy'], key: 'line' },
  'recharge time': { dimensions: ['time'], key: 'line' },
};

const CONDITIONS = ['port', 'line', 'output', 'at', 'load', 'ambient', 'after', 'emissivity', 'bandwidth'] as const;

/** Reads every figure but efficiency, subject by subject in the order of the format. `ports` are the names that the entry has. */
export function readMeasurements(
  context: ReadingContext,
  source: EntrySource['measurements'],
  ports: readonly string[],
): readonly MeasuredPoint[] {
  return subjects().flatMap((subject) => readFigures({ context, ports }, subject, source?.[subject]));
}

/** What every point is read with. */
interface Reader {
  readonly context: ReadingContext;
  readonly ports: readonly string[];
}

function subjects(): readonly MeasuredSubject[] {
  return Object.keys(SUBJECTS).filter((subject): subject is MeasuredSubject => Object.hasOwn(SUBJECTS, subject));
}

function readFigures(reader: Reader, subject: MeasuredSubject, source: Figures | undefined): readonly MeasuredPoint[] {
  const path = ['measurements', subject];
  if (source === undefined) return [];
  if (typeof source === 'string' || Array.isArray(source)) {
    return listed<string | PointFields>(reader.context, source, path).flatMap(({ item, path: at }) =>
      typeof item === 'string'
        ? readPoint(reader, subject, { value: item }, at, at)
        : readPoint(reader, subject, item, [...at, 'value'], at),
    );
  }
  return Object.entries(source).flatMap(([key, value]) => {
    const at = [...path, key];
    const condition = SUBJECTS[subject].key;
    return readPoint(reader, subject, { value, [condition]: key }, at, at);
  });
}

function readPoint(
  { context, ports }: Reader,
  subject: MeasuredSubject,
  fields: PointFields,
  valuePath: DataPath,
  path: DataPath,
): readonly MeasuredPoint[] {
  const value = readAnyFact(
    context,
    { text: fields.value, path: valuePath, evidence: fields.evidence ?? 'measured' },
    SUBJECTS[subject].dimensions,
  );
  if (value === null) return [];
  reportConditions(context, fields, path);
  const named = readPortList(context, fields.port, [...path, 'port'], ports);
  const conditions = CONDITIONS.flatMap((condition): [string, string][] => {
    const text = condition === 'port' && named.length > 0 ? named.join(' + ') : fields[condition];
    return text === undefined ? [] : [[condition, text]];
  });
  return [
    {
      subject,
      value,
      place: fields.place ?? null,
      conditions: Object.fromEntries(conditions),
      instrument: fields.instrument ?? null,
      method: fields.method ?? null,
      note: fields.note ?? null,
      path,
    },
  ];
}

/** Conditions of one dimension each: what cannot be read would leave a rise or a test without its air or its time, and nobody would know. */
const READABLE = [
  ['ambient', 'temperature', '25 °C'],
  ['after', 'time', '30 min'],
  ['bandwidth', 'frequency', '20 MHz'],
] as const;

function reportConditions(context: ReadingContext, fields: PointFields, path: DataPath): void {
  for (const [condition, dimension, example] of READABLE) {
    const text = fields[condition];
    if (text === undefined || readQuantity(text, dimension).ok) continue;
    // In the short form the condition is the key of its value.
    const isKey = path.at(-1) === text;
    const where = isKey ? atKey(path) : atValue([...path, condition]);
    const message = `"${text}" is no ${dimension}.`;
    context.findings.push(readingFinding('unreadable-value', where, message, { advice: `Write it as in ${example}.` }));
  }
}
