import { describe, expect, test } from 'vitest';
import { checkText } from './read-example.ts';

/** What one rule says about an entry with these parts in its input filter: severity and message. */
function said(rule: string, parts: readonly string[], more = ''): readonly (readonly [severity: string, message: string])[] {
  const text = [
    '---',
    'title: A charger',
    'device: { maker: Larkmoor, model: LM-S30, kind: wall charger }',
    'nameplate: { input: 100-264 V~ 50/60 Hz 0.8 A, total: 30 W }',
    'stages: { input: input filter, main: flyback }',
    ...(parts.length === 0 ? [] : ['parts:', '  input:', ...parts.map((part) => `    ${part}`)]),
    ...(more === '' ? [] : [more]),
    '---',
    'Text.',
  ].join('\n');
  return checkText('charger', text)
    .diagnostics.filter((found) => found.rule === rule)
    .map(({ severity, message }) => [severity, message]);
}

const barrier = (rating: string, more = ''): readonly string[] => [
  'F1: { role: input fuse, rating: T2 A 250 VAC }',
  `CY1: { role: Y capacitor, rating: ${rating}${more} }`,
];

describe('a capacitor across the barrier', () => {
  const across = (rating: string, more = ''): readonly (readonly [string, string])[] =>
    said('barrier-capacitor-class', [], `parts: { main: { CY1: { role: Y capacitor, rating: ${rating}${more} } } }`);

  test('without a class, or of class X, is the gravest finding', () => {
    expect(across('2.2 nF 1 kV').map(([severity]) => severity)).toEqual(['error']);
    expect(across('2.2 nF X2 275 VAC').map(([severity]) => severity)).toEqual(['error']);
  });

  test('of class Y1 is right; two Y2 in series are right with a note; a single Y2 is a caution', () => {
    expect(across('2.2 nF Y1 400 VAC')).toEqual([]);
    expect(across('2 × 2.2 nF Y2 300 VAC', ', arrangement: series').map(([severity]) => severity)).toEqual(['note']);
    expect(across('2.2 nF Y2 300 VAC').map(([severity]) => severity)).toEqual(['warning']);
  });
});

describe('the current that a two-pin device leaks at 264 V 60 Hz', () => {
  test('2.2 nF give 0.219 mA, below 0.25 mA; 3.3 nF 0.328 mA and 4.7 nF 0.468 mA lie above it and below 0.5 mA', () => {
    const rule = 'y-capacitor-current-high';
    expect(said(rule, barrier('2.2 nF Y1 400 VAC'))).toEqual([]);
    const [middle] = said(rule, barrier('3.3 nF Y1 400 VAC'));
    expect(middle?.[0]).toBe('note');
    expect(middle?.[1]).toContain('0.328 mA');
    const [large] = said(rule, barrier('4.7 nF Y1 400 VAC'));
    expect(large?.[0]).toBe('note');
    expect(large?.[1]).toContain('0.468 mA');
  });

  test('a place left empty passes nothing and is not named', () => {
    const empty = 'CY2: { role: Y capacitor, rating: 1 nF Y1 400 VAC, fitted: no }';
    const [found] = said('y-capacitor-current-high', [empty, ...barrier('4.7 nF Y1 400 VAC')]);
    expect(found?.[1]).toMatch(/^CY1 \(4\.7 nF Y1 400 VAC\): 0\.468 mA/);
  });
});

describe('the charge on the plug pins', () => {
  const rule = 'x-capacitor-discharge';

  test('0.47 µF through 2 MΩ is below 60 V after 2 s and draws nothing', () => {
    expect(said(rule, ['CX1: { role: X capacitor, rating: 0.47 µF X2 310 VAC }', 'R1: { role: bleed resistor, rating: 2 MΩ }'])).toEqual(
      [],
    );
  });

  test('two bleed resistors of different values side by side count together', () => {
    const parts = ['CX1: { role: X capacitor, rating: 0.47 µF X2 310 VAC }', 'R1: { role: bleed resistor, rating: 3 MΩ }'];
    expect(said(rule, parts)[0]?.[1]).toContain('90.4 V left after 2 s through 3 MΩ');
    expect(said(rule, [...parts, 'R2: { role: bleed resistor, rating: 6 MΩ }'])).toEqual([]);
  });

  test('neither a resistor nor a discharge IC is a caution above 0.1 µF and none at it', () => {
    expect(said(rule, ['CX1: { role: X capacitor, rating: 0.47 µF X2 310 VAC }']).map(([severity]) => severity)).toEqual(['warning']);
    expect(said(rule, ['CX1: { role: X capacitor, rating: 0.1 µF X2 310 VAC }'])).toEqual([]);
    const withIc = ['CX1: { role: X capacitor, rating: 0.47 µF X2 310 VAC }', 'U9: { role: discharge IC }'];
    expect(said(rule, withIc)).toEqual([]);
  });
});

describe('a distance between the two sides', () => {
  const between = (fields: string): string => `insulation: { barrier: { between: primary and secondary, kind: reinforced, ${fields} } }`;

  test('0.6 mm through air is an error, 7.6 mm is enough, 60 mm asks whether the unit is right', () => {
    const below = 'insulation-distance-below';
    expect(said(below, [], between('clearance: 0.6 mm')).map(([severity]) => severity)).toEqual(['error']);
    expect(said(below, [], between('clearance: 7.6 mm, creepage: 7.6 mm'))).toEqual([]);
    expect(said('insulation-distance-plausible', [], between('creepage: 60 mm'))[0]?.[1]).toContain('Did you mean 6 mm?');
  });

  test('the same small distance is said once', () => {
    expect(said('insulation-distance-plausible', [], between('clearance: 0.6 mm'))).toEqual([]);
  });

  test('2.9 mm where 3.0 mm are asked is a warning, at 5000 m 4.4 mm is one too', () => {
    const below = 'insulation-distance-below';
    expect(said(below, [], between('clearance: 2.9 mm')).map(([severity]) => severity)).toEqual(['warning']);
    expect(said(below, [], between('clearance: 4.4 mm'))).toEqual([]);
    expect(said(below, [], between('clearance: 4.4 mm, altitude: 5000 m'))[0]?.[1]).toContain('asks 4.44 mm');
  });
});
