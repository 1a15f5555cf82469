import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { logsZone } from '../../src/render/logs.ts';
import { powerBank } from '../../src/tables/power-bank.ts';
import { sustainedPower } from '../../src/tables/sustained-power.ts';
import type { Cell, Table } from '../../src/tables/table.ts';
import { checkText } from '../checks/read-example.ts';
import { foldBackLog } from '../logs/a-log-summary.ts';

const TEXT =
  '---\ntitle: A bank\ndevice: { maker: Larkmoor, model: LM-B45, kind: power bank }\nnameplate: { capacity: 10000 mAh 3.6 V (36 Wh) }\nports: { C1: { connector: USB-C, power: 100 W, offers: 20 V 5 A } }\n---\n';

const { entry } = checkText('bank', TEXT);
if (entry === null) throw new Error('the entry of the test was not read');
const first = foldBackLog({ id: 'warm-up', note: 'half an hour' });
const second = foldBackLog({ id: 'discharge', note: 'full to empty' });
const derived = derive(entry, [first, second]);

function cellsNaming(table: Table | null, words: string): readonly Cell[] {
  const cells = table?.groups.flatMap(({ rows }) => rows).flatMap((row) => row.cells) ?? [];
  return cells.filter((cell) => cell.kind === 'text' && cell.text.includes(words));
}

describe('a figure that is from a log', () => {
  test('leads to the plot of that log, by its place among the logs of the sheet', () => {
    expect(cellsNaming(powerBank.build({ entry, derived }), 'log discharge')).toMatchObject([{ link: '#log-2' }]);
    const tested = sustainedPower.build({ entry, derived });
    expect(cellsNaming(tested, 'log warm-up')).toMatchObject([{ link: '#log-1' }]);
    expect(cellsNaming(tested, 'log discharge')).toMatchObject([{ link: '#log-2' }]);
  });

  test('meets the heading of that plot', () => {
    const sheet = { entry, derived, tables: [], placed: [], html: '', headings: [], diagnostics: [], photos: [] };
    const matter = logsZone(sheet)?.matter ?? '';
    for (const anchor of ['log-1', 'log-2']) expect(matter).toContain(`<h3 id="${anchor}">`);
  });
});
