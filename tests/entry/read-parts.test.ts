import { describe, expect, it } from 'vitest';
import { readReferences } from '../../src/entry/part-references.ts';
import { lineKey, partsFromRows } from '../../src/entry/parts-from-rows.ts';
import { readEntry } from '../../src/entry/read-entry.ts';
import { readFile, reading } from './reading.ts';

describe('references in one key', () => {
  it.each([
    ['Q2', ['Q2']],
    ['Q2, Q3', ['Q2', 'Q3']],
    ['R11–R14', ['R11', 'R12', 'R13', 'R14']],
    ['R11-13', ['R11', 'R12', 'R13']],
    ['Q1-Q4', ['Q1', 'Q2', 'Q3', 'Q4']],
    ['C3 to C5, C9', ['C3', 'C4', 'C5', 'C9']],
    ['C#1', ['C#1']],
    ['Q_SR1', ['Q_SR1']],
    ['Rbur1', ['Rbur1']],
    ['CX-1', ['CX-1']],
    ['R14–R11', ['R14–R11']],
    ['Q1–C4', ['Q1–C4']],
  ])('%s', (key, expected) => {
    expect(readReferences(key).map(({ reference }) => reference)).toEqual(expected);
  });

  it('know where they stand in the key', () => {
    expect(readReferences('Q2,  Q3').map(({ span }) => span)).toEqual([
      { start: 0, end: 2 },
      { start: 5, end: 7 },
    ]);
  });
});

const STAGES = 'stages: { in: input filter, pfc: boost PFC, main: flyback }\n';

describe('a part', () => {
  it('in one line is its role and its rating', () => {
    const { entry, findings } = reading(`${STAGES}parts: { pfc: { C5: "bulk capacitor, 82 µF 400 V printed" } }`);
    expect(findings).toEqual([]);
    expect(entry.parts[0]).toMatchObject({
      role: 'bulk-capacitor',
      references: ['C5'],
      stage: 'pfc',
      evidence: 'printed',
      fitting: 'fitted',
    });
    expect(entry.parts[0]?.rating?.quantities.map(({ dimension }) => dimension)).toEqual(['capacitance', 'voltage']);
  });

  it('may be known by its role alone', () => {
    expect(reading(`${STAGES}parts: { main: { T1: transformer } }`).entry.parts[0]).toMatchObject({ role: 'transformer', rating: null });
  });

  it('may be several pieces, whose connection is asked for', () => {
    const { entry, findings } = reading(`${STAGES}parts: { in: { RX: { role: bleed resistor, rating: 2 × 1 MΩ } } }`);
    expect(entry.parts[0]).toMatchObject({ count: 2, arrangement: 'parallel' });
    expect(findings).toEqual(['value-remark 2:52 2 pieces are taken as connected in parallel.']);
    expect(reading(`${STAGES}parts: { in: { RX: { role: bleed resistor, rating: 1 MΩ, count: 2, arrangement: series } } }`)).toMatchObject({
      findings: [],
      entry: { parts: [{ count: 2, arrangement: 'series' }] },
    });
  });

  it('may be absent, unknown, or an empty place', () => {
    const { entry, findings } = reading(`${STAGES}parts: { in: { X capacitor: absent, MOV: unknown, C6: "Y capacitor, not fitted" } }`);
    expect(findings).toEqual([]);
    expect(entry.parts.map(({ role, fitting, references }) => [role, fitting, references])).toEqual([
      ['x-capacitor', 'absent', []],
      ['varistor', 'unknown', []],
      ['y-capacitor', 'not fitted', ['C6']],
    ]);
  });

  it('that is absent is named by its role', () => {
    expect(reading(`${STAGES}parts: { in: { C6: not fitted } }`).findings).toEqual([
      'unknown-role 2:16 "C6" names no role, so it cannot be told what is not fitted.',
    ]);
  });

  it('of the case stands in no block', () => {
    expect(reading('parts: { case: { H1: heat spreader } }').findings).toEqual([]);
  });

  it('shows where in its rating the fault is', () => {
    // A MOSFET on-resistance heard as millilitres.
    const { places } = reading(`${STAGES}parts: { pfc: { Q1: { role: switch, rating: "700 V, 140 mL" } } }`);
    expect(places).toEqual(['unreadable-value 2:53']);
  });

  it('in one line, too', () => {
    expect(reading(`${STAGES}parts: { pfc: { Q1: "switch, 700 V, 140 mL" } }`).places).toEqual(['unreadable-value 2:37']);
  });

  it('keeps what was measured beside what is marked, and what else is stated', () => {
    const { entry } = reading(
      `${STAGES}parts: { pfc: { C5: { role: bulk capacitor, rating: 6800 µF 50 V, measured: 2200 µF, also stated: 500 V in the schematic } } }`,
    );
    expect(entry.parts[0]?.measured?.quantities[0]).toMatchObject({ dimension: 'capacitance', unit: 'µF', written: '2200 µF' });
    expect(entry.parts[0]?.alsoStated).toEqual(['500 V in the schematic']);
  });
});

describe('a spreadsheet of parts', () => {
  const rows = [
    { line: 2, cells: { Stage: 'pfc', Reference: 'Q1', Role: 'switch', Rating: '700 V 140 mΩ', Count: '', Maker: 'Ostrel' } },
    { line: 3, cells: { Stage: 'in', Reference: 'RX', Role: 'bleed resistor', Rating: '1 MΩ', Count: '2', Arrangement: 'series' } },
    { line: 4, cells: { Stage: 'in', Reference: '', Role: 'varistor', Rating: 'absent' } },
    { line: 5, cells: { Stage: '', Reference: '' } },
  ];

  it('gives the same parts as the entry itself would', () => {
    const { parts, findings, lines } = partsFromRows(rows);
    expect(findings).toEqual([]);
    expect(lines.get(lineKey('in', 'RX'))).toBe(3);
    const frontmatter = {
      title: 'One',
      device: { maker: 'A', model: 'B', kind: 'wall charger' },
      stages: { in: 'input filter', pfc: 'boost PFC' },
      parts,
    };
    const read = readEntry({ slug: 'one', file: 'one', frontmatter });
    expect(read.findings).toEqual([]);
    expect(read.entry?.parts.map(({ role, count, fitting }) => [role, count, fitting])).toEqual([
      ['pfc-switch', 1, 'fitted'],
      ['bleed-resistor', 2, 'fitted'],
      ['varistor', 1, 'absent'],
    ]);
  });

  it('is told what is wrong with it, line by line', () => {
    const wrong = [
      { line: 2, cells: { stage: 'pfc', reference: 'Q1', roel: 'switch', role: 'switch' } },
      { line: 3, cells: { stage: '', reference: 'Q2', role: 'switch' } },
      { line: 4, cells: { stage: 'pfc', reference: '', role: 'switch' } },
      { line: 5, cells: { stage: 'pfc', reference: 'Q1', role: 'switch' } },
      { line: 6, cells: { stage: 'pfc', reference: 'Q5', role: 'switch', count: 'two' } },
    ];
    expect(partsFromRows(wrong).findings.map(({ rule, where }) => `${rule} ${where.in === 'file' ? (where.line ?? 0) : ''}`)).toEqual([
      'unknown-key 1',
      'missing-field 3',
      'missing-field 4',
      'duplicate-reference 5',
      'wrong-shape 6',
    ]);
  });
});

describe('a rating in a unit that its part never has', () => {
  it('says what was probably meant', () => {
    const text = `---\ntitle: One\ndevice: { maker: A, model: B, kind: wall charger }\n${STAGES}parts: { pfc: { Q1: { role: switch, rating: "700 V, 140 mL" } } }\n---\n`;
    const [finding] = readFile(text).diagnostics;
    expect(finding?.message).toBe('140 mL is a volume; a PFC switch is rated in voltage, resistance, current.');
    expect(finding?.advice).toBe('Did you mean "140 mΩ"?');
  });

  it('is a warning where it is only unusual', () => {
    expect(reading(`${STAGES}parts: { in: { RX: "bleed resistor, 10 µF" } }`).places).toEqual(['value-remark 2:37']);
  });
});
