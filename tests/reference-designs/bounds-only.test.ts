import { describe, expect, test } from 'vitest';
import { isMissing } from '../../src/values/value.ts';
import { claimed, design, known } from './designs.ts';
import { operatingValue } from './modelled.ts';
import { expectPrinted } from './prints-as.ts';

// STMicroelectronics, STEVAL-ISC002V1 product page. The application notes beside it were readable at their opening alone: no bus, no
// turns, no tank, no part, so that there is no stress, gain or sense limit of the document to compare.
describe('the 90 W notebook adapter, known by bounds', () => {
  const { entry, derived } = design('steval-isc002v1-90w');

  test('19 V and 4.74 A are the 90 W of its title within 0.1 %', () => {
    expectPrinted(19 * 4.74, '90.06', 'product page');
    expect(known(derived.ratedPower)).toBe(90);
  });

  test('264 V crest at 373.4 V, below the bus that a PFC is taken to have', () => {
    expectPrinted(known(derived.input.peak), '373.4', 'product page: 264 VAC');
    if (isMissing(derived.bulk.voltage)) throw new Error('no bus');
    expect(derived.bulk.voltage.low).toBeGreaterThan(known(derived.input.peak));
  });

  test('above 88 % it draws less than 102.3 W, 1.14 A of 90 V in phase; what is worked out without that row holds it', () => {
    const least = entry.efficiency[0]?.efficiency?.quantity.nominal ?? Number.NaN;
    expectPrinted(90 / least, '102.3', 'product page: above 88 %');
    const { inputCurrent } = derived.input;
    if (isMissing(inputCurrent)) throw new Error(inputCurrent.reason);
    const inPhase = 90 / least / 90;
    expect(inputCurrent.low < inPhase && inPhase < inputCurrent.high, `${String(inputCurrent.low)} to ${String(inputCurrent.high)} A`).toBe(
      true,
    );
    // Critical conduction at the lowest line: twice the crest of the line current.
    const peak = operatingValue(derived, 'pfc', 'peak current of the PFC inductor');
    const bound = 2 * Math.SQRT2 * inPhase;
    expect(peak.low < bound && bound < peak.high).toBe(true);
  });

  test('bounds decide nothing: no rule says that it meets or misses', () => {
    expect(derived.efficiency.judgements.filter(({ verdict }) => verdict !== 'undecided')).toEqual([]);
    const [standby] = derived.efficiency.noLoad;
    expect([standby?.line, standby?.span?.high]).toEqual([264, 0.5]);
  });

  test('its latch above 29 V stays a bound; nothing of its resonant tank is made up', () => {
    expect(claimed(entry, 'over-voltage latch')).toBe(29);
    const main = derived.operating.filter(({ stage }) => stage === 'main');
    expect(main.filter(({ name }) => /reson|gain|turns|quality|primary/u.test(name)).every(({ value }) => isMissing(value))).toBe(true);
    expect([derived.stress, derived.gainCurves]).toEqual([[], []]);
  });
});

// STMicroelectronics, STEVAL-USBPD45C product page: the number of its four-point average is cut off there, and no part is named.
describe('the 45 W supply on two boards, known by its features', () => {
  const { entry, derived } = design('steval-usbpd45c');

  test('15, 27 and 45 W: the rating is reached at 15 V alone', () => {
    expect(entry.ports[0]?.offers.map((offer) => (offer.kind === 'fixed' ? offer.volts * offer.amps : null))).toEqual([15, 27, 45]);
    expect(known(derived.ratedPower)).toBe(45);
  });

  test('264 V charge its bulk capacitor to 373.4 V; 90 V draw 0.75 to 1.18 A, a power factor of 0.5 to 0.7 assumed', () => {
    expectPrinted(known(derived.bulk.voltage), '373.4', 'product page: 264 VAC');
    const { inputCurrent } = derived.input;
    if (isMissing(inputCurrent)) throw new Error(inputCurrent.reason);
    expectPrinted(inputCurrent.low, '0.75', '45 W, 95 %, 0.7, 90 V');
    expectPrinted(inputCurrent.high, '1.18', '45 W, 85 %, 0.5, 90 V');
  });

  test('each operating value of its flyback is missing with what it takes', () => {
    const needs = derived.operating.flatMap(({ value }) => (isMissing(value) ? [value.needs] : [[]]));
    expect(needs.length).toBeGreaterThan(3);
    for (const one of needs) expect(one.some((need) => need === 'turns of main' || need === 'bulk capacitor')).toBe(true);
  });

  test('no efficiency is on record, so no rule is asked', () => {
    expect(derived.efficiency.judgements).toEqual([]);
  });
});
