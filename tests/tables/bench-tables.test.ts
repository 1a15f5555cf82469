import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { buildTables } from '../../src/tables/build-tables.ts';
import type { Cell, Table } from '../../src/tables/table.ts';
import { isMissing } from '../../src/values/value.ts';
import { checkText } from '../checks/read-example.ts';

function tableOf(id: string, frontmatter: string): Table {
  const { entry, reading } = checkText('bench', `---\ntitle: Invented\n${frontmatter.trim()}\n---\n`);
  if (entry === null) throw new Error(JSON.stringify(reading));
  const found = buildTables({ entry, derived: derive(entry) }).find((table) => table.id === id);
  if (found === undefined) throw new Error(`no table ${id}`);
  return found;
}

function shown(cell: Cell): string {
  if (cell.kind === 'none') return '';
  if (cell.kind === 'missing') return `– ${cell.reason}`;
  if (cell.kind !== 'value') return cell.text;
  return isMissing(cell.value) ? `– ${cell.value.reason}` : String(cell.value.nominal);
}

const rowsOf = (table: Table): readonly (readonly string[])[] =>
  table.groups.flatMap(({ rows }) => rows.map(({ cells }) => cells.map(shown)));

describe('power that lasts', () => {
  const device = `device: { maker: Larkmoor, model: LM-Q100, kind: desktop charger }
ports: { C1: { connector: USB-C, power: 100 W }, C2: { connector: USB-C, power: 30 W } }
sharing: { total: 100 W, allocations: { C1: 98 W measured, C2: 30 W printed } }`;

  test('listed, measured and sustained stand apart; what was not tested says so', () => {
    const table = tableOf(
      'sustained-power',
      `${device}\nmeasurements: { sustained power: [{ value: 98 W, after: 0 min, port: C1 }, { value: 64 W, after: 40 min, port: C1 }] }`,
    );
    expect(table.columns.map(({ head }) => head)).toEqual([
      'Port',
      'Listed',
      'Measured',
      'Sustained',
      'Dropped after',
      'Tested for',
      'From',
    ]);
    expect(rowsOf(table)).toEqual([
      ['C1', '100', '98', '64', '2400', '2400', 'points'],
      ['C2', '30', '– not tested', '– not tested', '', '', ''],
    ]);
    expect(table.notes.at(-1)).toBe('Air: air temperature not given.');
  });
});

describe('power taken while little is asked for', () => {
  test('a light load in a year is all that the mains gives, and no limit is said to look at it', () => {
    const table = tableOf(
      'no-load',
      `device: { maker: Larkmoor, model: LM-Q100, kind: desktop charger }
measurements: { standby: [{ value: 60 mW, line: 230 V }, { value: 0.25 W, line: 230 V, load: a keyboard at 0.1 W }] }`,
    );
    // 0.25 W × 8760 h = 2.19 kWh; 0.06 W × 8760 h = 0.5256 kWh; in joules 7 884 000 and 1 892 160.
    expect(rowsOf(table)).toEqual([
      ['nothing plugged in', '230', '0.06', '1892160'],
      ['a keyboard at 0.1 W', '230', '0.25', '7884000'],
    ]);
    expect(table.notes.join(' ')).toContain('No limit here looks at it.');
  });
});
