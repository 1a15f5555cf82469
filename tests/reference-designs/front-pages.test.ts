import { describe, expect, test } from 'vitest';
import { answeredIn, saidOf } from '../demo/entries-in.ts';
import { claimed, CUBIC_INCH, design, DESIGNS, known, offeredWatts } from './designs.ts';
import { expectPrinted, roundsTo } from './prints-as.ts';

describe('every published design is read whole', () => {
  test('there are thirty-three', () => {
    expect(DESIGNS.length).toBe(33);
  });

  // Only the bill of material of TIDA-01622 leaves out something that a mains unit must have: the class of its Y capacitor.
  test.each(DESIGNS)('$slug gives no error that its entry does not answer', (sheet) => {
    expect(saidOf(sheet, ['error'])).toEqual(answeredIn(sheet));
    expect(answeredIn(sheet)).toEqual(sheet.slug === 'tida-01622-65w-acf' ? ['barrier-capacitor-class at CY1'] : []);
  });

  test.each(DESIGNS)('$slug names its document', ({ entry }) => {
    expect(entry.sources.length).toBeGreaterThan(0);
    expect(entry.device.maker).toBe('reference design');
  });
});

describe('volts times amperes against the rating that is printed', () => {
  test.each([
    ['der-601-60w', 'C1', [15, 27, 45, 60], 'DER-601, opening page'],
    ['der-602-100w', 'C1', [15, 27, 45, 100], 'DER-602, opening page'],
    ['der-820-20w', 'C1', [15, 20.07], 'DER-820, opening page'],
    ['der-628-18w', 'C1', [15, 18], 'DER-628, opening page'],
    ['der-533-20w', 'C1', [15, 19.8], 'DER-533, opening page'],
    ['rdr-659-30w', 'C1', [30.6, 30.36, 30.6], 'RDR-659, opening page'],
    ['rdr-159-2w4', 'DC', [2.4], 'RDR-159, opening page'],
    ['tpa1001c02-100w', 'C1', [25, 45, 75, 100], 'TPA1001C02 user guide, opening page'],
    ['um11319-100w', 'DC', [100.04], 'UM11319, opening page'],
    ['um10465-150w', 'DC', [150.15], 'UM10465, opening page'],
    ['um10972-240w', 'DC', [240], 'UM10972, opening page'],
    ['um10391-90w', 'DC', [90.09], 'UM10391, opening page'],
    ['steval-usbpd45c', 'C1', [15, 27, 45], 'STEVAL-USBPD45C product page'],
    ['steval-isc002v1-90w', 'DC', [90.06], 'STEVAL-ISC002V1 product page'],
    ['sluucx8-65w', 'C1', [15, 27, 45, 65], 'SLUUCX8, specifications'],
    ['rd-29-65w-acf', 'C1', [15, 27, 45, 65], 'RD-29, opening page'],
    ['open-5v-2w5', 'DC', [2.5], 'README of the project'],
  ])('%s %s: %j W (%s, %s)', (slug, port, watts) => {
    expect(offeredWatts(design(slug).entry, port)).toEqual(watts);
  });

  test.each(['der-820-20w', 'um10465-150w', 'um10391-90w'])('%s: a rating rounded by no more than 1 %% is not reproached', (slug) => {
    expect(saidOf(design(slug), ['error', 'warning'])).toEqual([]);
  });

  test('der-533-20w: 19.8 W for 20 W is no reproach to the label, only to the 9 V offer, which USB PD wants 10 mA closer', () => {
    expect(saidOf(design('der-533-20w'), ['error', 'warning'])).toEqual(['required-offers at C1']);
  });

  test('two ports at 5.17 V and 3 A are 15.51 W each and 31.02 W together (TIDT200)', () => {
    expect(offeredWatts(design('tidt200-car-2x5v').entry, 'C1')).toEqual([15.51]);
    const row = design('tidt200-car-2x5v').derived.shares?.rows.find((candidate) => candidate.key === 'C1 + C2');
    expectPrinted(row?.sum?.nominal ?? 0, '31.02', 'TIDT200, test conditions');
  });

  test('4.94 V across 10 Ω are 494 mA (README of the project)', () => {
    const [point] = design('open-5v-2w5').entry.measurements.filter((candidate) => candidate.subject === 'regulation');
    expect(point?.conditions['load']).toBe('10 Ω');
    expectPrinted(((point?.value.quantity.nominal ?? 0) / 10) * 1000, '494', 'README');
  });
});

describe('densities', () => {
  test.each([
    ['der-602-100w', 100, '6.897', 'DER-602, opening page: 14.5 W/in³'],
    ['evbum2684-300w', 300, '9.375', 'EVBUM2684, opening page: 32 W/in³'],
    ['psma-45w-acf', 45, '1.899', 'PSMA slides: 23.7 W/in³'],
    ['psma-150w-19v', 150, '7.143', 'PSMA slides: 21 W/in³'],
  ])('%s: %i W imply %s in³, and no edges are invented for it', (slug, watts, printed, where) => {
    const { entry } = design(slug);
    expectPrinted(watts / (claimed(entry, 'power density') * CUBIC_INCH), printed, where);
    expect(entry.body.size).toBeNull();
    expect(() => known(design(slug).derived.size.density)).toThrow();
  });

  test('a density is that of the continuous power: 340 W peak would be 36.3 W/in³ in the same box (EVBUM2684)', () => {
    const { entry, derived } = design('evbum2684-300w');
    expect(known(derived.ratedPower)).toBe(300);
    expect(entry.nameplate.peak?.quantity.nominal).toBe(340);
    expectPrinted(340 / (300 / (claimed(entry, 'power density') * CUBIC_INCH)), '36.3', 'EVBUM2684, opening page');
  });

  test('65 W in the 70 cm³ of the title are 0.929 W/cm³ and 15.2 W/in³ (EVB4)', () => {
    const { derived } = design('evb4-65w-2c');
    expectPrinted(known(derived.size.density) / 1e6, '0.929', 'EVB4, title');
    expectPrinted(known(derived.size.density) * CUBIC_INCH, '15.2', 'EVB4, title');
  });

  test('132 × 52 × 22 mm and 90 W are 151.008 cm³, 0.596 W/cm³ and 9.77 W/in³ (STEVAL-ISC002V1)', () => {
    const { size } = design('steval-isc002v1-90w').derived;
    expectPrinted(known(size.volume) * 1e6, '151.008', 'product page');
    expectPrinted(known(size.density) / 1e6, '0.596', 'product page');
    expectPrinted(known(size.density) * CUBIC_INCH, '9.77', 'product page');
  });

  test('size, two volumes and density of RD-29 agree, but 35.5 cm³ was cut off and not rounded', () => {
    const { entry, derived } = design('rd-29-65w-acf');
    const volume = known(derived.size.volume);
    expectPrinted(volume / CUBIC_INCH, '2.17', 'RD-29, opening page');
    expectPrinted(volume * 1e6, '35.554', '33.9 × 30.4 × 34.5 mm');
    expect(roundsTo(volume * 1e6, '35.5')).toBe(false);
    expect(Math.floor(volume * 1e7) / 10).toBe(35.5);
    expect(known(derived.size.density)).toBeGreaterThan(claimed(entry, 'power density'));
    expectPrinted(known(derived.size.density) / 1e6, '1.828', 'RD-29, 65 W');
  });

  test('DER-601 states more watts in the same inch with its enclosure than without: the two were exchanged', () => {
    const { entry } = design('der-601-60w');
    expect(claimed(entry, 'power density', { basis: 'cased' })).toBeGreaterThan(claimed(entry, 'power density', { basis: 'board' }));
  });
});

describe('losses at full load', () => {
  test.each([
    [90, '4.89'],
    [115, '4.15'],
    [230, '3.78'],
  ])('RD-29 at %i V loses %s W of 65 W out', (line, printed) => {
    const point = design('rd-29-65w-acf').entry.efficiency.find((candidate) => candidate.line?.quantity.nominal === line);
    expectPrinted(65 / (point?.efficiency?.quantity.nominal ?? 1) - 65, printed, 'RD-29, opening page');
  });
});

describe('bounds stay bounds', () => {
  test('above 88 % and below 0.5 W decide neither a limit of 89 % nor one of 0.15 W (STEVAL-ISC002V1)', () => {
    const { entry } = design('steval-isc002v1-90w');
    expect(entry.efficiency[0]?.efficiency?.quantity).toMatchObject({ bound: 'above', high: null });
    const [standby] = entry.measurements.filter((point) => point.subject === 'standby');
    expect(standby?.value.quantity).toMatchObject({ bound: 'below', low: null });
  });

  test('a Y capacitor that was left out is absent, and its leakage is a limit of 5 µA (RDR-159)', () => {
    const { entry } = design('rdr-159-2w4');
    expect(entry.parts.map((part) => [part.role, part.fitting])).toEqual([['y-capacitor', 'absent']]);
    const [leakage] = entry.measurements.filter((point) => point.subject === 'touch current');
    expect(leakage?.value.quantity).toMatchObject({ nominal: 5e-6, bound: 'below' });
  });

  test('efficiency at the end of the board says so (TPA1001C02)', () => {
    expect(design('tpa1001c02-100w').entry.efficiency[0]?.place).toBe('board');
  });
});
