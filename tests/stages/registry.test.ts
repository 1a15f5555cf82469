import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { roleOf } from '../../src/roles/index.ts';
import { findStage, STAGES, stageOf } from '../../src/stages/index.ts';
import { COMMON_ROLES } from '../../src/stages/common-roles.ts';

const NO_STAGES = [
  'index.ts',
  'stage-kind.ts',
  'stage-parameters.ts',
  'common-roles.ts',
  'one-inductor-converter.ts',
  'isolated-converter.ts',
  'mains-side.ts',
];

describe('the registry of topology blocks', () => {
  it('lists every block file in its folder and no other', () => {
    const files = readdirSync('src/stages').filter((file) => file.endsWith('.ts') && !NO_STAGES.includes(file));
    expect(STAGES.map((stage) => `${stage.kind}.ts`).sort()).toEqual(files.sort());
  });

  it('gives each name and synonym to one block only', () => {
    const names = STAGES.flatMap((stage) => [stage.name, ...stage.alsoCalled].map((name) => name.toLowerCase().replaceAll('-', ' ')));
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
  });

  it('gives a parameter key one dimension in all blocks', () => {
    const dimensions = new Map<string, string>();
    for (const { key, dimension } of STAGES.flatMap((stage) => stage.parameters)) {
      expect(dimensions.get(key) ?? dimension).toBe(dimension);
      dimensions.set(key, dimension);
    }
  });

  it.each(STAGES.map((stage) => [stage.name, stage] as const))(
    '%s holds known roles, and its short words mean roles that it holds',
    (_, stage) => {
      for (const id of stage.roles) expect(roleOf(id), id).not.toBeNull();
      for (const [short, id] of Object.entries(stage.shortRoles)) expect(stage.roles, short).toContain(id);
      expect(new Set(stage.roles).size).toBe(stage.roles.length);
    },
  );

  it('lets every block hold the common roles', () => {
    for (const id of COMMON_ROLES) expect(roleOf(id), id).not.toBeNull();
  });
});

describe('what a short role word means depends on its block', () => {
  it.each([
    ['boost-pfc', 'pfc-switch'],
    ['flyback', 'primary-switch'],
    ['llc-half-bridge', 'primary-switch'],
    ['buck', 'buck-switch'],
    ['secondary-rectifier', 'synchronous-rectifier'],
  ])('the switch of a %s is its %s', (kind, role) => {
    expect(stageOf(kind)?.shortRoles['switch']).toBe(role);
  });
});

describe('finding a block by the words of the trade', () => {
  it.each([
    ['PFC', 'boost-pfc'],
    ['LLC', 'llc-half-bridge'],
    ['LLC half-bridge', 'llc-half-bridge'],
    ['ACF', 'active-clamp-flyback'],
    ['QR flyback', 'flyback'],
    ['H-bridge buck-boost', 'buck-boost'],
    ['rectifier', 'rectifier'],
  ])('%s is %s', (words, kind) => {
    expect(findStage(words)?.kind).toBe(kind);
  });
});
