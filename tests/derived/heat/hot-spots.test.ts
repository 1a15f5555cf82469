import { describe, expect, test } from 'vitest';
import { derive } from '../../../src/derived/derive.ts';
import type { HotSpot } from '../../../src/derived/heat/heat-figures.ts';
import { heat } from '../../../src/tables/heat.ts';
import type { Table } from '../../../src/tables/table.ts';
import { isMissing } from '../../../src/values/value.ts';
import { checkText } from '../../checks/read-example.ts';

function sheet(
  measured: string,
  more = 'body: { size: 41 × 34 × 30 mm, material: PC }',
  kind = 'wall charger',
): { spots: readonly HotSpot[]; table: Table } {
  const text = `---\ntitle: A charger\ndevice: { maker: Larkmoor, model: LM-S30, kind: ${kind} }\n${more}\nmeasurements: { thermal: ${measured} }\n---\n`;
  const { entry, reading } = checkText('charger', text);
  if (entry === null) throw new Error(JSON.stringify(reading));
  const derived = derive(entry);
  const table = heat.build({ entry, derived });
  if (table === null) throw new Error('no table');
  return { spots: derived.heat.spots, table };
}

const heads = (table: Table): readonly string[] => table.columns.map(({ head }) => head);

describe('a temperature and its air', () => {
  test('71 °C in air of 24 °C is a rise of 47 K', () => {
    const { spots, table } = sheet('[{ value: 71 °C, place: case top, ambient: 24 °C, load: 100 %, after: 60 min }]');
    const rise = spots[0]?.rise;
    expect(rise === undefined || isMissing(rise) ? null : rise.nominal).toBe(47);
    expect(spots[0]?.conditions).toBe('100 %, after 60 min');
    expect(table.caption).toBe('71 °C at the hottest place, case top: 47 K over the air. An indication, not a compliance verdict.');
  });

  test('without the air temperature there is no rise, and the sheet says why', () => {
    const { spots, table } = sheet('{ case top: 71 °C }');
    expect(spots[0]?.rise).toMatchObject({ missing: true, reason: 'air temperature not given' });
    expect(table.caption).toContain('no rise, because the air temperature is not given');
    expect(heads(table)).not.toContain('Rise');
    expect(table.notes).toContain('Air, rise: air temperature not given.');
  });

  test('columns without anything in them are left out', () => {
    const { table } = sheet('[{ value: 71 °C, place: Q1, ambient: 24 °C }]');
    expect(heads(table)).toEqual(['Place', 'Measured', 'Air', 'Rise']);
  });
});

describe('the limits for touching', () => {
  // IEC 62368-1 table 38, TS1, plastic touched for up to ten seconds: 77 °C (read as quoted in the product-safety list, msg77021).
  const verdict = (measured: string, material = 'PC', kind = 'wall charger'): string | undefined =>
    sheet(`[{ value: ${measured}, place: case top, ambient: 35 °C }]`, `body: { size: 41 × 34 × 30 mm, material: ${material} }`, kind)
      .spots[0]?.verdict;

  test('77 °C on plastic is within, 78 °C over, whatever the air: the limit is not moved', () => {
    expect(verdict('77 °C')).toBe('within');
    expect(verdict('78 °C')).toBe('over');
  });

  test('metal is judged by its own limit, and a power bank by being carried', () => {
    expect(verdict('61 °C', 'aluminium')).toBe('over');
    expect(verdict('61 °C')).toBe('within');
    expect(verdict('61 °C', 'PC', 'power bank')).toBe('over');
  });

  test('the other contact times stand beside it in kelvin, and none of them is a verdict', () => {
    const group = sheet('{ case top: 71 °C }').table.groups.find(({ id }) => id === 'contact');
    const said = group?.rows.map(({ cells }) => cells.flatMap((cell) => (cell.kind === 'text' ? [cell.text] : [])).slice(0, 2));
    expect(said).toEqual([
      ['plastic, held', 'hottest place 23 K above'],
      ['plastic, up to a minute', 'hottest place 11 K above'],
      ['plastic, below one second', 'hottest place 23 K below'],
    ]);
    expect(group?.rows.flatMap(({ cells }) => cells).some(({ kind }) => kind === 'mark')).toBe(false);
  });
});

describe('a part and its rating', () => {
  const parts = 'stages: { main: flyback }\nparts: { main: { C5: { role: bulk capacitor, rating: 22 µF 400 V −40 to 105 °C } } }';

  test('a can of 105 °C at 98 °C is within, at 106 °C over; the case over it is no part', () => {
    const of = (place: string, value: string): string | undefined =>
      sheet(`[{ value: ${value}, place: ${place} }]`, parts).spots[0]?.verdict;
    expect(of('C5', '98 °C')).toBe('within');
    expect(of('can of C5', '106 °C')).toBe('over');
    expect(sheet('[{ value: 106 °C, place: case over C5 }]', parts).spots[0]?.limitOf.of).toBe('touch');
  });
});

test('a temperature that the bank’s own display shows is not judged', () => {
  const { spots } = sheet('[{ value: 90 °C, place: case top, method: the bank’s display }]');
  expect(spots[0]).toMatchObject({ isReported: true, verdict: 'not asked' });
});
