import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formulaOf } from '../../src/formulas/index.ts';
import { COLLECTED } from './collected-examples.ts';
import { COVERED_DESIGN_NOTES } from './covered-design-notes.ts';
import { COVERED_STAGE_EXAMPLES } from './covered-stage-examples.ts';
import { LEFT_OUT } from './left-out-examples.ts';

const COVERED = [...COVERED_STAGE_EXAMPLES, ...COVERED_DESIGN_NOTES];
const ROOT = new URL('../../', import.meta.url);

function nameOf({ example, result }: { readonly example: string; readonly result: string }): string {
  return `${example}: ${result}`;
}

describe('every published example that was collected', () => {
  it('is reproduced or left out with a reason, each result once', () => {
    const collected = Object.entries(COLLECTED).flatMap(([example, results]) => results.map((result) => nameOf({ example, result })));
    expect([...COVERED, ...LEFT_OUT].map(nameOf).sort()).toEqual(collected.sort());
  });

  it.each(COVERED.map((one) => [nameOf(one), one] as const))('%s stands where the list says', (_, { by, printed }) => {
    if (by.endsWith('.test.ts')) {
      const file = new URL(by, ROOT);
      expect(existsSync(file)).toBe(true);
      expect(readFileSync(file, 'utf8')).toContain(printed);
      return;
    }
    expect(formulaOf(by)?.examples.map((example) => example.printed)).toContain(printed);
  });

  it('that is left out says why', () => {
    for (const { reason } of LEFT_OUT) expect(reason.length).toBeGreaterThan(20);
  });
});
