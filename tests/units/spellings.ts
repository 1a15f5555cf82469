import type { Dimension } from '../../src/units/dimension.ts';

/** How a field is read: with a dimension, as a rating with or without a usual dimension, as a size, a supply input, or offers. */
export type Field =
  | { readonly as: 'quantity'; readonly of: Dimension }
  | { readonly as: 'rating'; readonly bareNumber: Dimension | null }
  | { readonly as: 'size' | 'supply input' | 'offers' };

/** One spelling that people use, and what it says. Numbers in the units that the key names. */
export interface Spelling {
  readonly text: string;
  readonly field: Field;
  /** Expected quantities, by dimension, in SI; a pair is a range or a tolerance from low to high. */
  readonly says?: Partial<Readonly<Record<Dimension, number | readonly [number, number]>>>;
  readonly count?: number;
  readonly marks?: readonly string[];
  readonly waveform?: 'AC' | 'DC';
  readonly hertz?: readonly number[];
  readonly millimetres?: readonly number[];
  /** Volts and amperes (or lowest, highest volts and amperes) of each offer. */
  readonly offers?: readonly (readonly number[])[];
  /** Part of the remark that must be made, its severity and the piece of text it points at. */
  readonly remark?: {
    readonly severity: 'error' | 'warning' | 'note';
    readonly says: string;
    readonly at: string;
    readonly suggests?: string;
  };
  readonly why: string;
}

const resistor = { as: 'rating', bareNumber: 'resistance' } as const;
const capacitor = { as: 'rating', bareNumber: 'capacitance' } as const;
const free = { as: 'rating', bareNumber: null } as const;
const size = { as: 'size' } as const;
const input = { as: 'supply input' } as const;
const offers = { as: 'offers' } as const;

function quantity(of: Dimension): Field {
  return { as: 'quantity', of };
}

/** Spellings of the field needs, each as somebody wrote it; "common practice" where nobody is to be named. */
export const SPELLINGS: readonly Spelling[] = [
  { text: '4.7k', field: resistor, says: { resistance: 4700 }, why: 'a resistor row says what k is; common practice' },
  {
    text: '4.7k',
    field: free,
    remark: { severity: 'error', says: 'unit missing', at: '4.7k' },
    why: 'in a free cell the unit is missing; common practice',
  },
  { text: '4.7 k', field: resistor, says: { resistance: 4700 }, why: 'space before the prefix; github.com/yaqwsx/PcbDraw issue 117' },
  {
    text: '470',
    field: resistor,
    says: { resistance: 470 },
    remark: { severity: 'note', says: 'unit assumed', at: '470' },
    why: 'bare number in a resistor row; github.com/yaqwsx/PcbDraw pull 153',
  },
  { text: '470', field: free, remark: { severity: 'error', says: 'unit missing', at: '470' }, why: 'bare number in a free cell' },
  { text: '4k7', field: free, says: { resistance: 4700 }, why: 'github.com/rjwalters/kicad-tools pull 4141' },
  { text: '4R7', field: free, says: { resistance: 4.7 }, why: 'github.com/rjwalters/kicad-tools pull 4141' },
  {
    text: '4R7x9',
    field: free,
    remark: { severity: 'error', says: '“x9” is left over', at: 'x9' },
    why: 'a search-style match truncated this; github.com/rjwalters/kicad-tools pull 4141',
  },
  { text: 'R10', field: free, says: { resistance: 0.1 }, why: 'github.com/inventree/InvenTree issue 12063' },
  { text: '4.7 k\u2126', field: free, says: { resistance: 4700 }, why: 'ohm sign U+2126; github.com/SchrodingersGat/KiBoM pull 135' },
  { text: '4.7 k\u03A9', field: free, says: { resistance: 4700 }, why: 'Greek capital omega U+03A9; KenKundert/quantiphy issue 5' },
  {
    text: '\u33C0 4.7',
    field: free,
    remark: { severity: 'error', says: 'number must come first', at: '\u33C0 4.7' },
    why: 'U+33C0 before its number',
  },
  {
    text: '\u33C0 4.7',
    field: quantity('resistance'),
    remark: { severity: 'error', says: 'number must come first', at: '\u33C0 4.7' },
    why: 'the same in a field',
  },
  { text: '4.7\u33C0', field: free, says: { resistance: 4700 }, why: 'square k ohm U+33C0' },
  { text: '420V 120uF', field: free, says: { voltage: 420, capacitance: 120e-6 }, why: 'common practice' },
  { text: '400V68\u00B5F', field: free, says: { voltage: 400, capacitance: 68e-6 }, why: 'no space; micro sign U+00B5' },
  { text: '220UF/450V', field: free, says: { voltage: 450, capacitance: 220e-6 }, why: 'capital U F; public schematic and stock lists' },
  { text: '2x 470uF/25V', field: free, count: 2, says: { voltage: 25, capacitance: 470e-6 }, why: 'count; the value is of one part' },
  {
    text: '0.47uF X2 275VAC',
    field: free,
    says: { capacitance: 0.47e-6, voltage: 275 },
    marks: ['X2'],
    waveform: 'AC',
    why: 'common practice',
  },
  {
    text: '100nF/275VAC X2-rated',
    field: free,
    says: { capacitance: 100e-9, voltage: 275 },
    marks: ['X2'],
    waveform: 'AC',
    why: 'public mains relay board notes',
  },
  {
    text: '2.2nF/250VAC Y1-rated',
    field: free,
    says: { capacitance: 2.2e-9, voltage: 250 },
    marks: ['Y1'],
    waveform: 'AC',
    why: 'public mains relay board notes',
  },
  {
    text: '104K',
    field: capacitor,
    says: { capacitance: [90e-9, 110e-9] },
    why: 'K is 10 %, not kilo; stechvision.com/capacitor-code.php',
  },
  { text: '104K', field: quantity('capacitance'), says: { capacitance: [90e-9, 110e-9] }, why: 'the same in a field' },
  { text: '4n7', field: free, says: { capacitance: 4.7e-9 }, why: 'stechvision.com/capacitor-code.php' },
  { text: '68\u338C', field: free, says: { capacitance: 68e-6 }, why: 'square mu F U+338C' },
  {
    text: '680 mfd',
    field: free,
    remark: { severity: 'error', says: 'mfd: old spelling of microfarad', at: 'mfd', suggests: '680 µF' },
    why: 'electricaltechnology.org, 2013-06, comments',
  },
  {
    text: '680mF',
    field: free,
    says: { capacitance: 0.68 },
    remark: { severity: 'warning', says: 'implausible in a small adapter', at: '680mF' },
    why: 'common practice',
  },
  { text: '700V/140mohm', field: free, says: { voltage: 700, resistance: 0.14 }, why: 'common practice' },
  {
    text: '700V/140Mohm',
    field: free,
    says: { voltage: 700, resistance: 140e6 },
    why: 'm and M are never folded; github.com/sharpie7/circuitjs1 issue 245',
  },
  { text: '650V 150m\u03A9', field: free, says: { voltage: 650, resistance: 0.15 }, why: 'public GaN part lists' },
  { text: 'VDSS=200V,RDS(on)=0.04\u03A9', field: free, says: { voltage: 200, resistance: 0.04 }, why: 'public schematic text' },
  {
    text: '10000mAh 3.7V (37Wh)',
    field: free,
    says: { charge: 36000, voltage: 3.7, energy: 133200 },
    why: 'public notes on power-bank figures',
  },
  { text: '5V/13000mAh', field: free, says: { charge: 46800, voltage: 5 }, why: 'public notes on power-bank figures' },
  { text: '20,100mAh', field: free, says: { charge: 72360 }, why: 'thousands before mAh; public retail listing' },
  { text: '10\u00A0000 mAh', field: free, says: { charge: 36000 }, why: 'U+00A0 groups; github.com/globalizejs/globalize issue 288' },
  {
    text: '37Ah 3.7V',
    field: free,
    says: { charge: 133200, voltage: 3.7 },
    remark: { severity: 'warning', says: 'Ah where Wh is usual', at: '37Ah' },
    why: '136.9 Wh; common practice',
  },
  { text: '29.8W/in3', field: quantity('power density'), says: { 'power density': 29.8 / 16.387064e-6 }, why: 'a 65 W design report' },
  { text: '1.4 W/cc', field: quantity('power density'), says: { 'power density': 1.4e6 }, why: 'a trade article on 140 W adapters' },
  { text: '\uFF15V\uFF0F\uFF13A', field: free, says: { voltage: 5, current: 3 }, why: 'full-width digits and slash' },
  { text: '', field: free, remark: { severity: 'error', says: 'empty', at: '' }, why: 'Number("") is 0' },
  {
    text: '1e3 W',
    field: quantity('power'),
    says: { power: 1000 },
    remark: { severity: 'note', says: 'exponent accepted', at: '1e3' },
    why: 'exponent form',
  },
  {
    text: '3,3V 3A',
    field: free,
    says: { voltage: 3.3, current: 3 },
    remark: { severity: 'note', says: 'decimal comma', at: '3,3' },
    why: 'parseFloat gives 3; BenjaminVanRyseghem/numbro issue 765',
  },
  { text: '195g', field: quantity('mass'), says: { mass: 0.195 }, why: 'public retail listing' },
  {
    text: '9.1 oz / 258 g',
    field: quantity('mass'),
    says: { mass: 0.258 },
    remark: { severity: 'note', says: 'both units agree', at: '9.1 oz / 258 g' },
    why: 'agree within 1 %',
  },
  {
    text: '-40\u00B0C to 70\u00B0C',
    field: quantity('temperature'),
    says: { temperature: [-40, 70] },
    why: 'the hyphen is a minus; public data sheet',
  },
  { text: '105\u02DAC', field: quantity('temperature'), says: { temperature: 105 }, why: 'ring above U+02DA' },
  { text: '68x52x29mm', field: size, millimetres: [68, 52, 29], why: 'common practice' },
  { text: '2.7 x 2.0 x 1.1 in', field: size, millimetres: [68.58, 50.8, 27.94], why: 'common practice' },
  { text: '52 \u00D7 27 \u00D7 45mm', field: size, millimetres: [52, 27, 45], why: 'U+00D7; public retail listing' },
  {
    text: '1.61\u201D x 4.0\u201D x 9.0\u201D',
    field: size,
    millimetres: [40.894, 101.6, 228.6],
    why: 'smart quotes as inch marks; public data sheet',
  },
  { text: '14.8 cm - 7.2 cm - 1.64 cm', field: size, millimetres: [148, 72, 16.4], why: 'hyphen as separator; public shop data' },
  {
    text: '34 x 21 x 4.4',
    field: size,
    remark: { severity: 'error', says: 'unit missing', at: '34 x 21 x 4.4' },
    why: 'the unit stood in the table heading',
  },
  { text: '\u230012.5x25mm', field: size, millimetres: [12.5, 25], why: 'diameter sign U+2300' },
  { text: '\u00D810 x 16 mm', field: size, millimetres: [10, 16], why: 'U+00D8 typed for diameter' },
  { text: '\u220510 x 16 mm', field: size, millimetres: [10, 16], why: 'U+2205 typed for diameter' },
  {
    text: '100-240V~ 50/60Hz 1.8A Max',
    field: input,
    says: { voltage: [100, 240], current: 1.8 },
    waveform: 'AC',
    hertz: [50, 60],
    why: 'common practice',
  },
  {
    text: 'AC 100-240V 50/60HZ 1.8A max',
    field: input,
    says: { voltage: [100, 240], current: 1.8 },
    waveform: 'AC',
    hertz: [50, 60],
    why: 'capital HZ',
  },
  {
    text: '100\u2013240Vac 50/60Hz 1.8A Max',
    field: input,
    says: { voltage: [100, 240], current: 1.8 },
    waveform: 'AC',
    hertz: [50, 60],
    why: 'U+2013, Vac',
  },
  {
    text: '100~240V~,50Hz, 16A Max',
    field: input,
    says: { voltage: [100, 240], current: 16 },
    waveform: 'AC',
    hertz: [50],
    why: 'first tilde range, second alternating',
  },
  {
    text: '90 VAC \u2013 265 VAC',
    field: input,
    says: { voltage: [90, 265] },
    waveform: 'AC',
    hertz: [],
    why: 'design example report, 45 W',
  },
  {
    text: '100-240Vac, 50/60Hz, 0.4A',
    field: input,
    says: { voltage: [100, 240], current: 0.4 },
    waveform: 'AC',
    hertz: [50, 60],
    why: 'UL test report',
  },
  { text: '5V\u23933A', field: offers, offers: [[5, 3]], why: 'direct current U+2393' },
  {
    text: '5V\u23933A / 9V\u23933A / 12V\u23933A / 15V\u23933A / 20V\u23935A / 28V\u23935A (140W Max)',
    field: offers,
    offers: [
      [5, 3],
      [9, 3],
      [12, 3],
      [15, 3],
      [20, 5],
      [28, 5],
    ],
    why: 'public retail listing of a power bank',
  },
  {
    text: '5V\u23933A\u30019V\u23932.22A\u300112V\u23931.67A',
    field: offers,
    offers: [
      [5, 3],
      [9, 2.22],
      [12, 1.67],
    ],
    why: 'ideographic comma U+3001',
  },
  {
    text: '5V\u23933A \u00B7 9V\u23932.77A \u00B7 12V\u23932.08A',
    field: offers,
    offers: [
      [5, 3],
      [9, 2.77],
      [12, 2.08],
    ],
    why: 'middle dot',
  },
  {
    text: '5V/3A, 9V/3A, 12V/3A, 15V/3A. 20V/5A',
    field: offers,
    offers: [
      [5, 3],
      [9, 3],
      [12, 3],
      [15, 3],
      [20, 5],
    ],
    why: 'a full stop separates',
  },
  {
    text: '5V/3A 9V/3A 12V/3A 15V/3A 20V/3.25A (65W Max)',
    field: offers,
    offers: [
      [5, 3],
      [9, 3],
      [12, 3],
      [15, 3],
      [20, 3.25],
    ],
    why: 'label of a three-port unit',
  },
  {
    text: '5000mV 3000mA, 9000mV 2220mA, 12000mV 1670mA',
    field: offers,
    offers: [
      [5, 3],
      [9, 2.22],
      [12, 1.67],
    ],
    why: 'CH32X035-USB-PD-Adapter issue 3',
  },
  { text: '3.3-21V 3A PPS', field: offers, offers: [[3.3, 21, 3]], why: 'kind behind; common practice' },
  { text: 'PPS: 3.3-21V/5A', field: offers, offers: [[3.3, 21, 5]], why: 'public bench notes' },
  {
    text: 'PPS: 3.3V~5.9V - 3A, 3.3V~11.0V - 2.25A',
    field: offers,
    offers: [
      [3.3, 5.9, 3],
      [3.3, 11, 2.25],
    ],
    why: 'tilde as range, dash as separator',
  },
  {
    text: '3.3-21V 3.33A',
    field: offers,
    offers: [[3.3, 21, 3.33]],
    remark: { severity: 'warning', says: 'not a multiple of 0.05 A', at: '3.3-21V 3.33A' },
    why: 'github.com/CentyLab/AP33772-Cpp issues 3 and 5',
  },
];
