import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { prepareIn } from '../pipeline/run-in.ts';

describe('the demo folder as a build sees it', () => {
  test('all eight sheets are published, and no name in their texts leads nowhere', async () => {
    const prepared = await prepareIn(join(import.meta.dirname, '../../demo'), 'build');
    expect(prepared.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(prepared.diagnostics.filter(({ rule }) => rule.startsWith('prose-')).map(({ message }) => message)).toEqual([]);
    expect(prepared.manifest.sheets.length).toBe(8);
  });

  test('their families cover flybacks, resonant stages, a vehicle input and a battery', async () => {
    const { manifest } = await prepareIn(join(import.meta.dirname, '../../demo'), 'build');
    const members = new Map<string, number>();
    for (const { family } of manifest.sheets) members.set(family, (members.get(family) ?? 0) + 1);
    expect(Object.fromEntries(members)).toEqual({
      'boost-pfc-llc-half-bridge': 3,
      flyback: 2,
      'active-clamp-flyback': 1,
      'buck-boost-buck': 1,
      'battery-pack-buck-boost': 1,
    });
  });
});
