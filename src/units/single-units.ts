import type { Dimension } from './dimension.ts';
import type { Unit } from './unit.ts';

/** A unit that takes no prefix from the table, with every spelling. */
export interface SingleUnit {
  readonly dimension: Dimension;
  readonly symbol: string;
  readonly spellings: readonly string[];
  readonly exponent?: number;
  readonly factor?: number;
  readonly offset?: number;
  readonly system?: 'imperial';
  readonly onlyWhereWanted?: true;
  readonly remark?: Unit['remark'];
}

/** Three powers of an inch in metres × 10⁴, × 10⁸, × 10¹²; by definition 1 in = 25.4 mm. */
const INCH = { factor: 254, exponent: -4, system: 'imperial' } as const;
const CUBIC_INCH = 16.387064;
const CUBE = ['3', '³', '^3'];
const CUBED = (unit: string): string[] => CUBE.map((power) => unit + power);
const SQUARED = (unit: string): string[] => ['2', '²', '^2'].map((power) => unit + power);
const CUBIC_CENTIMETRE = [
  ...CUBED('cm'),
  'cc',
  'CC',
  'ccm',
  'cu cm',
  'cubic centimetre',
  'cubic centimetres',
  'cubic centimeter',
  'cubic centimeters',
];
const CUBIC_INCHES = [
  ...CUBED('in'),
  ...CUBED('inch'),
  'cu in',
  'cu. in',
  'cu.in',
  'cu in.',
  'cu. in.',
  'cuin',
  'cubic inch',
  'cubic inches',
];

function per(numerators: readonly string[], denominators: readonly string[]): string[] {
  return numerators.flatMap((numerator) =>
    denominators.flatMap((denominator) => [
      `${numerator}/${denominator}`,
      `${numerator} / ${denominator}`,
      `${numerator} per ${denominator}`,
    ]),
  );
}

const WATTS = ['W', 'w', 'watt', 'watts'];
const DEGREES = ['°', 'deg', 'deg ', 'deg. ', '° ', 'degree ', 'degrees '];
const CELSIUS = [...DEGREES.flatMap((degree) => [`${degree}C`, `${degree}c`]), 'Celsius', 'celsius', 'degrees Celsius', 'degree Celsius'];

export const SINGLE_UNITS: readonly SingleUnit[] = [
  { dimension: 'time', symbol: 'min', spellings: ['min', 'mins', 'minute', 'minutes'], factor: 60 },
  { dimension: 'time', symbol: 'h', spellings: ['h', 'hr', 'hrs', 'hour', 'hours'], factor: 3600 },
  { dimension: 'time', symbol: 'd', spellings: ['day', 'days'], factor: 86400 },
  { dimension: 'length', symbol: 'cm', spellings: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'], exponent: -2 },
  {
    dimension: 'length',
    symbol: 'in',
    spellings: ['in', 'In', 'IN', 'in.', 'inch', 'inches', 'Inch', 'Inches', 'INCH', '"', "''"],
    ...INCH,
  },
  { dimension: 'length', symbol: 'mil', spellings: ['mil', 'mils', 'thou'], ...INCH, exponent: -7 },
  { dimension: 'length', symbol: 'ft', spellings: ['ft', 'ft.', 'foot', 'feet'], factor: 3048, exponent: -4, system: 'imperial' },
  { dimension: 'area', symbol: 'mm²', spellings: [...SQUARED('mm'), 'sq mm', 'square millimetres'], exponent: -6 },
  { dimension: 'area', symbol: 'cm²', spellings: [...SQUARED('cm'), 'sq cm', 'square centimetres'], exponent: -4 },
  { dimension: 'area', symbol: 'm²', spellings: SQUARED('m') },
  {
    dimension: 'area',
    symbol: 'ft²',
    spellings: [...SQUARED('ft'), 'sq ft', 'square feet'],
    factor: 9.290304,
    exponent: -2,
    system: 'imperial',
  },
  {
    dimension: 'area',
    symbol: 'in²',
    spellings: [...SQUARED('in'), 'sq in', 'square inches'],
    factor: 64516,
    exponent: -8,
    system: 'imperial',
  },
  { dimension: 'volume', symbol: 'mm³', spellings: CUBED('mm'), exponent: -9 },
  { dimension: 'volume', symbol: 'cm³', spellings: CUBIC_CENTIMETRE, exponent: -6 },
  { dimension: 'volume', symbol: 'dm³', spellings: CUBED('dm'), exponent: -3 },
  { dimension: 'volume', symbol: 'm³', spellings: CUBED('m') },
  { dimension: 'volume', symbol: 'in³', spellings: CUBIC_INCHES, factor: CUBIC_INCH, exponent: -6, system: 'imperial' },
  { dimension: 'volume', symbol: 'µL', spellings: ['µL', 'uL', 'µl', 'ul'], exponent: -9 },
  { dimension: 'volume', symbol: 'mL', spellings: ['mL', 'ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters'], exponent: -6 },
  { dimension: 'volume', symbol: 'cL', spellings: ['cL', 'cl', 'centilitre', 'centilitres'], exponent: -5 },
  { dimension: 'volume', symbol: 'dL', spellings: ['dL', 'dl'], exponent: -4 },
  { dimension: 'volume', symbol: 'L', spellings: ['L', 'l', 'litre', 'litres', 'liter', 'liters'], exponent: -3 },
  {
    dimension: 'mass',
    symbol: 'oz',
    spellings: ['oz', 'oz.', 'Oz', 'OZ', 'ounce', 'ounces'],
    factor: 28.349523125,
    exponent: -3,
    system: 'imperial',
  },
  { dimension: 'mass', symbol: 'lb', spellings: ['lb', 'lbs', 'lb.', 'lbs.', 'pound', 'pounds'], factor: 0.45359237, system: 'imperial' },
  { dimension: 'mass', symbol: 'kg', spellings: ['KG'] },
  { dimension: 'charge', symbol: 'C', spellings: ['C'], onlyWhereWanted: true },
  { dimension: 'charge', symbol: 'mC', spellings: ['mC'], exponent: -3 },
  { dimension: 'charge', symbol: 'µC', spellings: ['µC', 'uC'], exponent: -6 },
  { dimension: 'charge', symbol: 'nC', spellings: ['nC'], exponent: -9 },
  { dimension: 'temperature', symbol: '°C', spellings: CELSIUS },
  {
    dimension: 'temperature',
    symbol: '°C',
    spellings: ['C'],
    remark: { severity: 'note', message: 'the degree sign is missing; read as degrees Celsius' },
  },
  {
    dimension: 'temperature',
    symbol: '°F',
    spellings: [...DEGREES.map((degree) => `${degree}F`), 'Fahrenheit'],
    factor: 5 / 9,
    offset: -160 / 9,
    system: 'imperial',
  },
  { dimension: 'temperature', symbol: 'K', spellings: ['K', 'kelvin'], offset: -273.15, onlyWhereWanted: true },
  { dimension: 'temperature difference', symbol: 'K', spellings: ['K', 'kelvin', 'Kelvin', 'kelvins'] },
  { dimension: 'temperature difference', symbol: 'mK', spellings: ['mK'], exponent: -3 },
  { dimension: 'temperature difference', symbol: 'K', spellings: [...CELSIUS, 'C'], onlyWhereWanted: true },
  {
    dimension: 'temperature difference',
    symbol: '°F',
    spellings: DEGREES.map((degree) => `${degree}F`),
    factor: 5 / 9,
    onlyWhereWanted: true,
  },
  { dimension: 'ratio', symbol: '%', spellings: ['%', 'percent', 'per cent', 'pct'], exponent: -2 },
  { dimension: 'ratio', symbol: '‰', spellings: ['‰'], exponent: -3 },
  { dimension: 'ratio', symbol: 'ppm', spellings: ['ppm'], exponent: -6 },
  { dimension: 'power density', symbol: 'W/cm³', spellings: per(WATTS, CUBIC_CENTIMETRE), exponent: 6 },
  {
    dimension: 'power density',
    symbol: 'W/in³',
    spellings: per(WATTS, CUBIC_INCHES),
    factor: 1 / CUBIC_INCH,
    exponent: 6,
    system: 'imperial',
  },
  { dimension: 'power density', symbol: 'W/L', spellings: per(WATTS, ['L', 'l', 'litre', 'liter', ...CUBED('dm')]), exponent: 3 },
  { dimension: 'power density', symbol: 'kW/L', spellings: per(['kW', 'KW'], ['L', 'l', 'litre', 'liter', ...CUBED('dm')]), exponent: 6 },
  { dimension: 'power density', symbol: 'W/m³', spellings: per(WATTS, CUBED('m')) },
  { dimension: 'power density', symbol: 'mW/mm³', spellings: per(['mW'], CUBED('mm')), exponent: 6 },
  { dimension: 'specific power', symbol: 'W/kg', spellings: per(WATTS, ['kg', 'KG']) },
  { dimension: 'specific power', symbol: 'kW/kg', spellings: per(['kW', 'KW'], ['kg', 'KG']), exponent: 3 },
  { dimension: 'specific power', symbol: 'W/g', spellings: per(WATTS, ['g']), exponent: 3 },
  { dimension: 'specific power', symbol: 'W/oz', spellings: per(WATTS, ['oz']), factor: 1 / 28.349523125, exponent: 3, system: 'imperial' },
  { dimension: 'specific power', symbol: 'W/lb', spellings: per(WATTS, ['lb']), factor: 1 / 0.45359237, system: 'imperial' },
  { dimension: 'capacitance per power', symbol: 'µF/W', spellings: per(['µF', 'uF'], WATTS), exponent: -6 },
  {
    dimension: 'melting integral',
    symbol: 'A²s',
    spellings: SQUARED('A').flatMap((squared) =>
      ['s', ' s', '·s', ' · s', '*s', 'sec', ' sec', '-s', 'S'].map((second) => squared + second),
    ),
  },
  { dimension: 'heat flux', symbol: 'W/m²', spellings: per(WATTS, SQUARED('m')) },
  { dimension: 'heat flux', symbol: 'W/cm²', spellings: per(WATTS, SQUARED('cm')), exponent: 4 },
  { dimension: 'heat flux', symbol: 'mW/cm²', spellings: per(['mW'], SQUARED('cm')), exponent: 1 },
  { dimension: 'heat flux', symbol: 'W/in²', spellings: per(WATTS, SQUARED('in')), factor: 1 / 6.4516, exponent: 4, system: 'imperial' },
  { dimension: 'heat flux', symbol: 'W/ft²', spellings: per(WATTS, SQUARED('ft')), factor: 1 / 9.290304, exponent: 2, system: 'imperial' },
  { dimension: 'thermal resistance', symbol: 'K/W', spellings: per(['K', ...CELSIUS], WATTS) },
  { dimension: 'flux density', symbol: 'T', spellings: ['T', 'tesla'], onlyWhereWanted: true },
  { dimension: 'flux density', symbol: 'mT', spellings: ['mT'], exponent: -3 },
  { dimension: 'resistance', symbol: 'Ω', spellings: ['R', 'r'] },
  { dimension: 'resistance', symbol: 'kΩ', spellings: ['k', 'K'], exponent: 3, onlyWhereWanted: true },
  { dimension: 'resistance', symbol: 'MΩ', spellings: ['M', 'Meg', 'meg', 'MEG'], exponent: 6, onlyWhereWanted: true },
  { dimension: 'resistance', symbol: 'GΩ', spellings: ['G'], exponent: 9, onlyWhereWanted: true },
  { dimension: 'resistance', symbol: 'mΩ', spellings: ['m'], exponent: -3, onlyWhereWanted: true },
  { dimension: 'resistance', symbol: 'mΩ', spellings: ['mR'], exponent: -3 },
  { dimension: 'resistance', symbol: 'kΩ', spellings: ['kR'], exponent: 3 },
  {
    dimension: 'resistance',
    symbol: 'MΩ',
    spellings: ['megohm', 'megohms', 'Megohm', 'Megohms', 'MEGOHM', 'Megaohm', 'megaohm'],
    exponent: 6,
  },
  { dimension: 'resistance', symbol: 'kΩ', spellings: ['kilohm', 'kilohms', 'Kilohm'], exponent: 3 },
  ...(['capacitance', 'inductance'] as const).flatMap((dimension) => barePrefixes(dimension)),
];

/** "100n" in a capacitor row, "4.7u" in an inductor row: the prefix alone, where the row says what it is. */
function barePrefixes(dimension: 'capacitance' | 'inductance'): SingleUnit[] {
  const base = dimension === 'capacitance' ? 'F' : 'H';
  return [
    { dimension, symbol: `p${base}`, spellings: ['p', 'P'], exponent: -12, onlyWhereWanted: true },
    { dimension, symbol: `n${base}`, spellings: ['n', 'N'], exponent: -9, onlyWhereWanted: true },
    { dimension, symbol: `µ${base}`, spellings: ['µ', 'u', 'U'], exponent: -6, onlyWhereWanted: true },
  ];
}
