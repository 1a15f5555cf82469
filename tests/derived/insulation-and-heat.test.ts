import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { Derived } from '../../src/derived/derived.ts';
import { parseFrontmatter } from '../../src/entry/parse-frontmatter.ts';
import { readEntry } from '../../src/entry/read-entry.ts';
import { isMissing, type Known } from '../../src/values/value.ts';

function derived(lines: readonly string[], input = '100-240 V~ 50/60 Hz 0.8 A'): Derived {
  const text = [
    '---',
    'title: A charger',
    'device: { maker: Larkmoor, model: LM-S30, kind: wall charger }',
    `nameplate: { input: "${input}", total: 30 W }`,
    ...lines,
    '---',
    '',
  ].join('\n');
  const { entry, findings } = readEntry({ slug: 'charger', file: 'charger/index.md', frontmatter: parseFrontmatter(text).data });
  if (entry === null) throw new Error(findings.map(({ message }) => message).join('; '));
  return derive(entry);
}

function millimetres(length: Known<'length'> | undefined): string {
  return length === undefined || isMissing(length) ? 'missing' : (length.nominal * 1000).toFixed(2);
}

/** Clearance and creepage asked of one place. */
function asked(place: string, stages = '{ main: flyback }', input?: string): readonly string[] {
  const [row] = derived([`stages: ${stages}`, `insulation: { here: { ${place} } }`], input).insulation;
  return [millimetres(row?.clearance.required), millimetres(row?.creepage.required)];
}

describe('distances asked of a 100 to 240 V adapter, category II, pollution degree 2, material group IIIa', () => {
  // Worked by hand from the tables of IEC 60664-1 as tabulated in an open-source board-design program.
  test('basic 1.5 and 2.5 mm, reinforced 3.0 and 5.0 mm', () => {
    expect(asked('kind: basic, clearance: 6 mm')).toEqual(['1.50', '2.50']);
    expect(asked('kind: reinforced, clearance: 6 mm')).toEqual(['3.00', '5.00']);
  });

  test('at 5000 m 2.22 and 4.44 mm through air, and the creepage unchanged', () => {
    expect(asked('kind: basic, clearance: 6 mm, altitude: 5000 m')).toEqual(['2.22', '2.50']);
    expect(asked('kind: reinforced, clearance: 6 mm, altitude: 5000 m')).toEqual(['4.44', '5.00']);
  });

  test('281 V rms across it by interpolation: 2.81 mm basic, 5.62 mm reinforced', () => {
    expect(asked('kind: basic, clearance: 6 mm, working voltage: 281 V AC')[1]).toBe('2.81');
    expect(asked('kind: reinforced, clearance: 6 mm, working voltage: 281 V AC')[1]).toBe('5.62');
  });

  test('behind a PFC the regulated bus counts against the neutral: 390 V give 311 V rms and 6.22 mm', () => {
    expect(asked('kind: reinforced, clearance: 6 mm', '{ pfc: { is: boost PFC, bus: 390 V }, main: LLC half bridge }')[1]).toBe('6.22');
  });

  test('a better material asks less, and less than what is through air is never asked along the surface', () => {
    expect(asked('kind: reinforced, clearance: 6 mm, material group: I')).toEqual(['3.00', '3.00']);
  });

  test('what must be insulated how is only taken where the two sides are named', () => {
    expect(asked('between: primary and secondary, clearance: 6 mm')).toEqual(['3.00', '5.00']);
    expect(asked('between: track 4 and track 5, clearance: 6 mm')).toEqual(['missing', 'missing']);
  });

  test('nothing is asked of a device that is not on the mains', () => {
    expect(derived(['insulation: { here: { kind: reinforced, clearance: 6 mm } }'], '12-24 V⎓ 9 A').insulation).toEqual([]);
  });

  test('a slot narrower than 1 mm does not lengthen the creepage, which the row says', () => {
    const notes = (slot: string): string =>
      derived([`insulation: { here: { kind: reinforced, clearance: 6 mm, slot: ${slot} } }`])
        .insulation.flatMap((row) => row.notes)
        .join(' ');
    expect(notes('0.8 mm')).toContain('narrower than the 1 mm that count');
    expect(notes('1.0 mm')).not.toContain('narrower');
  });
});

describe('the charge on the plug pins from the crest of 264 V', () => {
  const left = (bleed: string): readonly string[] => {
    const parts = `parts: { input: { CX1: { role: X capacitor, rating: 0.47 µF X2 310 VAC }, R1: { role: bleed resistor, rating: ${bleed} } } }`;
    const rows = derived(['stages: { input: input filter, main: flyback }', parts], '100-264 V~ 50/60 Hz 0.8 A').mains?.discharge ?? [];
    return rows.map((row) => `${row.rule} ${isMissing(row.left) ? '' : row.left.nominal.toFixed(1)} ${row.verdict}`);
  };

  test('0.47 µF with 2 MΩ: 128.9 V after 1 s and 44.5 V after 2 s, each rule by its own time', () => {
    expect(left('2 MΩ')).toEqual([
      '62368-plug 44.5 within',
      '60950-plug 128.9 within',
      '60335-plug 128.9 not asked',
      '60204-plug 128.9 not asked',
    ]);
  });

  test('with 1 MΩ: 44.5 V after 1 s', () => {
    expect(left('1 MΩ')).toEqual([
      '62368-plug 5.3 within',
      '60950-plug 44.5 within',
      '60335-plug 44.5 not asked',
      '60204-plug 44.5 not asked',
    ]);
  });
});

describe('heat', () => {
  const body = 'body: { size: 60 × 60 × 30 mm, basis: cased, material: PC }';
  const five = 'measurements: { efficiency: { port: C1, line: 230 V, output: 20 V, points: { 1 A: 20.0 V 25.0 W 80.0 % } } }';
  const port = 'ports: { C1: { connector: USB-C, offers: [20 V 1 A] } }';

  test('5 W in a plastic box of 60 × 60 × 30 mm in air of 25 °C: 51 °C, and ±20 % of the rise', () => {
    const { heat } = derived([body, port, five, 'stages: { main: flyback }']);
    if (isMissing(heat.temperature) || isMissing(heat.surface)) throw new Error('missing');
    // 51.06 °C by fixed-point iteration apart from this program, with the properties of air held at 320 K.
    expect(heat.temperature.nominal.toFixed(0)).toBe('51');
    expect(heat.temperature.low).toBeLessThan(25 + 0.8 * 26.1);
    expect(heat.temperature.high).toBeGreaterThan(25 + 1.2 * 26);
    expect((heat.surface.nominal * 1e4).toFixed(1)).toBe('144.0');
  });

  test('more loss is never cooler', () => {
    const at = (watts: number): number => {
      const line = `measurements: { efficiency: { port: C1, line: 230 V, output: 20 V, points: { 1 A: 20.0 V ${watts} W } } }`;
      const { temperature } = derived([body, port, line, 'stages: { main: flyback }']).heat;
      return isMissing(temperature) ? Number.NaN : temperature.nominal;
    };
    const steps = [21, 22, 23, 25, 28].map(at);
    expect(steps).toEqual([...steps].sort((one, other) => one - other));
  });

  test('a can of 2000 h at 105 °C that is measured at 85 °C lives 8000 h', () => {
    const parts = 'parts: { main: { C5: { role: bulk capacitor, rating: 22 µF 400 V 105 °C 2000 h } } }';
    const [row] = derived(['stages: { main: flyback }', parts, 'measurements: { thermal: { C5: 85 °C } }']).heat.lives;
    expect(row === undefined || isMissing(row.life) ? '' : (row.life.nominal / 3600).toFixed(0)).toBe('8000');
  });

  test('metal under a plastic skin is plastic to the touch', () => {
    const material = (words: string): string | undefined =>
      derived([`body: { size: 60 × 60 × 30 mm, material: ${words} }`, 'measurements: { thermal: { case top: 58 °C } }']).heat.spots[0]
        ?.material;
    expect(material('PC over an aluminium frame')).toBe('plastic');
    expect(material('aluminium sleeve over PC')).toBe('metal');
  });
});

describe('the limits of touch current', () => {
  const parts = 'parts: { main: { CY1: { role: Y capacitor, rating: 2.2 nF Y1 400 VAC } } }';
  const verdicts = (nameplate: string): readonly string[] => {
    const text = [
      '---',
      'title: A charger',
      'device: { maker: Larkmoor, model: LM-S30, kind: wall charger }',
      nameplate,
      'stages: { main: flyback }',
      parts,
      '---',
      '',
    ];
    const { entry } = readEntry({ slug: 'charger', file: 'charger/index.md', frontmatter: parseFrontmatter(text.join('\n')).data });
    return entry === null ? [] : (derive(entry).mains?.touch ?? []).map(({ limit, verdict }) => `${limit} ${verdict}`);
  };

  test('those for a device with earth are not asked of one of class II', () => {
    expect(verdicts('nameplate: { input: 100-264 V~ 50/60 Hz 0.8 A, marks: [class II symbol] }')).toEqual([
      '60950-not-earthed within',
      '60950-hand-held not asked',
      '60950-earthed not asked',
      '62368-es1 within',
      '62368-es2 within',
    ]);
    expect(verdicts('nameplate: { input: 100-264 V~ 50/60 Hz 0.8 A }')[1]).toBe('60950-hand-held within');
  });
});
