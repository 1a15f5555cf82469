import type { Dimension } from '../../src/units/dimension.ts';
import type { Field, Spelling } from './spellings.ts';

const resistor = { as: 'rating', bareNumber: 'resistance' } as const;
const capacitor = { as: 'rating', bareNumber: 'capacitance' } as const;
const free = { as: 'rating', bareNumber: null } as const;
const size = { as: 'size' } as const;
const input = { as: 'supply input' } as const;
const offers = { as: 'offers' } as const;

function quantity(of: Dimension): Field {
  return { as: 'quantity', of };
}

function row(text: string, field: Field, rest: Omit<Spelling, 'text' | 'field' | 'why'> & { readonly why?: string }): Spelling {
  return { text, field, why: 'common practice', ...rest };
}

function refused(text: string, field: Field, says: string, at: string, suggests?: string): Spelling {
  const remark = { severity: 'error' as const, says, at, ...(suggests === undefined ? {} : { suggests }) };
  return { text, field, remark, why: 'cannot be read one way only' };
}

const OHMS = [
  '140mohm',
  '140 mOhm',
  '140 mΩ',
  '140 milliohm',
  '140m\u2126',
  '140 mohms',
  '140 m ohm',
  '140 m Ω',
  '140 Milliohms',
  '140 mOHM',
  '140 mR',
];
const MICRO = ['47µF', '47\u03BCF', '47uF', '47 UF', '47\u338C', '47 microfarad', '47\u2009µF', '47\u202Fµ\u200BF', '４７µＦ'];
const MEGOHMS = ['1 MΩ', '1 Mohm', '1MOhm', '1 megohm', '1 M Ω', '1 \u33C1'];
const DEGREES = ['105 °C', '105°C', '105˚C', '105ºC', '105 \u2103', '105 degC', '105 deg C', '105 degrees Celsius', '105 Celsius'];
const DASHES = [
  '\u2010',
  '\u2011',
  '\u2012',
  '\u2013',
  '\u2014',
  '\u2015',
  '\u2212',
  '\uFF0D',
  '-',
  '~',
  '\u301C',
  '\uFF5E',
  '…',
  '...',
  ' to ',
  ' – ',
  '--',
];
const TIMES = ['x', 'X', '×', '*', '\u2217', '\u2715', '·', '\u22C5', ' by ', ' х '];
const INCHES = ['"', '\u201D', '\u201C', '\u2033', "''", '\u2032\u2032', ' in', ' inch', 'in.', '\u330C'.replace('\u330C', '\u33CC')];
const SPACES = [' ', '\u00A0', '\u2009', '\u202F', '\u3000', '\t', ''];
const DIRECT = ['V\u2393', 'VDC', 'Vdc', 'V DC', 'V=', 'V d.c.', ' V\u2393 '];
const ALTERNATING = ['V~', 'VAC', 'Vac', 'V AC', 'V ~', 'Vrms', 'V a.c.', 'V\u223F'];

/** Whole kinds of spelling, and the quirks of real documents (design reports, bills of material, labels). */
export const MORE_SPELLINGS: readonly Spelling[] = [
  ...OHMS.map((text) => row(text, quantity('resistance'), { says: { resistance: 0.14 } })),
  ...OHMS.map((text) => row(text, free, { says: { resistance: 0.14 } })),
  ...MEGOHMS.map((text) => row(text, free, { says: { resistance: 1e6 } })),
  ...MICRO.map((text) => row(text, quantity('capacitance'), { says: { capacitance: 47e-6 } })),
  ...DEGREES.map((text) => row(text, quantity('temperature'), { says: { temperature: 105 } })),
  ...DASHES.map((dash) => row(`100${dash}240 V`, quantity('voltage'), { says: { voltage: [100, 240] } })),
  ...TIMES.map((times) => row(`68${times}52${times}29 mm`, size, { millimetres: [68, 52, 29] })),
  ...INCHES.map((inch) => row(`1.5${inch} × 2${inch} × 3${inch}`, size, { millimetres: [38.1, 50.8, 76.2] })),
  ...SPACES.map((space) => row(`187${space}g`, quantity('mass'), { says: { mass: 0.187 } })),
  ...DIRECT.map((unit) => row(`12${unit}`, quantity('voltage'), { says: { voltage: 12 }, waveform: 'DC' })),
  ...ALTERNATING.map((unit) => row(`230${unit}`, quantity('voltage'), { says: { voltage: 230 }, waveform: 'AC' })),

  row('±5 %', quantity('voltage'), { remark: { severity: 'error', says: 'number missing', at: '±5 %' } }),
  row('24 V ±5 %', quantity('voltage'), { says: { voltage: [22.8, 25.2] } }),
  row('24 ± 1 V', quantity('voltage'), { says: { voltage: [23, 25] } }),
  row('24V +/-5%', quantity('voltage'), { says: { voltage: [22.8, 25.2] } }),
  row('100 µF +10/-20 %', quantity('capacitance'), { says: { capacitance: [80e-6, 110e-6] } }),
  row('100 µF -20 % +80 %', quantity('capacitance'), { says: { capacitance: [80e-6, 180e-6] } }),
  row('10 uH (±20 %)', quantity('inductance'), { says: { inductance: [8e-6, 12e-6] } }),
  row('187 g ± 1 g', quantity('mass'), { says: { mass: [0.186, 0.188] } }),
  row('25 °C ± 5 K', quantity('temperature'), { says: { temperature: [20, 30] } }),
  row('85 / 230 / 265 V', quantity('voltage'), {
    says: { voltage: [85, 265] },
    why: 'minimum, typical, maximum in one cell; a 65 W design guide',
  }),
  row('225 / 250 / 275 kHz (min/typ/max)', quantity('frequency'), {
    says: { frequency: [225e3, 275e3] },
    why: 'data sheet of a car charger controller',
  }),
  row('from 3.3 V to 21 V', quantity('voltage'), { says: { voltage: [3.3, 21] } }),
  row('between 5 and 31 V', quantity('voltage'), { says: { voltage: [5, 31] } }),
  row('−40…+105 °C', quantity('temperature'), { says: { temperature: [-40, 105] } }),
  row('−40 °C', quantity('temperature'), { says: { temperature: -40 } }),
  row('98.6 °F', quantity('temperature'), { says: { temperature: 37 } }),
  row('89,9 %', quantity('ratio'), {
    says: { ratio: 0.899 },
    remark: { severity: 'note', says: 'decimal comma', at: '89,9' },
    why: 'European test report',
  }),
  row('0.92', quantity('ratio'), { says: { ratio: 0.92 } }),
  row('2.9"', quantity('length'), { says: { length: 0.07366 } }),
  row('3/4 in', quantity('length'), { says: { length: 0.01905 } }),
  row('1/4 W 10 kΩ', resistor, { says: { power: 0.25, resistance: 10e3 } }),
  row('300 m VP-P', quantity('voltage'), { says: { voltage: 0.3 }, why: 'spelling in a 90 W adapter note' }),
  row('35.5 cm3 (2.17 in3)', quantity('volume'), {
    says: { volume: 35.5e-6 },
    remark: { severity: 'note', says: 'both units agree', at: '35.5 cm3 (2.17 in3' },
  }),
  row('2.17 in3 or 35.5 cm3', quantity('volume'), {
    says: { volume: 35.5e-6 },
    remark: { severity: 'note', says: 'both units agree', at: '2.17 in3 or 35.5 cm3' },
  }),
  row('20\u202F100 mAh', quantity('charge'), { says: { charge: 72360 } }),
  row("20'100 mAh", quantity('charge'), { says: { charge: 72360 } }),
  row('20 100 mAh', quantity('charge'), { says: { charge: 72360 } }),
  row('6,800 µF', quantity('capacitance'), { says: { capacitance: 6800e-6 } }),
  row('1.234,5 V', quantity('voltage'), { says: { voltage: 1234.5 }, remark: { severity: 'note', says: 'decimal comma', at: '1.234,5' } }),
  row('1,234.5 V', quantity('voltage'), { says: { voltage: 1234.5 } }),
  row('0,470 µF', quantity('capacitance'), {
    says: { capacitance: 0.47e-6 },
    remark: { severity: 'note', says: 'decimal comma', at: '0,470' },
  }),
  row('.47 µF', quantity('capacitance'), { says: { capacitance: 0.47e-6 } }),
  row('4.7 × 10^-6 F', quantity('capacitance'), {
    says: { capacitance: 4.7e-6 },
    remark: { severity: 'note', says: 'exponent accepted', at: '4.7 × 10^-6' },
  }),
  row('10.000 mAh', quantity('charge'), {
    says: { charge: 36 },
    remark: { severity: 'warning', says: 'is 10 mAh', at: '10.000', suggests: '10000 mAh' },
  }),
  row('240-100 V', quantity('voltage'), {
    says: { voltage: [100, 240] },
    remark: { severity: 'warning', says: 'runs downwards', at: '240-100 V' },
  }),
  row('~ 250 kHz', quantity('frequency'), {
    says: { frequency: 250e3 },
    remark: { severity: 'note', says: 'approximate', at: '~ 250 kHz' },
  }),
  row('470K', quantity('resistance'), { says: { resistance: 470e3 }, why: 'IEC 60062, published example' }),
  row('298 K', quantity('temperature'), { says: { temperature: 24.85 } }),
  row('12 A²s', free, { says: { 'melting integral': 12 } }),
  row('12 A2s', free, { says: { 'melting integral': 12 } }),
  row('12 W/kg', quantity('specific power'), { says: { 'specific power': 12 } }),
  row('2 cu. in.', quantity('volume'), { says: { volume: 2 * 16.387064e-6 } }),
  row('75 ml', quantity('volume'), { says: { volume: 75e-6 } }),

  row('T3.15AL250V', free, { says: { current: 3.15, voltage: 250 }, marks: ['T', 'L'], why: 'IEC 60127 order of a fuse marking' }),
  row('T2AL250V', free, { says: { current: 2, voltage: 250 }, marks: ['T', 'L'], why: 'IEC 60127, published example' }),
  row('F500mAL250V', free, { says: { current: 0.5, voltage: 250 }, marks: ['F', 'L'], why: 'IEC 60127, same rule' }),
  row('T2AH250V', free, { says: { current: 2, voltage: 250 }, marks: ['T', 'H'] }),
  row('T 3.15 A H 250 V', free, { says: { current: 3.15, voltage: 250 }, marks: ['T', 'H'] }),
  row('FF 1A 600V', free, { says: { current: 1, voltage: 600 }, marks: ['FF'] }),
  row('T3.15 A 250 VAC', free, { says: { current: 3.15, voltage: 250 }, marks: ['T'], waveform: 'AC' }),
  row('3.15 A, 250 VAC/VDC', free, { says: { current: 3.15, voltage: 250 }, why: 'bill of material of a 65 W design' }),
  row('2 × 470 µF / 25 V polymer', free, { count: 2, says: { capacitance: 470e-6, voltage: 25 }, marks: ['polymer'] }),
  row('2 * 470 µF 25 V', free, { count: 2, says: { capacitance: 470e-6 } }),
  row('2x470uF 25V', free, { count: 2, says: { capacitance: 470e-6 } }),
  row('2X 470uF 25V', free, { count: 2, says: { capacitance: 470e-6 } }),
  row('2 pcs 470 µF 25 V', free, { count: 2, says: { capacitance: 470e-6 } }),
  row('470 µF 25 V ×2', free, { count: 2, says: { capacitance: 470e-6 } }),
  row('470 µF 25 V, qty 2', free, { count: 2, says: { capacitance: 470e-6 } }),
  row('270 µF 25 V x 2 in parallel', free, { count: 2, says: { capacitance: 270e-6 }, marks: ['parallel'] }),
  row('0.22 µF 250 V X7R 1206', free, { says: { capacitance: 0.22e-6, voltage: 250 }, marks: ['X7R', '1206'] }),
  row('2200 pF, 250 VAC, X7R, 2220', free, { says: { capacitance: 2200e-12, voltage: 250 }, marks: ['X7R', '2220'], waveform: 'AC' }),
  row('X1/Y2 2.2 nF', free, { says: { capacitance: 2.2e-9 }, marks: ['X1', 'Y2'] }),
  row('22 pF NPO 50 V', free, { says: { capacitance: 22e-12, voltage: 50 }, marks: ['C0G'] }),
  row('5 mohm 1 % 1206', free, {
    says: { resistance: [4.95e-3, 5.05e-3] },
    marks: ['1206'],
    remark: { severity: 'note', says: 'tolerance', at: '1 %' },
  }),
  row('10 µF K 25 V', free, {
    says: { capacitance: [9e-6, 11e-6], voltage: 25 },
    remark: { severity: 'note', says: 'tolerance letter', at: '10 µF' },
  }),
  row('0.1 uF more than 35 V, ±10 %', free, {
    says: { capacitance: [90e-9, 110e-9], voltage: 35 },
    why: 'data sheet of a car charger controller',
  }),
  row('10 uH ±20 %, 15 A, DCR < 10 mohm', free, { says: { inductance: [8e-6, 12e-6], current: 15, resistance: 0.01 } }),
  row('4k7J', free, { says: { resistance: [4465, 4935] } }),
  row('2u2K', free, { says: { capacitance: [1.98e-6, 2.42e-6] } }),
  row('4n7F', free, { says: { capacitance: 4.7e-9 } }),
  row('472J', capacitor, { says: { capacitance: [4.465e-9, 4.935e-9] }, why: 'EIA marking' }),
  row('106M', capacitor, { says: { capacitance: [8e-6, 12e-6] }, why: 'EIA marking' }),
  row('225Z', capacitor, { says: { capacitance: [1.76e-6, 3.96e-6] }, why: 'EIA marking' }),
  row('100n', capacitor, { says: { capacitance: 100e-9 }, why: 'IEC 60062, from memory' }),
  row('3V3 500 mA', free, { says: { voltage: 3.3, current: 0.5 } }),
  row('8.35x7.7x4 mm', free, { says: { length: 8.35e-3 } }),
  row('1S2P 10000 mAh 3.7 V', free, { says: { charge: 36000, voltage: 3.7 }, marks: ['1S2P'] }),

  refused('140 mL', quantity('resistance'), 'is a volume; a resistance is in', '140 mL', '140 mΩ'),
  refused('12 µH', quantity('capacitance'), 'is an inductance', '12 µH', '12 µF'),
  refused('700V/140mohmm', free, '“mohmm” is no unit', 'mohmm', '140 mΩ'),
  refused('4.7 mh', quantity('inductance'), '“mh” is no unit', 'mh', '4.7 mH'),
  refused('10000MAH', quantity('charge'), '“MAH” is no unit', 'MAH', '10000 mAh'),
  refused('2,250 A', quantity('current'), 'can be 2250 or 2.250', '2,250'),
  refused('12 000 V', quantity('voltage'), 'may be two numbers', '12 000'),
  refused('9.1 oz / 268 g', quantity('mass'), '9.1 oz and 268 g are 3.7 % apart', '9.1 oz / 268 g'),
  refused('0.22uF/500V', quantity('capacitance'), '“/500V” is left over', '/500V'),
  refused('2 x 10 uF + 47 uF', free, '“+” joins parts', '+ 47 uF'),
  refused('-5 µF', quantity('capacitance'), 'cannot be negative', '-5 µF'),
  refused('1e400 V', quantity('voltage'), 'too large', '1e400 V'),
  refused('680 MFD', free, 'old spelling of microfarad', 'MFD', '680 µF'),
  refused('22 mmfd', free, 'old spelling of picofarad', 'mmfd', '22 pF'),
  refused('104', capacitor, 'unit missing', '104', '100000 pF, if this is the marking on the part'),
  refused('mm', quantity('length'), 'number missing', 'mm'),
  refused(`5 V ${'x'.repeat(300)}`, free, 'at most 300', `5 V ${'x'.repeat(300)}`),

  row('68 × 52 × 29 mm ± 0.3 mm', size, { millimetres: [68, 52, 29] }),
  row('132 mm (L) x 52 mm (W) x 22 mm (H)', size, { millimetres: [132, 52, 22], why: 'product page of a 90 W adapter' }),
  row('D x W x H: 60 x 28.6 x 20 mm', size, { millimetres: [60, 28.6, 20] }),
  row('60x28.6x20mm (LxWxH)', size, { millimetres: [60, 28.6, 20] }),
  row('L68 x W52 x H29 mm', size, { millimetres: [68, 52, 29] }),
  row('6,8 x 5,2 x 2,9 cm', size, { millimetres: [68, 52, 29], remark: { severity: 'note', says: 'decimal comma', at: '6,8' } }),
  row('62 x 26.8 x 20 mm (2.44 x 1.06 x 0.79 in)', size, {
    millimetres: [62, 26.8, 20],
    remark: { severity: 'note', says: 'agree within 2 %', at: '62 x 26.8 x 20 mm (2.44 x 1.06 x 0.79 in)' },
  }),
  row('12.5 mm dia x 25 mm', size, { millimetres: [12.5, 25] }),
  refused('68 × 52 × 29 mm (2.9 × 2.0 × 1.1 in)', size, '68 mm and 2.9 in are 7.7 % apart', '68 × 52 × 29 mm (2.9'),
  refused('68 x 52 mm', size, 'a box has three edges', '68 x 52 mm'),
  refused('68x52x29MM', size, '“MM” is no unit', 'MM'),
  refused('68 × 52 × 29 g', size, 'is a mass', '68'),

  row('12–24 V⎓', input, { says: { voltage: [12, 24] }, waveform: 'DC' }),
  row('DC 12-24V 10A', input, { says: { voltage: [12, 24], current: 10 }, waveform: 'DC' }),
  row('5-31 V', input, { says: { voltage: [5, 31] }, waveform: 'DC', remark: { severity: 'note', says: 'DC assumed', at: '5-31 V' } }),
  row('90/120/220 VAC', input, { says: { voltage: [90, 220] }, waveform: 'AC', why: 'public slides of a 45 W design' }),
  row('Input: 100-240V~50/60Hz, 1.5A', input, { says: { voltage: [100, 240], current: 1.5 }, waveform: 'AC', hertz: [50, 60] }),
  row('90 - 265 VAC, 45-65 Hz', input, { says: { voltage: [90, 265] }, waveform: 'AC', hertz: [45, 65] }),
  row('85 / 230 / 265 V, 47/50/63 Hz', input, { says: { voltage: [85, 265] }, waveform: 'AC', hertz: [47, 50, 63] }),
  row('100-240 V~ 50/60 Hz 150 VA', input, { says: { voltage: [100, 240], 'apparent power': 150 }, waveform: 'AC' }),
  row('13.5 VDC', input, { says: { voltage: 13.5 }, waveform: 'DC' }),
  row('5V⎓3A, 9V⎓2A', input, {
    says: { voltage: [5, 9], current: 3 },
    waveform: 'DC',
    remark: { severity: 'note', says: 'several voltages', at: '5V⎓3A, 9V⎓' },
  }),
  refused('50/60 Hz', input, 'needs its voltage', '50/60 Hz'),

  row('5V/9V/12V 3A', offers, {
    offers: [
      [5, 3],
      [9, 3],
      [12, 3],
    ],
  }),
  row('5/9/15/20 V 3 A', offers, {
    offers: [
      [5, 3],
      [9, 3],
      [15, 3],
      [20, 3],
    ],
  }),
  row('3A@5V, 2A@9V', offers, {
    offers: [
      [5, 3],
      [9, 2],
    ],
  }),
  row('5V---3A', offers, { offers: [[5, 3]] }),
  row('5 V 3 A, PPS 3.3–21 V 5 A', offers, {
    offers: [
      [5, 3],
      [3.3, 21, 5],
    ],
  }),
  row('AVS 15–28 V 140 W', offers, { offers: [[15, 28, 140]] }),
  row('SPR AVS 9–20 V 3 A / 2.25 A', offers, { offers: [[3, 2.25]] }),
  row('variable 5-12V 3A; battery 3-12 V 45 W', offers, {
    offers: [
      [5, 12, 3],
      [3, 12, 45],
    ],
  }),
  row('20V/3.25A (100W max)', offers, {
    offers: [[20, 3.25]],
    remark: { severity: 'warning', says: '100W max is printed, and the offers reach 65 W', at: '100W max' },
  }),
  refused('9V 3A, 5V', offers, 'its current is missing', '5V'),
  refused('5V 3 A, 140 mL', offers, 'no part of an offer', '140 mL'),
];
