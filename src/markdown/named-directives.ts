import type { Element, ElementContent } from 'hast';
import { isMissing, type Known, type Value } from '../values/value.ts';
import { didYouMean } from './nearest-name.ts';
import type { ProseRuleId } from './prose-rule.ts';

/** Everything that a directive of the text may name. */
export interface NamesInReach {
  /** Values by name, as `derived.named` holds them. */
  readonly values: Readonly<Record<string, Known>>;
  /** Prints a value with its unit. */
  readonly showValue: (value: Value) => string;
  /** Part references with their anchor on the page. */
  readonly parts: ReadonlyMap<string, string>;
  /** Port names with their anchor on the page. */
  readonly ports: ReadonlyMap<string, string>;
  /** Files of the photos in their order. */
  readonly photos: readonly string[];
  /** Titles of the formulas by id. */
  readonly methods: ReadonlyMap<string, string>;
  /** Tables that the entry has data for, by id. */
  readonly tables: ReadonlySet<string>;
  /** Ids of all derived tables there are. */
  readonly allTables: ReadonlySet<string>;
}

type Resolution =
  | { readonly ok: true; readonly markup: ElementContent; readonly remark: { readonly rule: ProseRuleId; readonly message: string } | null }
  | { readonly ok: false; readonly rule: ProseRuleId; readonly message: string };

interface NamedDirective {
  readonly name: string;
  readonly example: string;
  readonly resolve: (named: string, names: NamesInReach) => Resolution;
}

/** The directives, each with how it is written. */
export const DIRECTIVES: readonly NamedDirective[] = [
  { name: 'value', example: ':value[density]', resolve: quoteValue },
  { name: 'part', example: ':part[U2]', resolve: (named, names) => linkWithin(named, names.parts, 'part') },
  { name: 'port', example: ':port[C1]', resolve: (named, names) => linkWithin(named, names.ports, 'port') },
  { name: 'photo', example: ':photo[3 B4]', resolve: namePhoto },
  { name: 'method', example: ':method[peak-of-the-mains]', resolve: (named, names) => linkMethod(named, names, 'method-reference') },
  { name: 'formula', example: ':formula[stored-energy]', resolve: (named, names) => linkMethod(named, names, 'formula-reference') },
  { name: 'table', example: '::table{port-share}', resolve: placeTable },
];

function quoteValue(named: string, names: NamesInReach): Resolution {
  const known = Object.hasOwn(names.values, named) ? names.values[named] : undefined;
  if (known === undefined) return unknown('value', named, Object.keys(names.values));
  if (isMissing(known)) {
    const message = `${named} is not known: ${known.reason}`;
    return found(element('span', { className: ['value', 'value-missing'] }, 'not known'), { rule: 'prose-value-missing', message });
  }
  const className = restsOnAssumption(known) ? ['value', 'value-assumed'] : ['value'];
  return found(element('span', { className, dataValue: named }, names.showValue(known)));
}

/** True when the value itself, or any value it was computed from, was assumed. */
function restsOnAssumption(value: Value): boolean {
  if (value.origin.evidence === 'assumed') return true;
  return value.origin.evidence === 'computed' && Object.values(value.origin.inputs).some(restsOnAssumption);
}

function linkWithin(named: string, anchors: ReadonlyMap<string, string>, kind: 'part' | 'port'): Resolution {
  const anchor = anchors.get(named);
  return anchor === undefined
    ? unknown(kind, named, [...anchors.keys()])
    : found(element('a', { className: [`${kind}-reference`], href: `#${anchor}` }, named));
}

function namePhoto(named: string, names: NamesInReach): Resolution {
  const match = /^(\d{1,3})(?:\s+([A-Z]\d{1,2}))?$/.exec(named);
  if (match === null)
    return { ok: false, rule: 'prose-unknown-name', message: `":photo[${named}]" is not a photo number with a zone, as in :photo[3 B4]` };
  const number = Number(match[1]);
  if (number < 1 || number > names.photos.length) {
    return {
      ok: false,
      rule: 'prose-unknown-name',
      message: `There is no photo ${String(number)}: the entry lists ${String(names.photos.length)}`,
    };
  }
  const zone = match[2];
  if (zone !== undefined && !/^[A-D][1-6]$/.test(zone)) {
    const message = `There is no zone ${zone} in a photo: letters A to D go down, figures 1 to 6 across`;
    return { ok: false, rule: 'prose-unknown-name', message };
  }
  const [anchor, words] = zone === undefined ? ['', ''] : [`-${zone}`, `, ${zone}`];
  return found(
    element('a', { className: ['photo-reference'], href: `#photo-${String(number)}${anchor}` }, `photo ${String(number)}${words}`),
  );
}

function linkMethod(named: string, names: NamesInReach, className: string): Resolution {
  const title = names.methods.get(named);
  return title === undefined
    ? unknown('method', named, [...names.methods.keys()])
    : found(element('a', { className: [className], href: `/methods/${named}/` }, title));
}

function placeTable(named: string, names: NamesInReach): Resolution {
  if (names.tables.has(named)) return found({ type: 'element', tagName: 'div', properties: { dataTable: named }, children: [] });
  if (names.allTables.has(named)) {
    return found({ type: 'text', value: '' }, { rule: 'prose-table-empty', message: `The entry has no data for the table ${named}` });
  }
  return unknown('table', named, [...names.allTables]);
}

function unknown(kind: string, named: string, names: readonly string[]): Resolution {
  return { ok: false, rule: 'prose-unknown-name', message: `There is no ${kind} "${named}" to name${didYouMean(named, names)}` };
}

function found(markup: ElementContent, remark: { readonly rule: ProseRuleId; readonly message: string } | null = null): Resolution {
  return { ok: true, markup, remark };
}

function element(tagName: string, properties: Element['properties'], text: string): Element {
  return { type: 'element', tagName, properties, children: [{ type: 'text', value: text }] };
}
