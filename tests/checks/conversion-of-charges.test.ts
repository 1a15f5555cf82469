import { describe, expect, test } from 'vitest';
import { checkText } from './read-example.ts';

/** Messages of the rule for a bank of 10 000 mAh at 3.7 V that is rated 5500 mAh at 5 V. */
function said(sections: string, prose = ''): readonly string[] {
  const text = `---\ntitle: A bank\ndevice: { maker: Ostrel, model: OB-45, kind: power bank }\nnameplate: { capacity: 10000 mAh 3.7 V, output capacity: 5500 mAh 5 V }\n${sections}\n---\n\n${prose}\n`;
  return checkText('bank', text)
    .diagnostics.filter(({ rule }) => rule === 'conversion-of-charges')
    .map(({ message }) => message);
}

describe('a conversion that is charges over charges', () => {
  // Notes on official power-bank figures, public listing: 27.5 of 37 Wh are 74.3 %; 5,500 of 10,000 mAh are 55 %.
  test('55 % is 5500 of 10 000 mAh; the energies are 27.5 of 37 Wh, 74.3 %', () => {
    expect(said('claims: [{ of: conversion rate, value: 55 % }]')).toEqual([
      'conversion rate 55 % is 5500 mAh at 5 V of 10\u202f000 mAh in the cells: charges at two voltages. As energies 27.5 of 37 Wh are 74.3 %.',
    ]);
  });

  test('the ratio of the energies is right, and so is a figure that is neither', () => {
    expect(said('claims: [{ of: conversion rate, value: 74.3 % }, { of: conversion rate, value: 63 % }]')).toEqual([]);
  });

  test('the same figure of something else says nothing', () => {
    expect(said('claims: [{ of: share of recycled plastic, value: 55 % }]', 'Some 55 % of the volume are cells.')).toEqual([]);
  });

  test('a measured charge counts with the voltage it was counted at', () => {
    expect(said('measurements: { delivered energy: { 5 V: 6000 mAh } }\nclaims: [{ of: efficiency, value: 60 % }]')).toEqual([
      'efficiency 60 % is 6000 mAh at 5 V of 10\u202f000 mAh in the cells: charges at two voltages. As energies 30 of 37 Wh are 81.1 %.',
    ]);
  });

  test('the text is read too, and a sentence that warns against the figure is left alone', () => {
    expect(said('', 'That is an efficiency of 55 %.')).toHaveLength(1);
    expect(said('', 'That is not an efficiency of 55 %, it is 74 %.')).toEqual([]);
  });
});
