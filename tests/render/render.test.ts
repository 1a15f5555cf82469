import { describe, expect, it } from 'vitest';
import { brokenEntryZones } from '../../src/render/broken-entry.ts';
import { correctionList, findingList, revisedCorrections } from '../../src/render/findings.ts';
import { fixedNumber, quantity, quantityWords } from '../../src/render/quantity.ts';
import { referenceList } from '../../src/render/references.ts';
import { tableView } from '../../src/render/table-view.ts';
import { ordinal } from '../../src/render/ordinal.ts';
import { sentence } from '../../src/render/words.ts';
import { zoneLetter } from '../../src/render/zone.ts';
import type { Diagnostic } from '../../src/diagnostics/finding.ts';
import type { Table } from '../../src/tables/table.ts';
import type { Value } from '../../src/values/value.ts';

const value: Value<'voltage'> = {
  dimension: 'voltage',
  low: 388,
  nominal: 389,
  high: 390,
  significant: 3,
  origin: { evidence: 'measured', written: '389 V', at: 'stages.pfc.bus' },
};
const assumed: Value<'voltage'> = {
  ...value,
  origin: { evidence: 'assumed', reason: 'usual', source: { title: 'x', section: '', standing: 'common practice' } },
};

describe('numbers on the page', () => {
  it('use a true minus and set thousands off by a narrow space', () => {
    expect(fixedNumber(1874, 0)).toBe('1\u202f874');
    expect(fixedNumber(-3.04, 1)).toBe('−3.0');
    expect(fixedNumber(-0.01, 1)).toBe('0.0');
    expect(fixedNumber(1234567.891, 2)).toBe('1\u202f234\u202f567.89');
  });

  it('keep number and unit together', () => {
    expect(quantityWords(value)).toBe('389\u00a0V');
    expect(sentence('from 12 V to 24 V at 90 %, 5 volts')).toBe('from 12\u00a0V to 24\u00a0V at 90\u00a0%, 5 volts');
  });

  it('are marked where they rest on an assumption, in line and in words', () => {
    expect(quantity(assumed)).toContain('class="q assumed"');
    expect(quantity(assumed)).toContain('rests on an assumption');
    expect(quantity(value)).not.toContain('assum');
  });

  it('give the reason instead of a missing value', () => {
    expect(quantity({ missing: true, reason: 'not measured', needs: [] })).toContain('– not measured');
  });
});

describe('references, ranks and letters', () => {
  it('run together from three on', () => {
    expect(referenceList(['R11', 'R12', 'R13', 'R14'])).toBe('R11–R14');
    expect(referenceList(['Q2', 'Q3'])).toBe('Q2 · Q3');
    expect(referenceList(['C1', 'C3', 'C4', 'C5', 'U1'])).toBe('C1 · C3–C5 · U1');
  });

  it('count as people do', () => {
    expect([1, 2, 3, 4, 11, 12, 13, 21, 22, 103, 111].map(ordinal)).toEqual([
      '1st',
      '2nd',
      '3rd',
      '4th',
      '11th',
      '12th',
      '13th',
      '21st',
      '22nd',
      '103rd',
      '111th',
    ]);
  });

  it('leave out I and O, as ISO 5457 does for its grid', () => {
    const letters = Array.from({ length: 26 }, (_, index) => zoneLetter(index));
    expect(letters).not.toContain('I');
    expect(letters).not.toContain('O');
    expect(new Set(letters).size).toBe(26);
  });
});

const diagnostic: Diagnostic = {
  file: 'teardowns/x/index.md',
  line: 142,
  column: 14,
  endLine: 142,
  endColumn: 20,
  severity: 'error',
  rule: 'capacitor-voltage-margin',
  message: 'C5 <script> 394 V',
  why: null,
  advice: null,
  source: null,
  subject: 'C5',
  answer: null,
};

describe('findings and corrections', () => {
  it('say where they are and escape what authors wrote', () => {
    const html = findingList([diagnostic]);
    expect(html).toContain('index.md 142:14');
    expect(html).toContain('No answer yet.');
    expect(html).not.toContain('<script>');
  });

  it('show the author’s answer in place of none', () => {
    const html = findingList([{ ...diagnostic, answer: 'Measured twice.' }]);
    expect(html).toContain('Measured twice.');
    expect(html).not.toContain('No answer yet.');
  });

  it('give each date of correction the next letter, newest first, the first issue last', () => {
    const corrections = [
      { date: '2026-02-27', where: 'mass', was: '281 g', is: '218 g', why: 'swapped' },
      { date: '2026-03-14', where: 'C5', was: '400 V', is: '420 V', why: 'misread' },
      { date: '2026-03-14', where: 'Q1', was: null, is: null, why: 'new photo' },
    ];
    expect(revisedCorrections(corrections).map(({ revision, where }) => `${revision} ${where}`)).toEqual(['C C5', 'C Q1', 'B mass']);
    const html = correctionList(corrections, '2026-02-22');
    expect(html.indexOf('First issue')).toBeGreaterThan(html.indexOf('281 g'));
    expect(html).toContain('<del>281 g</del>');
  });

  it('make a page of their own for an entry that cannot be shown', () => {
    const html = brokenEntryZones({ slug: 'x', file: diagnostic.file, diagnostics: [diagnostic] });
    expect(html).toContain('x cannot be shown yet');
    expect(html).toContain('1 error in');
  });
});

describe('a derived table', () => {
  const table: Table = {
    id: 't',
    title: 'Bus',
    caption: 'One voltage.',
    notes: ['A note.'],
    columns: [
      { id: 'a', head: 'Part', unit: null, align: 'start' },
      { id: 'b', head: 'Bus', unit: 'V', align: 'end' },
    ],
    groups: [
      {
        id: 'g',
        title: 'Primary',
        glyph: 'boost-pfc',
        rows: [
          {
            id: 'r1',
            cells: [
              { kind: 'text', text: 'C5', mono: true },
              { kind: 'value', value },
            ],
          },
          {
            id: 'r2',
            cells: [
              { kind: 'text', text: 'a <b>' },
              { kind: 'missing', reason: 'not measured' },
            ],
          },
          { id: 'r3', cells: [{ kind: 'text', text: 'C6' }, { kind: 'none' }] },
        ],
      },
    ],
  };

  it('has a caption, heads with units, row anchors and reasons for what is missing', () => {
    const html = tableView(table);
    expect(html).toContain('<caption');
    expect(html).toContain('Bus V');
    expect(html).toContain('id="t-r1"');
    expect(html).toContain('– not measured');
    expect(html).toContain('not in use');
    expect(html).toContain('a &lt;b&gt;');
  });

  it('shows the unit once: in the head, not in the cell', () => {
    expect(tableView(table)).toContain('>389<');
  });
});
