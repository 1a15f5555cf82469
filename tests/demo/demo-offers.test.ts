import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { OfferBody } from '../../src/usb-pd/offer.ts';
import { isMissing } from '../../src/values/value.ts';
import { bySlug, entriesIn } from './entries-in.ts';

const ENTRIES = entriesIn(join(import.meta.dirname, '../../demo/teardowns'));

/** Volts and amperes that an offer stands for, as a label would print them. */
function printed(offer: OfferBody): string {
  if (offer.kind === 'fixed' || offer.kind === 'plain') return `${String(offer.volts)} V ${String(offer.amps)} A`;
  if (offer.kind === 'PPS') return `${offer.kind} ${String(offer.minVolts)}–${String(offer.maxVolts)} V ${String(offer.amps)} A`;
  if (offer.kind === 'EPR AVS') return `${offer.kind} ${String(offer.minVolts)}–${String(offer.maxVolts)} V ${String(offer.watts)} W`;
  return offer.kind;
}

describe('words of a tester decode to what the label and the text of the sheet say', () => {
  // Bit layouts: USB Power Delivery Specification R3.2 V1.1, tables 6.9 to 6.15; words encoded by hand from them.
  test.each([
    ['yarrowdene-stub-30', 'C1', ['5 V 3 A', '9 V 3 A', '15 V 2 A', 'PPS 3.3–11 V 3 A', 'PPS 3.3–16 V 2 A']],
    ['skelderby-trine-65', 'C1', ['5 V 3 A', '9 V 3 A', '15 V 3 A', '20 V 3.25 A', 'PPS 3.3–21 V 3.25 A']],
    ['marlhythe-causeway-100', 'C1', ['5 V 3 A', '9 V 3 A', '15 V 3 A', '20 V 5 A', 'PPS 3.3–21 V 5 A']],
    ['marlhythe-causeway-100', 'C2', ['5 V 3 A', '9 V 3 A', '15 V 3 A', '20 V 5 A', 'PPS 3.3–21 V 5 A']],
    ['ostlewick-lantern-140', 'C1', ['5 V 3 A', '9 V 3 A', '15 V 3 A', '20 V 5 A', 'PPS 3.3–21 V 5 A', '28 V 5 A', 'EPR AVS 15–28 V 140 W']],
    ['wendlestone-fairlead-92', 'C2', ['5 V 3 A', '9 V 3 A']],
    ['crossgarth-bothy-45', 'C1', ['5 V 3 A', '9 V 3 A', '12 V 3 A', '15 V 3 A', 'PPS 3.3–16 V 3 A']],
    ['tillmere-nub-20', 'C1', ['5 V 3 A', '9 V 2.22 A']],
  ])('%s %s', (slug, id, stated) => {
    const port = bySlug(ENTRIES, slug).entry.ports.find((candidate) => candidate.id === id);
    expect(port?.offers.map(printed)).toEqual(stated);
    expect(port?.offers.every((offer) => offer.word !== null)).toBe(true);
  });
});

describe('a port offers what its rated power needs', () => {
  // Fixed supplies by rated power: USB Power Delivery Specification R3.2 V1.1, table 10.2; 28 V: table 10.12.
  const ladder = [5, 9, 15, 20];
  const steps = [15, 27, 45, 100];
  const sources = ENTRIES.flatMap(({ slug, entry }) =>
    entry.ports.filter((port) => port.connector === 'USB-C').map((port) => ({ slug, port, watts: port.power?.quantity.nominal ?? 0 })),
  );

  test.each(sources)('$slug $port.id: every voltage up to its power, with the current that the power allows', ({ port, watts }) => {
    const top = steps.findIndex((limit) => Math.min(watts, 100) <= limit);
    for (const [place, volts] of ladder.slice(0, top + 1).entries()) {
      const offer = port.offers.find((candidate) => candidate.kind === 'fixed' && candidate.volts === volts);
      const needed = place < top ? 3 : Math.min(Math.min(watts, 100) / volts, 5);
      // Rounded up or down to the 10 mA of the field: section 10.2, p. 995.
      expect(offer?.kind === 'fixed' ? offer.amps : 0, `${String(volts)} V`).toBeGreaterThanOrEqual(needed - 0.01);
    }
  });
});

describe('what is shared stays within the total', () => {
  const sets = ENTRIES.flatMap(({ slug, derived }) => {
    const rated = isMissing(derived.ratedPower) ? Number.NaN : derived.ratedPower.nominal;
    return (derived.shares?.rows ?? []).flatMap((row) => (row.sum === null ? [] : [{ slug, key: row.key, sum: row.sum.nominal, rated }]));
  });

  test('one set of the whole bench gives more than its label, and it is the one that the sheet is about', () => {
    expect(sets.length).toBe(58);
    expect(sets.filter(({ sum, rated }) => !(sum <= rated * 1.01))).toEqual([
      { slug: 'fennimoor-deskway-100', key: 'C1 + A1', sum: 103, rated: 100 },
      { slug: 'fennimoor-deskway-100', key: 'C2 + A1', sum: 103, rated: 100 },
    ]);
  });

  test('one sheet has sets that nobody measured, and says which', () => {
    const open = ENTRIES.filter(({ derived }) => (derived.shares?.counts.missing ?? 0) > 0);
    expect(open.map(({ slug }) => slug)).toEqual(['ostlewick-lantern-140']);
    expect(bySlug(ENTRIES, 'ostlewick-lantern-140').derived.shares?.rows.filter((row) => row.standing === 'missing').map((row) => row.key)).toEqual([
      'C1 + C3 + A1',
      'C2 + C3 + A1',
    ]);
  });

  test('the car charger keeps both maxima at once', () => {
    const { entry, derived } = bySlug(ENTRIES, 'wendlestone-fairlead-92');
    expect(entry.sharing?.policy).toBe('assured');
    expect(derived.shares?.rows.find((row) => row.key === 'C1 + C2')?.sum?.nominal).toBe(92);
  });
});
