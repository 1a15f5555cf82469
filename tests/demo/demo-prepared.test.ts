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

  test('beside each other they show one number with two ratings, in each sheet concerned, and the one that differs answers it', async () => {
    const { manifest } = await prepareIn(join(import.meta.dirname, '../../demo'), 'build');
    const found = Object.entries(manifest.findingsAcross).map(([slug, diagnostics]) => [
      slug,
      ...diagnostics.map(({ rule, subject, answer }) => `${rule} at ${subject ?? ''}${answer === null ? '' : ', answered'}`),
    ]);
    expect(found.sort()).toEqual([
      ['fennimoor-deskway-100', 'part-ratings-differ at Q9, Q10'],
      ['marlhythe-causeway-100', 'part-ratings-differ at Q9, Q10'],
      ['ostlewick-lantern-140', 'part-ratings-differ at Q12, Q13'],
      ['skelderby-trine-65', 'part-ratings-differ at Q5, Q6'],
      ['wendlestone-fairlead-92', 'part-ratings-differ at Q2, Q3, answered'],
    ]);
  });

  test('the fact sheet of a controller feeds the five sheets that use it, and its correction is listed on each', async () => {
    const { manifest } = await prepareIn(join(import.meta.dirname, '../../demo'), 'build');
    expect(manifest.partFacts.map(({ number }) => number)).toEqual(['VLR-27S']);
    const corrected = manifest.sheets.filter((sheet) => sheet.corrections.some(({ where }) => where.startsWith('VLR-27S, package')));
    expect(corrected.map(({ slug }) => slug).sort()).toEqual([
      'fennimoor-deskway-100',
      'marlhythe-causeway-100',
      'ostlewick-lantern-140',
      'skelderby-trine-65',
      'yarrowdene-stub-30',
    ]);
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
