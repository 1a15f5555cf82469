import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { efficiencyLimits } from '../../src/tables/efficiency-limits.ts';
import { efficiencyMeans } from '../../src/tables/efficiency-means.ts';
import { efficiency } from '../../src/tables/efficiency.ts';
import type { Table } from '../../src/tables/table.ts';
import { checkText } from '../checks/read-example.ts';

function tables(run: string): readonly string[] {
  const text = `---\ntitle: A charger\ndevice: { maker: Larkmoor, model: LM-S65, kind: wall charger }\nnameplate: { input: 100-240 V~ 50/60 Hz 1.5 A, total: 65 W }\nports: { C1: { connector: USB-C, power: 65 W, offers: [5 V 3 A, 20 V 3.25 A] } }\nmeasurements: { efficiency: ${run} }\n---\n`;
  const { entry } = checkText('charger', text);
  if (entry === null) throw new Error('the entry of the test was not read');
  const derived = derive(entry);
  return [efficiencyMeans, efficiency, efficiencyLimits].map(({ build }) => words(build({ entry, derived })));
}

function words(table: Table | null): string {
  const cells = table?.groups.flatMap(({ rows }) => rows).flatMap((row) => row.cells) ?? [];
  return cells.flatMap((cell) => (cell.kind === 'text' ? [cell.text] : [])).join(' | ');
}

describe('an efficiency that nobody measured', () => {
  test.each([
    ['a display reports it', 'method: its own display, points: { 25 %: 90 %, 50 %: 92 %, 75 %: 92 %, 100 %: 91 % }'],
    ['it is printed on the case', 'average: 92 %, evidence: printed'],
  ])('says so in both tables and meets no limit: %s', (_, given) => {
    const [means, points, limits] = tables(`{ port: C1, line: 230 V, output: 20 V, at: connector, ${given} }`);
    expect(means).toContain('C1, not measured');
    expect(points).toContain('connector, reported or printed, not measured');
    expect(limits).toBe('');
  });

  test('one that was measured does not', () => {
    const [means, points] = tables('{ port: C1, line: 230 V, output: 20 V, at: connector, average: 92 % }');
    expect(`${means ?? ''} ${points ?? ''}`).not.toContain('not measured');
  });
});
