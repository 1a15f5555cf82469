import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { SI_UNITS } from '../../src/units/dimension.ts';
import { findRole, ROLES, roleOf } from '../../src/roles/index.ts';

const NO_ROLES = ['index.ts', 'role.ts'];

describe('the registry of part roles', () => {
  it('lists every role file in its folder and no other', () => {
    const files = readdirSync('src/roles').filter((file) => !NO_ROLES.includes(file));
    expect(ROLES.map((role) => `${role.id}.ts`).sort()).toEqual(files.sort());
  });

  it('gives each name and synonym to one role only', () => {
    const names = ROLES.flatMap((role) => [role.name, ...role.alsoCalled].map((name) => name.toLowerCase().replaceAll('-', ' ')));
    const twice = names.filter((name, index) => names.indexOf(name) !== index);
    expect(twice).toEqual([]);
  });

  it.each(ROLES.map((role) => [role.name, role] as const))(
    '%s has spans in known dimensions with the low end below the high one',
    (_, role) => {
      for (const span of role.plausible) {
        expect(Object.keys(SI_UNITS)).toContain(span.dimension);
        expect(span.low).toBeLessThan(span.high);
        expect(role.rates).toContain(span.dimension);
        expect(span.reason.length).toBeGreaterThan(10);
      }
      if (role.bareNumber !== null) expect(role.rates).toContain(role.bareNumber);
    },
  );
});

describe('finding a role by the words of the trade', () => {
  it.each([
    ['fuse', 'input-fuse'],
    ['X capacitor', 'x-capacitor'],
    ['x-cap'.replace('-', ' '), 'x-capacitor'],
    ['Common mode choke', 'common-mode-choke'],
    ['SR MOSFET', 'synchronous-rectifier'],
    ['bulk-capacitor', 'bulk-capacitor'],
    ['PD controller', 'protocol-controller'],
  ])('%s is %s', (words, id) => {
    expect(findRole(words)?.id).toBe(id);
  });

  it('does not guess at words that nobody uses', () => {
    expect(findRole('flux capacitor')).toBeNull();
    expect(roleOf('flux-capacitor')).toBeNull();
  });

  it('puts an on-resistance in megohms outside of what a power switch can have', () => {
    const span = roleOf('primary-switch')?.plausible.find(({ dimension }) => dimension === 'resistance');
    expect(span?.low).toBe(1e-3);
    expect(span?.high).toBe(10);
  });
});
