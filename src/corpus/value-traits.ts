import type { Entry, Part } from '../entry/entry.ts';
import type { Dimension } from '../units/dimension.ts';
import { formatInterval } from '../units/format.ts';
import { compareText } from './compare-text.ts';
import type { TraitValue } from './sheet-traits.ts';
import { isFitted } from '../derived/fitted-parts.ts';

/** Roles whose value a designer chose for this board, with the dimension that was chosen. */
const TELLING_ROLES: ReadonlyMap<string, Dimension> = new Map([
  ['bulk-capacitor', 'capacitance'],
  ['resonant-capacitor', 'capacitance'],
  ['output-capacitor', 'capacitance'],
  ['clamp-capacitor', 'capacitance'],
  ['filter-capacitor', 'capacitance'],
  ['supply-capacitor', 'capacitance'],
  ['x-capacitor', 'capacitance'],
  ['y-capacitor', 'capacitance'],
  ['pfc-inductor', 'inductance'],
  ['resonant-inductor', 'inductance'],
  ['inductor', 'inductance'],
  ['current-sense-resistor', 'resistance'],
  ['bleed-resistor', 'resistance'],
]);

/** Parameters of stages that are built in, and the part that each is the value of: a tank of 22 nF and its capacitor are one choice. */
const TELLING_PARAMETERS: readonly (readonly [string, string])[] = [
  ['Lr', 'resonant-inductor'],
  ['Cr', 'resonant-capacitor'],
  ['Lm', 'magnetising'],
  ['bus', 'bus'],
];

/** Values that tell designs apart: turns and tank of the converters, capacitors, inductors, sense resistors. Each once, sorted. */
export function valueTraits(entry: Entry): readonly TraitValue[] {
  const values = [...entry.stages.flatMap(stageValues), ...entry.parts.flatMap(partValue)];
  const once = new Map(values.map((value) => [`${value.kind} ${value.words}`, value]));
  return [...once].sort((one, other) => compareText(one[0], other[0])).map(([, value]) => value);
}

function stageValues(stage: Entry['stages'][number]): readonly TraitValue[] {
  const turns = stage.turns.length === 0 ? [] : [{ kind: 'turns', words: stage.turns.join(':') }];
  const parameters = TELLING_PARAMETERS.flatMap(([key, kind]): TraitValue[] => {
    const fact = stage.parameters[key];
    return fact === undefined ? [] : [{ kind, words: plain(fact.quantity.nominal, fact.quantity.dimension) }];
  });
  return [...turns, ...parameters];
}

function partValue(part: Part): readonly TraitValue[] {
  const dimension = TELLING_ROLES.get(part.role);
  if (dimension === undefined || part.rating === null || !isFitted(part)) return [];
  const quantity = part.rating.quantities.find((candidate) => candidate.dimension === dimension);
  return quantity === undefined ? [] : [{ kind: part.role, words: plain(quantity.nominal, dimension) }];
}

/** At most three digits in the unit that suits the size: one spelling for 0.1 mF and 100.0 µF. */
function plain(nominal: number, dimension: Dimension): string {
  const { number, unit } = formatInterval({ low: nominal, nominal, high: nominal, significant: 3 }, dimension);
  return `${number.includes('.') ? number.replace(/\.?0+$/u, '') : number} ${unit}`;
}
