import type { Derived } from '../derived/derived.ts';
import type { Entry } from '../entry/entry.ts';
import { roleOf } from '../roles/index.ts';
import { formatInterval } from '../units/format.ts';
import { isMissing, type Known } from '../values/value.ts';
import { searchTerms } from './search-terms.ts';

/** Terms of one teardown by weight, each list joined by spaces: its name, its data, its text. */
export interface SheetTerms {
  readonly name: string;
  readonly data: string;
  readonly text: string;
}

/** Terms under which a teardown is found. `html` is the rendered prose. */
export function sheetTerms(entry: Entry, derived: Derived, html: string): SheetTerms {
  const { device } = entry;
  const name = searchTerms([entry.title, entry.number, device.maker, device.name, device.model].filter(Boolean).join(' | '));
  const data = searchTerms([...deviceWords(entry, derived), ...portWords(entry), ...partWords(entry)].join(' | '));
  const text = searchTerms([entry.summary ?? '', plainText(html)].join(' | '));
  const only = (terms: ReadonlySet<string>, ...others: readonly ReadonlySet<string>[]): string =>
    [...terms].filter((term) => !others.some((other) => other.has(term))).join(' ');
  return { name: only(name), data: only(data, name), text: only(text, name, data) };
}

function deviceWords(entry: Entry, derived: Derived): readonly string[] {
  const { device, nameplate, body } = entry;
  const { density, specificPower, volume } = derived.size;
  return [
    device.kind,
    device.released ?? '',
    entry.author ?? '',
    derived.topology,
    derived.family,
    ...nameplate.output,
    ...nameplate.marks,
    ...nameplate.inputs.map((input) => input.written),
    nameplate.total?.quantity.written ?? '',
    body.size?.size.written ?? '',
    body.mass?.quantity.written ?? '',
    shown(density, 'W/cm³'),
    shown(density, 'W/in³'),
    shown(specificPower, 'W/kg'),
    shown(volume, 'cm³'),
    shown(derived.ratedPower, 'W'),
    ...entry.stages.flatMap((stage) => [stage.id, stage.mode ?? '']),
  ];
}

function shown(known: Known, unit: string): string {
  return isMissing(known) ? '' : `${formatInterval(known, known.dimension, unit).number} ${unit}`;
}

function portWords(entry: Entry): readonly string[] {
  return entry.ports.flatMap((port) => [
    port.id,
    port.connector,
    ...port.protocols,
    port.power?.quantity.written ?? '',
    ...port.offers.map((offer) =>
      offer.kind === 'fixed' || offer.kind === 'plain'
        ? `${String(offer.volts)} V ${String(offer.amps)} A`
        : `${offer.kind} ${offer.written}`,
    ),
  ]);
}

function partWords(entry: Entry): readonly string[] {
  return entry.parts.flatMap((part) => [
    ...part.references,
    roleOf(part.role)?.name ?? part.role,
    part.maker ?? '',
    part.number ?? '',
    part.marking ?? '',
    part.package ?? '',
    part.technology ?? '',
    part.rating?.written ?? '',
    part.note ?? '',
  ]);
}

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', nbsp: ' ' };

/** Text of rendered prose without its tags. */
function plainText(html: string): string {
  return html
    .replaceAll(/<[^>]*>/gu, ' ')
    .replaceAll(/&(?:#x([0-9a-f]+)|#(\d+)|([a-z]+));/giu, (_, hex?: string, decimal?: string, name?: string) => {
      if (name !== undefined) return ENTITIES[name.toLowerCase()] ?? ' ';
      const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
      return code <= 0x10ffff ? String.fromCodePoint(code) : ' ';
    });
}
