import { expect, it } from 'vitest';
import { makerUses } from '../../src/corpus/maker-uses.ts';
import { inventedPart, inventedSheet } from './invented-sheet.ts';

const sheets = [
  inventedSheet({
    slug: 'a',
    maker: 'Larkmoor',
    published: '2026-01-01',
    parts: [inventedPart({ number: 'OC1' }), inventedPart({ number: 'OC2', role: 'primary-switch' })],
  }),
  inventedSheet({
    slug: 'b',
    maker: 'Ostrel',
    published: '2026-02-01',
    parts: [inventedPart({ number: 'OC1' }), inventedPart({ number: 'PX9', maker: null })],
  }),
  inventedSheet({ slug: 'c', maker: 'LARKMOOR', published: '2026-03-01' }),
];

it('a maker has the devices sold under its name and the parts that carry it', () => {
  const ostrel = makerUses(sheets).find((maker) => maker.name === 'Ostrel');
  expect(ostrel?.devices.map((sheet) => sheet.slug)).toEqual(['b']);
  expect(ostrel?.parts.map((part) => [part.number, part.sheets.map((sheet) => sheet.slug)])).toEqual([
    ['OC1', ['b', 'a']],
    ['OC2', ['a']],
  ]);
  expect(ostrel?.partSheetCount).toBe(2);
});

it('a part without a maker is given to none', () => {
  expect(makerUses(sheets).flatMap((maker) => maker.parts.map((part) => part.number))).not.toContain('PX9');
});

it('two spellings of one name are proposed as perhaps the same', () => {
  const makers = makerUses(sheets);
  expect(makers.map((maker) => maker.name)).toEqual(['LARKMOOR', 'Larkmoor', 'Ostrel']);
  expect(makers[0]?.perhapsSame.map((other) => other.name)).toEqual(['Larkmoor']);
  expect(new Set(makers.map((maker) => maker.address)).size).toBe(3);
});

it('a maker whose parts have no number is named all the same, with the sheets that name it', () => {
  const makers = makerUses([...sheets, inventedSheet({ slug: 'd', published: '2026-04-01', partMakers: ['Tessoram', 'Ostrel'] })]);
  const tessoram = makers.find((maker) => maker.name === 'Tessoram');
  expect(tessoram).toMatchObject({ parts: [], devices: [], partSheetCount: 1 });
  expect(tessoram?.unnumbered.map((sheet) => sheet.slug)).toEqual(['d']);
  expect(makers.find((maker) => maker.name === 'Ostrel')).toMatchObject({ partSheetCount: 3, unnumbered: [{ slug: 'd' }] });
});
