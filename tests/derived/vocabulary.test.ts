import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PASSING_KINDS, PFC_KINDS } from '../../src/derived/stage-kinds.ts';
import { roleOf } from '../../src/roles/index.ts';
import { STAGE_PARAMETER_KEYS, stageOf } from '../../src/stages/index.ts';

const FOLDER = new URL('../../src/derived/', import.meta.url);

const SOURCE = readdirSync(FOLDER, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => readFileSync(new URL(name, FOLDER), 'utf8'))
  .join('\n');

function named(pattern: RegExp): string[] {
  return [...SOURCE.matchAll(pattern)].map((match) => match[1] ?? '');
}

describe('words that the derivation looks for are words that entries can use', () => {
  it('roles', () => {
    const roles = [
      ...named(/fittedParts\(entry, '([a-z-]+)'\)/g),
      'primary-switch',
      'clamp-switch',
      'synchronous-rectifier',
      'rectifier-diode',
    ];
    expect(roles.length).toBeGreaterThan(10);
    for (const role of roles) expect(roleOf(role), role).not.toBeNull();
  });

  it('kinds of stage', () => {
    const kinds = [...PFC_KINDS, ...PASSING_KINDS, ...named(/kind === '([a-z]+-[a-z-]+|rectifier)'/g)];
    for (const kind of kinds) expect(stageOf(kind), kind).not.toBeNull();
  });

  it('parameters of stages', () => {
    const keys = named(/parameters\['([^']+)'\]/g);
    expect(keys).toContain('bus');
    for (const key of keys) expect(STAGE_PARAMETER_KEYS, key).toContain(key);
  });
});
