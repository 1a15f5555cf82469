import { expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { logSteps } from '../../src/tables/log-steps.ts';
import { logs } from '../../src/tables/logs.ts';
import type { Table } from '../../src/tables/table.ts';
import { formatInterval } from '../../src/units/format.ts';
import { isMissing } from '../../src/values/value.ts';
import { entryWithPorts } from '../sharing/entry-with-ports.ts';
import { foldBackLog } from '../logs/a-log-summary.ts';

const entry = entryWithPorts([], null);
const derived = derive(entry, [foldBackLog()]);

function shown(table: Table | null): string[][] {
  return (table?.groups ?? []).flatMap(({ rows }) =>
    rows.map(({ cells }) =>
      cells.map((cell) => {
        if (cell.kind === 'none') return '';
        if (cell.kind !== 'value') return 'text' in cell ? cell.text : cell.reason;
        return isMissing(cell.value) ? cell.value.reason : formatInterval(cell.value, cell.value.dimension).text.replace('\u202F', ' ');
      }),
    ),
  );
}

test('the figures of a log: channels, peak and sustained power, when it dropped, energy and charge', () => {
  expect(shown(logs.build({ entry, derived }))).toEqual([
    ['Voltage, mean', '20.00 V', '20.00 V', '20.00 V'],
    ['Current, mean', '3.687 A', '3.250 A', '5.000 A'],
    ['Power, mean', '73.74 W', '65.00 W', '100.0 W'],
    ['Peak power, mean over ten seconds', '100.0 W', '', ''],
    ['Sustained power, last ten minutes under load', '65.00 W', '', ''],
    ['Fell below 95 % of the peak after', '10.0 min', '', ''],
    ['Time under load', '40.00 min', '', ''],
    // 100 W for 598 s, 2 s down to 65 W, 65 W for 1800 s: 176 965 J, which is 73.74 W over 2400 s.
    ['Energy', '49.16 Wh', '', ''],
    ['Charge', '2458 mAh', '', ''],
    ['First to last row', '40.00 min', '', ''],
  ]);
});

test('steps stand in the order of time, with the levels on both sides', () => {
  const rows = shown(logSteps.build({ entry, derived }));
  expect(rows.map(([at, quantity, before, after]) => [at?.replace('\u202F', ' '), quantity, before, after])).toEqual([
    ['10.00 min', 'voltage', '20.00 V', '20.00 V'],
    ['', 'current', '5.000 A', '3.250 A'],
    ['', 'power', '100.0 W', '65.00 W'],
  ]);
  expect(rows[1]?.at(-1)?.replace('\u202F', ' ')).toBe('within 2.0 s');
});

test('without logs there are no tables of them, and a value of each log can be quoted by name', () => {
  expect(logs.build({ entry, derived: derive(entry) })).toBeNull();
  expect(logSteps.build({ entry, derived: derive(entry) })).toBeNull();
  expect(derived.named['full-load.sustained-power']).toMatchObject({ nominal: 65, dimension: 'power' });
  expect(derived.named['full-load.dropped-after']).toMatchObject({ nominal: 600, dimension: 'time' });
});
