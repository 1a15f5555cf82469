import { describe, expect, it } from 'vitest';
import { published } from './published.ts';

describe('agreement with a printed value', () => {
  it('allows half of the last printed digit', () => {
    expect(published(374.77, '375 V', 'voltage').agrees).toBe(true);
    expect(published(374.4, '375 V', 'voltage').agrees).toBe(false);
    expect(published(375.4, '375.0 V', 'voltage').agrees).toBe(false);
  });

  it('reads the prefix and the unit', () => {
    expect(published(0.05, '50.0 mJ', 'energy').agrees).toBe(true);
    expect(published(0.0502, '50.0 mJ', 'energy').agrees).toBe(false);
  });

  it('widens only by an allowance', () => {
    expect(published(654.94, '655.00 J', 'energy').agrees).toBe(false);
    expect(published(654.94, '655.00 J', 'energy', { fraction: 1e-4, reason: 'rounded' }).agrees).toBe(true);
  });
});
