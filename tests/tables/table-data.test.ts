import { describe, expect, test } from 'vitest';
import { numberInUnit, plainDecimal } from '../../src/tables/number-in-unit.ts';
import { tableCsv } from '../../src/tables/table-csv.ts';
import { tableJson } from '../../src/tables/table-json.ts';
import type { Cell, Table } from '../../src/tables/table.ts';
import type { Dimension } from '../../src/units/dimension.ts';
import type { Value } from '../../src/values/value.ts';

function printed<D extends Dimension>(dimension: D, nominal: number, significant: number): Value<D> {
  return {
    dimension,
    low: nominal,
    nominal,
    high: nominal,
    significant,
    origin: { evidence: 'printed', written: 'as printed', at: 'here' },
  };
}

function tableWith(cells: readonly Cell[], unit: string | null = 'W'): Table {
  return {
    id: 'a-table',
    title: 'A table',
    caption: 'One row.',
    columns: cells.map((_, index) => ({ id: `c${index}`, head: `Head ${index}`, unit: index === 0 ? null : unit, align: 'end' })),
    groups: [{ id: 'rows', title: null, glyph: null, rows: [{ id: 'row', cells }] }],
    notes: [],
  };
}

describe('a table as comma-separated values (RFC 4180)', () => {
  test('has units in the head, CR LF, and numbers with the digits they support', () => {
    const table = tableWith([
      { kind: 'text', text: 'C1' },
      { kind: 'value', value: printed('power', 37.5, 3) },
      { kind: 'value', value: printed('power', 100, 3) },
    ]);
    expect(tableCsv(table)).toBe('Head 0,Head 1 (W),Head 2 (W)\r\nC1,37.5,100\r\n');
  });

  test('quotes commas, quotation marks and line breaks, and nothing else', () => {
    const table = tableWith([
      { kind: 'text', text: 'Q2, Q3' },
      { kind: 'text', text: '2.9" × 2.9"' },
      { kind: 'text', text: 'a\nb' },
      { kind: 'text', text: '5 V⎓3 A' },
    ]);
    expect(tableCsv(table).split('\r\n')[1]).toBe('"Q2, Q3","2.9"" × 2.9""","a\nb",5 V⎓3 A');
  });

  test('tells a port outside the set from one that is not known, and says why', () => {
    const missing: Cell = { kind: 'value', value: { missing: true, reason: 'mass not given', needs: ['mass'] } };
    expect(tableCsv(tableWith([{ kind: 'none' }, { kind: 'missing', reason: 'measure next' }, missing])).split('\r\n')[1]).toBe(
      ',not known: measure next,not known: mass not given',
    );
  });

  test('gives numbers with units of their own a column for the unit', () => {
    const table = tableWith(
      [
        { kind: 'text', text: 'Volume' },
        { kind: 'value', value: printed('volume', 102.5e-6, 4), unit: 'cm³' },
      ],
      null,
    );
    expect(tableCsv(table)).toBe('Head 0,Head 1,Head 1 unit\r\nVolume,102.5,cm³\r\n');
  });

  test('says of a pool with whom it is shared', () => {
    const table = tableWith([
      { kind: 'text', text: 'C3 + A1' },
      { kind: 'value', value: printed('power', 15, 2), suffix: 'shared with A1' },
    ]);
    expect(tableCsv(table).split('\r\n')[1]).toBe('C3 + A1,15 shared with A1');
  });
});

describe('a table as JSON', () => {
  test('has SI numbers with interval, digits and evidence, and missing ones with the reason', () => {
    const table = tableWith([
      { kind: 'text', text: 'C1' },
      { kind: 'value', value: printed('power', 37.5, 3) },
      { kind: 'missing', reason: 'not known' },
      { kind: 'none' },
    ]);
    expect(JSON.parse(tableJson(table))).toMatchObject({
      rows: [
        {
          id: 'row',
          group: null,
          cells: {
            c0: 'C1',
            c1: { value: 37.5, low: 37.5, high: 37.5, unit: 'W', significant: 3, evidence: 'printed' },
            c2: { missing: 'not known' },
            c3: null,
          },
        },
      ],
    });
  });
});

describe('numbers in data files', () => {
  test('are in the unit of their column', () => {
    expect(numberInUnit(102.5e-6, 'volume', 'cm³')).toBe(102.5);
    expect(numberInUnit(0.068, 'length', 'mm')).toBe(68);
    expect(numberInUnit(2e6, 'resistance', 'kΩ')).toBe(2000);
    expect(numberInUnit(0.923, 'ratio', '%')).toBe(92.3);
    expect(numberInUnit(1, 'power', 'mm')).toBeNull();
  });

  test('have no exponent and the digits they support', () => {
    expect([
      plainDecimal(37.5, 3),
      plainDecimal(75, 3),
      plainDecimal(1600, 2),
      plainDecimal(0.0000047, 2),
      plainDecimal(99.96, 3),
      plainDecimal(0, 3),
    ]).toEqual(['37.5', '75.0', '1600', '0.0000047', '100', '0']);
    expect(plainDecimal(-12.34, 3)).toBe('-12.3');
    expect(plainDecimal(123456, 2)).toBe('120000');
  });
});
