import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DERATING_POLICIES, DEFAULT_POLICY, policyOf } from '../../src/standards/derating/index.ts';
import { ruleFor } from '../../src/standards/derating/policy.ts';

const FOLDER = new URL('../../src/standards/derating/', import.meta.url);

function limit(
  policy: string,
  partClass: string,
  quantity: 'voltage' | 'current',
  more: { role?: string; technology?: string; rated?: number } = {},
): number | null {
  const { role = '', technology = null, rated } = more;
  const question = { partClass, role, technology, quantity };
  return ruleFor(policyOf(policy), rated === undefined ? question : { ...question, rated })?.limit ?? null;
}

describe('derating policies', () => {
  it('are all listed, each under the name of its file', () => {
    const files = readdirSync(FOLDER).filter((name) => !['index.ts', 'policy.ts'].includes(name));
    expect(DERATING_POLICIES.map((policy) => `${policy.id}.ts`).sort()).toEqual(files.sort());
  });

  it('accept no more than 110 % and give a source for every line', () => {
    for (const rule of DERATING_POLICIES.flatMap((policy) => policy.rules)) {
      expect(rule.limit).toBeGreaterThan(0);
      expect(rule.limit).toBeLessThanOrEqual(1.1);
      expect(rule.source.section).not.toBe('');
      if (rule.caution !== undefined) expect(rule.caution).toBeGreaterThan(rule.limit);
    }
  });

  it('hold a bulk capacitor to another line than other electrolytics', () => {
    expect(limit('consumer-practice', 'aluminium electrolytic', 'voltage', { role: 'bulk-capacitor' })).toBe(0.9);
    expect(limit('consumer-practice', 'aluminium electrolytic', 'voltage', { role: 'output-capacitor' })).toBe(0.8);
  });

  // MIL-DTL-917 table XIX; MIL-STD-975M appendix A 3.15 and 3.4; NASA EEE-INST-002 C1 table 4.
  it('give the published limits', () => {
    expect(limit('mil-dtl-917', 'transistor', 'voltage')).toBe(0.7);
    expect(limit('mil-std-975m', 'transistor', 'voltage')).toBe(0.75);
    expect(limit('mil-std-975m', 'rectifier', 'voltage')).toBe(0.7);
    expect(limit('nasa-eee-inst-002', 'ceramic capacitor', 'voltage')).toBe(0.6);
    expect(limit('rac-guideline', 'aluminium electrolytic', 'voltage')).toBe(0.8);
  });

  // MIL-STD-975M appendix A 3.9; EEE-INST-002 F1 has the same numbers.
  it.each([
    [3.15, 0.5],
    [2, 0.5],
    [1.5, 0.45],
    [0.75, 0.4],
    [0.375, 0.35],
    [0.25, 0.3],
    [0.125, 0.25],
  ])('let a fuse of %f A carry %f of it', (rated, share) => {
    for (const policy of ['mil-std-975m', 'nasa-eee-inst-002']) expect(limit(policy, 'fuse', 'current', { rated })).toBe(share);
  });

  it('say nothing about aluminium electrolytics in space', () => {
    expect(limit('nasa-eee-inst-002', 'aluminium electrolytic', 'voltage')).toBeNull();
  });

  it('fall back to the default where nobody ships the named one', () => {
    expect(policyOf('of the author')).toBe(DEFAULT_POLICY);
    expect(policyOf(null)).toBe(DEFAULT_POLICY);
  });
});
