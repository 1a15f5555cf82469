import { EVENT_ID, getScalarValue, parseEvents, SCALAR_STYLE, type Event, type ScalarEvent } from 'js-yaml';
import type { DataPath, Whereabouts } from '../diagnostics/finding.ts';
import { scalarOffsets } from './scalar-offsets.ts';
import { PARSER_DEPTH } from './parse-frontmatter.ts';

interface Extent {
  readonly start: number;
  readonly end: number;
}

type Spot =
  | { readonly kind: 'scalar'; readonly event: ScalarEvent }
  | {
      readonly kind: 'map';
      readonly keys: ReadonlyMap<string, { readonly key: ScalarEvent; readonly value: Spot }>;
      readonly isPlain: boolean;
    }
  | { readonly kind: 'list'; readonly items: readonly Spot[] };

/**
 * Finds the extents of keys and of one-line values from the events of the fast parser, some thirty times sooner than a syntax
 * tree with positions. Null for whatever else is asked: groups, block texts, keys that YAML reads as something other than text;
 * the tree is then the one to ask.
 */
export function scalarPlaces(yaml: string): (where: Extract<Whereabouts, { in: 'data' }>) => Extent | null {
  const root = rootOf(yaml);
  return (where) => {
    const found = root === null ? null : follow(root, where.path);
    if (found === null) return null;
    const { key, value, whole } = found;
    const event =
      where.part === 'key' || !whole || value.kind !== 'scalar' || isBlank(value.event) ? (key ?? scalarOf(value)) : value.event;
    return event === null ? null : extentOf(yaml, event, whole ? where.span : undefined);
  };
}

function rootOf(yaml: string): Spot | null {
  try {
    const cursor = { events: parseEvents(yaml, { maxDepth: PARSER_DEPTH }), at: 1 };
    return spotAt(cursor, yaml);
  } catch {
    // Whatever the fast parser refuses, the tolerant one is asked.
    return null;
  }
}

interface Cursor {
  readonly events: readonly Event[];
  at: number;
}

function spotAt(cursor: Cursor, yaml: string): Spot | null {
  const event = cursor.events[cursor.at];
  cursor.at += 1;
  if (event?.type === EVENT_ID.SCALAR) return { kind: 'scalar', event };
  if (event?.type === EVENT_ID.SEQUENCE) return listAt(cursor, yaml);
  return event?.type === EVENT_ID.MAPPING ? mapAt(cursor, yaml) : null;
}

function listAt(cursor: Cursor, yaml: string): Spot | null {
  const items: Spot[] = [];
  while (cursor.events[cursor.at]?.type !== EVENT_ID.POP) {
    const item = spotAt(cursor, yaml);
    if (item === null) return null;
    items.push(item);
  }
  cursor.at += 1;
  return { kind: 'list', items };
}

function mapAt(cursor: Cursor, yaml: string): Spot | null {
  const keys = new Map<string, { readonly key: ScalarEvent; readonly value: Spot }>();
  let isPlain = true;
  while (cursor.events[cursor.at]?.type !== EVENT_ID.POP) {
    const key = spotAt(cursor, yaml);
    const value = spotAt(cursor, yaml);
    if (key?.kind !== 'scalar' || value === null) return null;
    const text = getScalarValue(yaml, key.event);
    if (!keys.has(text)) keys.set(text, { key: key.event, value });
    // YAML reads such a key as a number, a truth or nothing; then it has another text than the one written.
    isPlain &&= !/^(?:[-+.\d~].*|null|true|false|)$/i.test(text);
  }
  cursor.at += 1;
  return { kind: 'map', keys, isPlain };
}

interface Found {
  readonly key: ScalarEvent | null;
  readonly value: Spot;
  readonly whole: boolean;
}

function follow(root: Spot, path: DataPath): Found | null {
  let found: Found = { key: null, value: root, whole: true };
  for (const [index, segment] of path.entries()) {
    const { value } = found;
    if (value.kind === 'map') {
      const next = value.keys.get(String(segment));
      if (next === undefined) return value.isPlain ? { ...found, whole: false } : null;
      found = { ...next, whole: true };
    } else if (value.kind === 'list' && typeof segment === 'number') {
      const item = value.items[segment];
      if (item === undefined) return { ...found, whole: false };
      if (item.kind !== 'scalar' && index === path.length - 1) return null;
      found = { key: scalarOf(item), value: item, whole: true };
    } else return { ...found, whole: false };
    // Of a group in a list the tree knows the extent, and it stands for what is not there in it.
    if (found.key === null) return followFromItem(found, path.slice(index + 1));
  }
  return found;
}

/** Behind an item that is a group, only a path that is there as a whole is answered. */
function followFromItem(item: Found, rest: DataPath): Found | null {
  const found = follow(item.value, rest);
  return found?.whole === true && rest.length > 0 ? found : null;
}

function scalarOf(spot: Spot): ScalarEvent | null {
  return spot.kind === 'scalar' ? spot.event : null;
}

function isBlank({ valueStart, valueEnd, style }: ScalarEvent): boolean {
  return style === SCALAR_STYLE.PLAIN && valueEnd <= valueStart;
}

function extentOf(yaml: string, event: ScalarEvent, span: Extent | undefined): Extent | null {
  const { valueStart, valueEnd, style } = event;
  const isQuoted = style === SCALAR_STYLE.SINGLE_QUOTED || style === SCALAR_STYLE.DOUBLE_QUOTED;
  if ((!isQuoted && style !== SCALAR_STYLE.PLAIN) || isBlank(event) || event.tagStart >= 0 || event.anchorStart >= 0) return null;
  const [start, end] = isQuoted ? [valueStart - 1, valueEnd + 1] : [valueStart, valueEnd];
  if (span === undefined) return { start, end };
  const quote = style === SCALAR_STYLE.DOUBLE_QUOTED ? 'double' : isQuoted ? 'single' : 'none';
  const source = yaml.slice(start, end);
  const offsets = scalarOffsets(source, valueStart - start, getScalarValue(yaml, event), quote);
  const from = offsets[Math.min(span.start, offsets.length - 1)] ?? 0;
  const to = offsets[Math.min(span.end, offsets.length - 1)] ?? from;
  return { start: start + from, end: start + Math.max(from, Math.min(to, source.length)) };
}
