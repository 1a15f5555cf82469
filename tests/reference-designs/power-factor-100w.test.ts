import { describe, expect, test } from 'vitest';
import { isMissing } from '../../src/values/value.ts';
import { claimed, CUBIC_INCH, design, known, offeredWatts } from './designs.ts';
import { expectPrinted, roundsTo } from './prints-as.ts';

// Power Integrations, DER-937, revision 1.0, October 18, 2021, title page and Summary and Features.
const { entry, derived } = design('der-937-100w-pfc-qr');

function averageAt(volts: number, line: number): number {
  const found = entry.efficiency.find(
    (point) => point.statistic === 'average' && point.output?.quantity.nominal === volts && point.line?.quantity.nominal === line,
  );
  return (found?.efficiency?.quantity.nominal ?? Number.NaN) * 100;
}

function marginAt(volts: number, line: number): number {
  return claimed(entry, 'efficiency margin', { output: `${String(volts)} V`, line: `${String(line)} V` }) * 100;
}

describe('the 100 W design with PFC and flyback', () => {
  test('3.30 × 2.17 × 0.93 in and 100 W are 15.0 W/in³ without enclosure, as it states', () => {
    expectPrinted(known(derived.size.volume) / CUBIC_INCH, '6.6597', 'Summary and Features: size');
    expectPrinted(known(derived.size.density) * CUBIC_INCH, '15.0', 'Summary and Features: power density');
    expect(derived.size.basis).toContain('board');
  });

  test('its fixed offers are 25, 45, 60, 75 and 100 W', () => {
    expect(offeredWatts(entry, 'C1')).toEqual([25, 45, 60, 75, 100]);
  });

  test('its programmable range ends at 105 W and is power limited to 100 W', () => {
    const range = entry.ports[0]?.offers.find((offer) => offer.kind === 'PPS');
    if (range?.kind !== 'PPS') throw new Error('no programmable range');
    expect(range.maxVolts * range.amps).toBe(105);
    expect(range.powerLimited).toBe(true);
  });

  /** Average and margin are both printed to 0.01 points, so they may miss the limit by half of that each. */
  function followsFrom(volts: number, line: number, limit: number): boolean {
    return Math.abs(averageAt(volts, line) - marginAt(volts, line) - limit) <= 0.01 + 1e-9;
  }

  // CoC version 5 tier 2, average below 6 V: 0.0834 ln P − 0.0011 P + 0.609, supported by the identical row of (EU) 2025/2052 table 4.
  test('its 5 V margins sit on the limit for low voltages', () => {
    const limit = (0.0834 * Math.log(25) - 0.0011 * 25 + 0.609) * 100;
    expectPrinted(limit, '85.00', 'low voltage, 25 W');
    expect(followsFrom(5, 115, limit)).toBe(true);
    expect(followsFrom(5, 230, limit)).toBe(true);
  });

  // The same rules, ordinary voltage above 49 W: 0.89.
  test('its margin at 20 V and 115 V does not follow from its own average: 2.30 and not 2.20', () => {
    expect(followsFrom(20, 230, 89)).toBe(true);
    expect(followsFrom(20, 115, 89)).toBe(false);
    expect(roundsTo(averageAt(20, 115) - 89, '2.30')).toBe(true);
  });

  test('its no-load power stays a limit', () => {
    const [standby] = entry.measurements.filter((point) => point.subject === 'standby');
    expect(standby?.value.quantity.bound).toBe('below');
  });

  test('its bus is charged to the 374.8 V of 265 V at least, and no PFC bus is printed: 380 to 400 V are assumed and said to be', () => {
    expectPrinted(known(derived.input.peak), '374.8', 'Summary and Features: 265 VAC');
    if (isMissing(derived.bulk.voltage)) throw new Error('no bus');
    expect([derived.bulk.voltage.low, derived.bulk.voltage.high, derived.bulk.voltage.origin.evidence]).toEqual([380, 400, 'assumed']);
  });

  // The bill of material, the transformer and the waveforms were not readable: there is no stress to compare.
  test('of its flyback nothing is made up: without turns each operating value is missing and asks for them', () => {
    const figures = derived.operating.filter(({ stage }) => stage === 'main').map(({ value }) => value);
    expect(figures.length).toBeGreaterThan(3);
    for (const value of figures) expect(isMissing(value) && value.needs).toContain('turns of main');
    expect(derived.stress).toEqual([]);
  });

  test('its less than 40 mW without load meet the 150 mW of tier 2 and the 75 mW of (EU) 2025/2052', () => {
    const judged = derived.efficiency.judgements.filter(({ of }) => of === 'no load').map(({ rule, verdict }) => [rule, verdict]);
    expect(judged).toContainEqual(['code-of-conduct-tier-2', 'meets']);
    expect(judged).toContainEqual(['eu-2025-2052', 'meets']);
  });
});
