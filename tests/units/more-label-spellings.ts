import { input, offers, refused, row, size } from './spelling.ts';
import type { Spelling } from './spelling.ts';

/** More of what labels, product pages and testers print. */
export const MORE_LABEL_SPELLINGS: readonly Spelling[] = [
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
  row('Ø12.5 mm, height 25 mm', size, { millimetres: [12.5, 25] }),
  row('approx. 68 x 52 x 29 mm', size, { millimetres: [68, 52, 29] }),
  row('H 29 mm × W 52 mm × D 68 mm', size, { millimetres: [29, 52, 68] }),
  row('68.0×52.0×29.0mm ±0.3', size, { millimetres: [68, 52, 29] }),
  row('AC100-240V,50/60Hz,1.5A', input, { says: { voltage: [100, 240], current: 1.5 }, waveform: 'AC', hertz: [50, 60] }),
  row('Input:AC100V-240V~50/60Hz 1.8A(Max)', input, { says: { voltage: [100, 240], current: 1.8 }, waveform: 'AC', hertz: [50, 60] }),
  row('DC12-24V 15A max', input, { says: { voltage: [12, 24], current: 15 }, waveform: 'DC' }),
  row('12V/24V⎓', input, { says: { voltage: [12, 24] }, waveform: 'DC' }),
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
