import type { Entry, Part } from '../../entry/entry.ts';
import type { Dimension } from '../../units/dimension.ts';
import { numberInUnit } from '../../tables/number-in-unit.ts';
import type { DataColumn } from './data-column.ts';
import { partIds } from './part-ids.ts';

/** One part of one teardown. */
export interface PartRow {
  readonly id: string;
  readonly slug: string;
  readonly part: Part;
}

/** Columns of `parts.csv`: one row a key of a part list, which can stand for several equal parts. */
export const PART_COLUMNS: readonly DataColumn<PartRow>[] = [
  {
    head: 'id',
    type: 'string',
    description: 'Address of the device, a slash, the first reference; stays',
    value: ({ id }) => id,
  },
  { head: 'device', type: 'string', description: 'id in devices.csv', value: ({ slug }) => slug },
  text('references', 'All references of the row', (part) => part.references.join('; ')),
  text('role', 'What the part does', (part) => part.role),
  text('stage', 'The author’s name of the block it stands in', (part) => part.stage),
  text('maker', 'Maker of the part', (part) => part.maker),
  text('part number', 'As marked or identified', (part) => part.number),
  text('marking', 'As read on the part', (part) => part.marking),
  text('package', 'Package', (part) => part.package),
  text('technology', 'GaN, SiC, polymer …', (part) => part.technology),
  text('rating', 'Rating line as found', (part) => part.rating?.written ?? null),
  rated('rated voltage', 'V', 'voltage'),
  rated('rated current', 'A', 'current'),
  rated('capacitance', 'µF', 'capacitance'),
  rated('inductance', 'µH', 'inductance'),
  rated('resistance', 'Ω', 'resistance'),
  text('evidence', 'How the rating is known', (part) => part.evidence),
  text('fitting', 'fitted, not fitted, absent, unknown', (part) => part.fitting),
  { head: 'pieces', type: 'number', description: 'Pieces for each reference', value: ({ part }) => part.count },
  text('from fact sheet', 'Fields that the fact sheet of the part gave', (part) => part.fromFactSheet?.join('; ') ?? null),
];

/** Rows of one entry in the order of its part list. */
export function partRows(entry: Entry): readonly PartRow[] {
  const ids = partIds(entry);
  return entry.parts.map((part, index) => ({ id: ids[index] ?? '', slug: entry.slug, part }));
}

function text(head: string, description: string, value: (part: Part) => string | null): DataColumn<PartRow> {
  return { head, type: 'string', description, value: ({ part }) => value(part) };
}

/** The first quantity of a dimension in the rating; conditions such as "@ 25 °C" are none. */
function rated(name: string, unit: string, dimension: Dimension): DataColumn<PartRow> {
  return {
    head: `${name} (${unit})`,
    type: 'number',
    description: `First ${dimension} of the rating`,
    value: ({ part }) => {
      const quantity = part.rating?.quantities.find((candidate) => candidate.dimension === dimension && candidate.label !== 'at');
      const number = quantity === undefined ? null : numberInUnit(quantity.nominal, dimension, unit);
      return number === null ? null : Number(number.toPrecision(9));
    },
  };
}
