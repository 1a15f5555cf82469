import { isMap, isNode, isScalar, type Document } from 'yaml';
import { z } from 'zod';
import { isDate } from '../entry/calendar-date.ts';
import { NO_BENCH, type Accuracy, type Bench, type Instrument } from '../entry/bench.ts';
import { readAccuracy } from '../entry/read-accuracy.ts';
import { didYouMean } from '../markdown/nearest-name.ts';
import { SI_UNITS, type Dimension } from '../units/dimension.ts';
import { benchMethods, METHOD_SCHEMA } from './bench-methods.ts';
import { openYaml, type YamlFault } from './open-yaml.ts';

const TEXT = z.string({ error: 'must be a text' }).trim().min(1, 'must not be empty');

const INSTRUMENT_SCHEMA = z.strictObject({
  name: TEXT.describe('What it is: AC power meter.'),
  measures: TEXT.optional().describe('What it is used for.'),
  accuracy: z.record(z.string(), TEXT).optional().describe('By quantity: { voltage: "0.1 % + 2 digits" }.'),
  calibrated: TEXT.optional().describe('Day of the last calibration: 2026-01-12.'),
  note: TEXT.optional(),
});

const BENCH_SCHEMA = z.strictObject({
  instruments: z.record(z.string(), INSTRUMENT_SCHEMA).optional(),
  methods: z.record(z.string(), METHOD_SCHEMA).optional(),
});

type Path = readonly PropertyKey[];
type Say = (path: Path, message: string, at?: 'key' | 'value') => void;

/** Reads the text of a bench file; faulty instruments and accuracies are reported and left out, the others stand. */
export function benchInText(text: string): { readonly bench: Bench; readonly faults: readonly YamlFault[] } {
  const {
    document,
    map,
    faults: shut,
    placeOf,
  } = openYaml(text, { file: 'bench.yaml', schema: 'failsafe', holds: '"instruments:" and "methods:"' });
  if (map === null) return { bench: NO_BENCH, faults: shut };
  const faults: YamlFault[] = [];
  const say: Say = (path, message, at = 'value') => {
    faults.push({ message, ...placeOf(offsetOf(document, path, at)) });
  };
  const data: unknown = document.toJS({ maxAliasCount: 20 });
  const checked = BENCH_SCHEMA.safeParse(data);
  const faulty = checked.success ? [] : checked.error.issues;
  for (const issue of faulty) sayIssue(issue, say);
  return { bench: benchOf(data, say), faults: faults.sort((one, other) => one.line - other.line || one.column - other.column) };
}

function sayIssue(issue: z.core.$ZodIssue, say: Say): void {
  if (issue.code !== 'unrecognized_keys') {
    say(
      issue.path,
      `"${issue.path.map(String).join('.')}" ${issue.message.startsWith('must') ? issue.message : `is not as it should be: ${issue.message}`}`,
    );
    return;
  }
  const isTop = issue.path.length === 0;
  const known = Object.keys(isTop ? BENCH_SCHEMA.shape : INSTRUMENT_SCHEMA.shape);
  for (const key of issue.keys) {
    const of = isTop ? 'the bench file' : 'an instrument';
    say([...issue.path, key], `"${key}" is not a field of ${of}${didYouMean(key, known)}`, 'key');
  }
}

/** What of the data is sound; its faults were said with the schema. */
function benchOf(data: unknown, say: Say): Bench {
  const sections = z.looseObject({ instruments: z.unknown().optional(), methods: z.unknown().optional() }).safeParse(data).data;
  const instruments = recordOf(sections?.instruments).flatMap(([id, each]) => {
    const found = z.object(INSTRUMENT_SCHEMA.shape).safeParse(each);
    if (!/^[A-Za-z0-9][A-Za-z0-9-]*$/.test(id)) {
      say(['instruments', id], `"${id}" cannot be the name of an instrument: use letters, digits and hyphens, such as power-meter`, 'key');
      return [];
    }
    return found.success ? [instrumentOf(id, found.data, say)] : [];
  });
  const ids = instruments.map(({ id }) => id);
  return { instruments, methods: benchMethods(recordOf(sections?.methods), ids, say) };
}

function recordOf(data: unknown): readonly (readonly [string, unknown])[] {
  const record = z.record(z.string(), z.unknown()).safeParse(data);
  return record.success ? Object.entries(record.data) : [];
}

function instrumentOf(id: string, { name, measures, accuracy, calibrated, note }: z.infer<typeof INSTRUMENT_SCHEMA>, say: Say): Instrument {
  const isDay = calibrated === undefined || isDate(calibrated);
  if (!isDay) say(['instruments', id, 'calibrated'], `"${calibrated}" is no day: write it as 2026-01-12`);
  const accuracies = Object.entries(accuracy ?? {}).flatMap(([quantity, text]) =>
    accuracyOf(['instruments', id, 'accuracy', quantity], quantity, text, say),
  );
  return {
    id,
    name,
    measures: measures ?? null,
    accuracies,
    calibrated: isDay ? (calibrated ?? null) : null,
    note: note ?? null,
  };
}

function accuracyOf(path: Path, quantity: string, text: string, say: Say): readonly Accuracy[] {
  const dimension = dimensionNamed(quantity);
  if (dimension === null) {
    say(path, `"${quantity}" is no quantity${didYouMean(quantity, QUANTITIES.keys())}`, 'key');
    return [];
  }
  const read = readAccuracy(text, dimension);
  if (!read.ok) {
    say(path, read.message);
    return [];
  }
  return [read.accuracy];
}

/** Quantities by the word of the file; a share such as efficiency is a ratio. */
const QUANTITIES: ReadonlyMap<string, Dimension> = new Map([
  ...Object.keys(SI_UNITS).flatMap((name): [string, Dimension][] => (isDimension(name) ? [[name, name]] : [])),
  ['efficiency', 'ratio'],
]);

function dimensionNamed(word: string): Dimension | null {
  return QUANTITIES.get(word) ?? null;
}

function isDimension(name: string): name is Dimension {
  return Object.hasOwn(SI_UNITS, name);
}

/** Offset of a node, or of the key that leads to it; the nearest one above where there is none. */
function offsetOf(document: Document, path: Path, at: 'key' | 'value'): number {
  if (path.length === 0) return 0;
  const parent: unknown = path.length === 1 ? document.contents : document.getIn(path.slice(0, -1), true);
  const pair = isMap(parent) ? parent.items.find(({ key }) => isScalar(key) && key.value === String(path.at(-1))) : undefined;
  if (pair === undefined) return offsetOf(document, path.slice(0, -1), 'key');
  const node = at === 'value' && isNode(pair.value) ? pair.value : pair.key;
  return isNode(node) ? (node.range?.[0] ?? 0) : 0;
}
