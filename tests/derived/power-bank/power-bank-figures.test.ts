import { describe, expect, test } from 'vitest';
import { derive } from '../../../src/derived/derive.ts';
import type { PowerBankFigures } from '../../../src/derived/power-bank/power-bank-figures.ts';
import { travelWords } from '../../../src/derived/power-bank/travel-words.ts';
import { isMissing, type Known } from '../../../src/values/value.ts';
import { checkText } from '../../checks/read-example.ts';

function bank(nameplate: string, more = ''): PowerBankFigures {
  const text = `---\ntitle: A bank\ndevice: { maker: Ostrel, model: OB-45, kind: power bank }\nnameplate: ${nameplate}\n${more}\n---\n`;
  const { entry, reading } = checkText('bank', text);
  if (entry === null) throw new Error(JSON.stringify(reading));
  const figures = derive(entry).bank;
  if (figures === null) throw new Error('no figures');
  return figures;
}

function wattHours(known: Known<'energy'>): string {
  return isMissing(known) ? known.reason : (known.nominal / 3600).toFixed(2);
}

function percent(known: Known<'ratio'> | undefined): string {
  return known === undefined || isMissing(known) ? 'missing' : (known.nominal * 100).toFixed(1);
}

describe('energy in and out', () => {
  // Notes on official power-bank figures, public listing: 37 Wh and 27.5 Wh = 74.3 %; 74 Wh and 65 Wh = 87.8 %.
  test.each([
    ['10000 mAh 3.7 V', '5500 mAh 5 V', '37.00', '27.50', '74.3'],
    ['20000 mAh 3.7 V', '13000 mAh 5 V', '74.00', '65.00', '87.8'],
  ])('%s with %s rated: %s Wh, %s Wh, %s %%', (capacity, output, cells, rated, ratio) => {
    const figures = bank(`{ capacity: ${capacity}, output capacity: ${output} }`);
    expect([wattHours(figures.stored), wattHours(figures.rated.energy), percent(figures.rated.ratio)]).toEqual([cells, rated, ratio]);
  });

  test('6000 mAh at 5 V of 10 000 mAh at 3.7 V are 81.1 % of the energy, not 60 % of the charge', () => {
    const { delivered } = bank('{ capacity: 10000 mAh 3.7 V }', 'measurements: { delivered energy: { 5 V: 6000 mAh } }');
    expect(percent(delivered[0]?.ratio)).toBe('81.1');
  });

  test('a charge without its voltage is no energy', () => {
    const { delivered } = bank('{ capacity: 10000 mAh 3.7 V }', 'measurements: { delivered energy: 6000 mAh }');
    expect(delivered[0]?.energy).toMatchObject({ missing: true, reason: 'output voltage not given' });
  });

  test('cells count by number, nominal voltage and charge, in series as in parallel, with their interval', () => {
    const cells = (rating: string, arrangement: string): Known<'energy'> =>
      bank(
        '{}',
        `stages: { pack: battery pack }\nparts: { pack: { "B1, B2": { role: cell, rating: ${rating}, arrangement: ${arrangement} } } }`,
      ).cellEnergy;
    expect(wattHours(cells('3.6 V 5000 mAh', 'series'))).toBe('36.00');
    expect(wattHours(cells('3.6 V 5000 mAh', 'parallel'))).toBe('36.00');
    const spread = cells('3.6 V ± 0.1 V 5000 mAh', 'series');
    expect(isMissing(spread) ? [] : [spread.low, spread.high].map((joules) => (joules / 3600).toFixed(0))).toEqual(['35', '37']);
  });

  test('what is taken in stands beside what comes back', () => {
    const { recharge } = bank(
      '{ capacity: 10000 mAh 3.6 V }',
      'measurements: { delivered energy: { 5 V: 30.9 Wh }, recharge energy: { 9 V: 42.0 Wh }, recharge time: { 9 V: 105 min } }',
    );
    expect(
      recharge.map(({ input, energy, time, roundTrip }) => [
        input,
        wattHours(energy),
        isMissing(time) ? 0 : time.nominal / 60,
        percent(roundTrip),
      ]),
    ).toEqual([['9 V', '42.00', 105, '73.6']]);
  });
});

describe('on a plane', () => {
  // 49 CFR 175.10(a)(18)(ii): 100 Wh, 160 Wh with approval. 27 027 mAh at 3.7 V are 100 Wh.
  test.each([
    ['20000 mAh 3.7 V', 'free'],
    ['27027 mAh 3.7 V', 'free'],
    ['30000 mAh 3.7 V', 'with approval'],
    ['50000 mAh 3.7 V', 'not carried'],
    ['20000 mAh', 'not known'],
  ])('%s: %s', (capacity, verdict) => {
    expect(bank(`{ capacity: ${capacity} }`).travel.verdict).toBe(verdict);
  });

  test('74 Wh: up to 100 Wh, with the rule, its standing and whom to ask; without a voltage not known', () => {
    expect(travelWords(bank('{ capacity: 20000 mAh 3.7 V (74 Wh) }'))).toBe(
      'On a plane: 74 Wh, up to 100 Wh: in the cabin without asking; never in checked baggage (49 CFR 175.10(a)(18), read); check with the carrier.',
    );
    expect(travelWords(bank('{ capacity: 20000 mAh }'))).toBe(
      'On a plane: not known, the energy of the cells is missing (limits 100 and 160 Wh); check with the carrier.',
    );
  });
});
