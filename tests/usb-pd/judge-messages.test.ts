import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CAPABILITY_SETS } from './capability-sets.ts';
import { judged, message, said, wordsOf } from './judged.ts';

describe('flags', () => {
  it('behind the first object are noted once', () => {
    expect(message(wordsOf('set 8'), 'offer-flags')).toContain('unconstrained power (27)');
    expect(said(wordsOf('set 1'))).not.toContain('note offer-flags');
  });

  it('without a meaning are noted', () => {
    expect(message('0x0801912C 0xC1A421E4', 'offer-flags')).toContain('reserves');
  });
});

describe('outputs without USB PD', () => {
  it.each([
    ['Type-C 5V 3A', 'USB-C', []],
    ['Type-C 5V 2.4A', 'USB-C', ['note']],
    ['Type-C 9V 2A', 'USB-C', ['warning']],
    ['5V 1.5A BC 1.2', 'USB-A', []],
    ['5V 2.4A BC 1.2', 'USB-A', ['warning']],
    ['Type-C 9V 2A', 'USB-A', ['note']],
    ['Type-C 19V 4.74A', 'barrel', []],
  ] as const)('%s at %s', (text, connector, severities) => {
    expect(judged(text, { connector }).flatMap(({ rule, severity }) => (rule === 'plain-outputs' ? [severity] : []))).toEqual(severities);
  });
});

describe('messages of real sources draw what they deserve', () => {
  it.each([
    ['set 1', undefined, ['note optional-offers']],
    ['set 2', 100, ['note optional-offers', 'note pps-ranges']],
    ['set 3', 27, ['note optional-offers', 'note cable-of-offers']],
    ['set 4', 65, []],
    ['set 6', 140, ['note optional-offers']],
    ['set 8', 18, ['note optional-offers', 'note pps-ranges', 'note offer-flags']],
    ['set 9', 24, ['warning required-offers', 'note optional-offers', 'note pps-ranges', 'note pps-currents', 'note offer-flags']],
    ['set 12', 240, []],
    ['set 14', 18, []],
  ] as const)('%s at %s W', (id, watts, remarks) => {
    const known = watts === undefined ? {} : { watts };
    expect([...new Set(said(wordsOf(id), id === 'set 3' ? { ...known, cable: null } : known))]).toEqual(remarks);
  });

  it('none of them is an error', () => {
    for (const { words } of CAPABILITY_SETS) {
      const text = words.map((word) => `0x${word.toString(16).padStart(8, '0')}`).join(' ');
      expect(judged(text).filter(({ severity }) => severity === 'error')).toEqual([]);
    }
  });
});

describe('every remark', () => {
  it('names its source, and none from memory is an error', () => {
    for (const { words } of CAPABILITY_SETS) {
      for (const remark of judged(words.map((word) => `0x${word.toString(16).padStart(8, '0')}`).join(' '), {
        watts: 33,
        revision: '3.2',
        cable: null,
      })) {
        expect(remark.source.title).not.toBe('');
        expect(remark.message).toMatch(/\.$/);
        if (remark.source.standing === 'memory') expect(remark.severity).not.toBe('error');
      }
    }
  });
});

describe('any words at all', () => {
  it('are judged without a fault, in whole sentences', () => {
    const word = fc.integer({ min: 1, max: 0xefffffff });
    const known = fc.record({ watts: fc.integer({ min: 1, max: 300 }), revision: fc.constantFrom(null, '2.0', '3.0', '3.1', '3.2') });
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 12 }), known, (words, of) => {
        // A leading 5 V keeps the order of bytes out of question.
        const text = [0x0801912c, ...words].map((each) => `0x${each.toString(16).padStart(8, '0')}`).join(' ');
        for (const remark of judged(text, of)) {
          expect(remark.message).toMatch(/^[^a-z].*\.$/s);
          expect(remark.message).not.toMatch(/undefined|null|NaN|Infinity/);
        }
      }),
      { seed: 20260314, numRuns: 400 },
    );
  });
});
