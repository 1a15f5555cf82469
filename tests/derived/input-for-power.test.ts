import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { Entry } from '../../src/entry/entry.ts';
import { isMissing, type Known } from '../../src/values/value.ts';
import { anEntry, fact, part, portWith, quantity, stage, supply } from './an-entry.ts';

/** A car charger of 140 W whose power depends on the input: 100 W from 12 V, 140 W from 20 V. */
function charger(input: string, steps: readonly (readonly [from: string, power: string])[]): Entry {
  const entry = anEntry(supply('DC', input, null), [portWith('C1', [5, 3], [20, 5], [28, 5])], {
    stages: [
      stage(
        'main',
        'buck-boost',
        { L: fact('10 µH', 'inductance', 'l'), frequency: fact('250 kHz', 'frequency', 'f'), efficiency: fact('100 %', 'ratio', 'e') },
        { feeds: ['C1'] },
      ),
    ],
    parts: [part('L1', 'inductor', 'main', '10 µH 15 A')],
  });
  const totalAtInput = steps.map(([from, power]) => ({ from: quantity(from, 'voltage'), power: quantity(power, 'power') }));
  return { ...entry, nameplate: { ...entry.nameplate, totalAtInput } };
}

const STEPS = [
  ['12 V', '100 W'],
  ['20 V', '140 W'],
] as const;

function peak(entry: Entry): Known {
  const row = derive(entry).stress.find(({ references }) => references.includes('L1'));
  if (row === undefined) throw new Error('no row');
  return row.stress;
}

function amps(known: Known): number {
  if (isMissing(known)) throw new Error(known.reason);
  return known.nominal;
}

describe('a power that depends on the input', () => {
  it('meets its own lowest input: 100 W from 12 V is the corner, and 140 W from 20 V none beyond it', () => {
    // 100 W / 12 V and half of 12 V (1 − 12/20) / (10 µH · 250 kHz); 140 W would be 7 A from 20 V.
    expect(Math.abs(amps(peak(charger('12-24 V', STEPS))) - (100 / 12 + 0.96))).toBeLessThan(1e-9);
  });

  it('without steps the whole power meets the lowest input', () => {
    expect(Math.abs(amps(peak(charger('12-24 V', []))) - (140 / 12 + (12 * (1 - 12 / 28)) / 5))).toBeLessThan(1e-9);
  });

  it('is missing where the input goes below the first step, and asks for what is given there', () => {
    expect(peak(charger('5-24 V', STEPS))).toMatchObject({ missing: true, needs: ['output power below 12 V'] });
  });

  it('is missing for an output beyond every step', () => {
    expect(peak(charger('12-24 V', [['12 V', '100 W']]))).toMatchObject({ missing: true, needs: ['output power over the input'] });
  });
});
