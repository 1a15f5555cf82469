import { describe, expect, it } from 'vitest';
import { capacitorBank } from '../../src/derived/capacitor-bank.ts';
import { ratingOf } from '../../src/derived/part-rating.ts';
import { missing } from '../../src/values/missing.ts';
import { isMissing, type Known } from '../../src/values/value.ts';
import { part } from './an-entry.ts';

const bankOf = (rating: string): Known<'capacitance'> =>
  capacitorBank([part('C5', 'bulk-capacitor', 'main', rating)], (each) => ratingOf(each, 'capacitance'), 'bulk capacitance');

describe('pieces of one key', () => {
  it('are computed up to 64, each counted', () => {
    const bank = bankOf('64 × 1 µF 400 V');
    expect(isMissing(bank) ? bank : bank.nominal.toPrecision(6)).toBe('0.0000640000');
  });

  it('are no number that anything is computed from beyond that, and what is missing says why', () => {
    expect(bankOf('65 × 1 µF 400 V')).toEqual(missing('65 pieces of C5 are more than an adapter holds', ['count of C5']));
  });
});
