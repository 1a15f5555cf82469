import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { parseFrontmatter } from '../../src/entry/parse-frontmatter.ts';
import { readEntry } from '../../src/entry/read-entry.ts';
import { buildTables } from '../../src/tables/build-tables.ts';
import { TABLES } from '../../src/tables/index.ts';
import { numberInUnit } from '../../src/tables/number-in-unit.ts';
import { tableCsv } from '../../src/tables/table-csv.ts';
import type { Cell, Row, Table } from '../../src/tables/table.ts';
import { isMissing } from '../../src/values/value.ts';
import { foldBackLog } from '../logs/a-log-summary.ts';

const { data } = parseFrontmatter(readFileSync(new URL('sketch.md', import.meta.url), 'utf8'));
const { entry, findings } = readEntry({ slug: 'lm-q100', file: 'teardowns/lm-q100/index.md', frontmatter: data });
if (entry === null) throw new Error(JSON.stringify(findings));
const input = { entry, derived: derive(entry, [foldBackLog()]) };
const tables = buildTables(input);

function table(id: string): Table {
  const found = tables.find((candidate) => candidate.id === id);
  if (found === undefined) throw new Error(`no table ${id}`);
  return found;
}

function row(id: string, rowId: string): Row {
  const found = table(id)
    .groups.flatMap((group) => group.rows)
    .find((candidate) => candidate.id === rowId);
  if (found === undefined) throw new Error(`no row ${rowId} in ${id}`);
  return found;
}

function shown(cell: Cell | undefined): string | number | null {
  if (cell === undefined || cell.kind === 'none') return null;
  if (cell.kind === 'text' || cell.kind === 'mark') return cell.text;
  if (cell.kind === 'missing') return `– ${cell.reason}`;
  return isMissing(cell.value) ? `– ${cell.value.reason}` : cell.value.nominal;
}

const cellsOf = (id: string, rowId: string): (string | number | null)[] => row(id, rowId).cells.map(shown);

describe('the port-share table', () => {
  test('says first how many sets are known, implied and not known', () => {
    expect(table('port-share').caption).toBe(
      '15 sets of 4 ports: 8 known, 3 implied, 4 not known. Power that each port gets with these ports in use.',
    );
  });

  test('groups the sets by how many ports are in use', () => {
    expect(table('port-share').groups.map((group) => [group.title, group.rows.length])).toEqual([
      ['1 port in use', 4],
      ['2 ports in use', 6],
      ['3 ports in use', 4],
      ['4 ports in use', 1],
    ]);
  });

  test('has a share, a short rule outside the set, the sum, what is unused, and the evidence', () => {
    expect(cellsOf('port-share', 'c1-c3')).toEqual(['C1 + C3', 65, null, 30, null, 95, 5, 'printed']);
    expect(cellsOf('port-share', 'c2-c3')).toEqual(['C2 + C3', null, 65, 30, null, 95, 5, 'implied by C1 + C3 (printed)']);
    expect(cellsOf('port-share', 'c1')).toEqual(['C1', 100, null, null, null, 100, 0, 'measured']);
  });

  test('names the pool in each of its cells and counts it once', () => {
    const cells = row('port-share', 'c3-a1').cells;
    expect(cells.map((cell) => (cell.kind === 'value' ? (cell.suffix ?? null) : null))).toEqual([
      null,
      null,
      null,
      'shared with A1',
      'shared with C3',
      null,
      null,
      null,
    ]);
    expect(cellsOf('port-share', 'c3-a1').slice(5, 7)).toEqual([15, 85]);
  });

  test('draws filled bars for measured, open for printed and dashed for implied shares, on one scale', () => {
    const bar = (rowId: string, column: number): unknown => {
      const cell = row('port-share', rowId).cells[column];
      return cell?.kind === 'value' ? cell.bar : null;
    };
    expect(bar('c1', 1)).toEqual({ fraction: 1, tick: 1, style: 'filled' });
    expect(bar('c1-c3', 3)).toEqual({ fraction: 0.3, tick: 0.3, style: 'open' });
    expect(bar('c2-c3', 2)).toEqual({ fraction: 0.65, tick: 1, style: 'dashed' });
  });

  test('says which sets to measure next', () => {
    expect(table('port-share').notes).toContain('Measure next: C1 + C2 + A1; C1 + C3 + A1 (settles C2 + C3 + A1 too); C1 + C2 + C3 + A1.');
    expect(cellsOf('port-share', 'c1-c2-a1')).toEqual([
      'C1 + C2 + A1',
      '– not known, measure next',
      '– not known, measure next',
      null,
      '– not known, measure next',
      '– not known',
      '– not known',
      'not known',
    ]);
  });

  test('as a file has the units in its head', () => {
    const [head, , , third] = tableCsv(table('port-share')).split('\r\n');
    expect(head).toBe('Group,In use,C1 (W),C2 (W),C3 (W),A1 (W),Sum (W),Unused (W),Evidence');
    expect(third).toBe('1 port in use,C3,,,30,,30,70,printed');
  });
});

describe('the other tables', () => {
  test('how far each port can fall', () => {
    expect(cellsOf('port-falls', 'c1')).toEqual(['C1', 100, 100, 45]);
    expect(cellsOf('port-falls', 'a1')).toEqual(['A1', 18, 18, 15]);
    expect(table('port-falls').notes).toEqual(['4 sets not known: a port may fall further in those.']);
  });

  test('offers by port: a range keeps both ends', () => {
    expect(cellsOf('offers', 'c1-5')).toEqual(['3.3–21 V 5 A', 'PPS', '3.3–21', 5, '16.5–105']);
    expect(cellsOf('offers', 'c1-4')).toEqual(['20 V 5 A', 'fixed', 20, 5, 100]);
  });

  // Size and density of 68 × 52 × 29 mm: 102.5 cm³ (field value), so 100 W are 0.975 W/cm³, 15.98 W/in³.
  test('size and density, in both units', () => {
    const [, volume] = cellsOf('size', 'volume');
    expect(numberInUnit(Number(volume), 'volume', 'cm³')?.toFixed(1)).toBe('102.5');
    const density = row('size', 'density').cells[1];
    const inch = row('size', 'density-inch').cells[1];
    expect([density, inch].map((cell) => (cell?.kind === 'value' ? cell.unit : null))).toEqual(['W/cm³', 'W/in³']);
    expect(table('size').caption).toContain('cased, prongs folded');
  });

  test('parts by stage with the worst stress of each', () => {
    expect(table('parts').groups.map((group) => [group.title, group.glyph, group.rows.length])).toEqual([
      ['input', 'input-filter', 3],
      ['pfc', 'boost-pfc', 2],
      ['main', 'llc-half-bridge', 3],
    ]);
    const [reference, role, maker, number, body, rating, evidence] = cellsOf('parts', 'q1');
    expect([reference, role, maker, number, body, rating, evidence]).toEqual([
      'Q1',
      'PFC switch',
      'Ostrel',
      'OG7014',
      'DFN 8×8',
      '700 V, 140 mΩ',
      'marked',
    ]);
    expect(cellsOf('parts', 'c5').at(-1)).toBe('within 0.90');
  });

  test('parts counted by role', () => {
    expect(cellsOf('parts-by-role', 'output-capacitor')).toEqual(['output capacitor', '4', 'C21, C22']);
  });

  test('insulation and efficiency as measured', () => {
    expect(table('insulation').groups.map(({ title }) => title)).toEqual(['barrier: primary and secondary, reinforced, with a sheet']);
    const [distance, clearance] = cellsOf('insulation', 'barrier-air');
    expect(distance).toBe('Through air');
    expect(numberInUnit(Number(clearance), 'length', 'mm')).toBe(6.2);
    expect(table('efficiency').groups[0]?.rows).toHaveLength(2);
    expect(cellsOf('efficiency', 'point-1').slice(0, 3)).toEqual([0.25, 230, 20]);
  });

  test('several ports at once have the volts and amperes of each, and an efficiency that was worked out', () => {
    const [load, line, output, input, worked] = cellsOf('efficiency', 'point-6');
    expect([load, line, output, input]).toEqual(['1.25 A + 1.25 A', 230, '20.06 + 20.05', 54.6]);
    // (20.06 V + 20.05 V) × 1.25 A over 54.6 W.
    expect(Number(worked).toFixed(4)).toBe('0.9183');
  });

  test('how a voltage holds from load to load, and from the port to the end of its cable', () => {
    const [what, from, to, falls] = cellsOf('regulation', 'c1-at-20-v-load-1');
    expect([what, from, to]).toEqual(['C1 at 20 V, load, 230 V line, connector', '20.11 V (0.5 A)', '20.05 V (3 A)']);
    expect(Number(falls).toFixed(4)).toBe('0.0030');
    const [at, near, far, lost, implied, own, cable] = cellsOf('cable-ends', 'c1-at-20-v-3-a-1');
    expect([at, near, far, cable]).toEqual(['C1 at 20 V, 3 A', 20.05, 19.78, '1 m AWG 20']);
    expect([lost, implied, own].map((number) => Number(number).toFixed(3))).toEqual(['0.270', '0.090', '0.067']);
  });

  test('how each value was computed, linked to its formula', () => {
    const cells = row('computed', 'density').cells;
    expect(cells[2]).toEqual({ kind: 'text', text: 'power density from power, volume', link: '/methods/power-density/' });
    expect(shown(row('computed', 'stored-energy').cells[3])).toMatch(/yes|no/);
  });
});

describe('the registry of tables', () => {
  test('holds every file that declares a table, each id once', () => {
    const folder = new URL('../../src/tables/', import.meta.url);
    const declaring = readdirSync(folder)
      .filter((name) => name.endsWith('.ts') && readFileSync(new URL(name, folder), 'utf8').includes(': TableDeclaration = {'))
      .map((name) => name.replace(/\.ts$/, ''));
    expect(TABLES.map((declaration) => declaration.id).toSorted()).toEqual(declaring.toSorted());
  });

  test('builds tables whose rows have one cell a column, whose row ids are unique, and whose caption ends as a sentence', () => {
    expect(tables.map((built) => built.id)).toEqual(TABLES.map((declaration) => declaration.id));
    for (const built of tables) {
      const rows = built.groups.flatMap((group) => group.rows);
      expect(
        rows.every((one) => one.cells.length === built.columns.length),
        built.id,
      ).toBe(true);
      expect(new Set(rows.map((one) => one.id)).size, built.id).toBe(rows.length);
      expect(built.caption).toMatch(/\.$/);
      expect(JSON.stringify(built)).not.toMatch(/NaN|Infinity|undefined/);
    }
  });

  test('builds nothing from an entry without data', () => {
    const empty = readEntry({
      slug: 'x',
      file: 'x',
      frontmatter: { title: 'x', device: { maker: 'Ostrel', model: 'OX', kind: 'wall charger' } },
    }).entry;
    if (empty === null) throw new Error('a title and a device are an entry');
    expect(buildTables({ entry: empty, derived: derive(empty) })).toEqual([]);
  });
});
