import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { findingList } from '../../src/render/findings.ts';
import { partsView } from '../../src/render/parts.ts';
import { quantityWords } from '../../src/render/quantity.ts';
import { stageByStage } from '../../src/render/stage-by-stage.ts';
import { storedEnergy } from '../../src/tables/stored-energy.ts';
import { tableCsv } from '../../src/tables/table-csv.ts';
import type { Diagnostic } from '../../src/diagnostics/finding.ts';
import { checkText } from '../checks/read-example.ts';

const { entry } = checkText(
  'lm-q65',
  `---
title: Economy
device: { maker: Larkmoor, model: LM-Q65, kind: wall charger }
nameplate: { input: 100-240 V~ 50/60 Hz 1.5 A }
ports:
  C1: { connector: USB-C, power: 65 W, offers: [5 V 3 A, 20 V 3.25 A] }
stages:
  input: input filter
  bridge: rectifier
  pfc: { is: boost PFC, bus: 395 V measured }
  main: { is: LLC half bridge, turns: 33:5:5, feeds: [C1] }
parts:
  input:
    F1: { role: input fuse, rating: T2 A 250 VAC }
  pfc:
    C5: { role: bulk capacitor, rating: 120 µF 420 V }
    R11, R12, R13: { role: bleed resistor, rating: 2.2 MΩ, arrangement: series }
  main:
    Q1: { role: switch, rating: 700 V }
---

Text.
`,
);

function read(): NonNullable<typeof entry> {
  if (entry === null) throw new Error('the entry is readable');
  return entry;
}

/** The page's words without tags and behind which lines they stand. */
const plain = (html: string): string => html.replace(/<[^>]*>/g, ' ').replace(/[\u00a0\s]+/g, ' ');

describe('what a sheet shows at once', () => {
  it('prints a counted ratio as a plain number without idle zeros', () => {
    const ratio = {
      dimension: 'ratio' as const,
      low: 6.6,
      nominal: 6.6,
      high: 6.6,
      significant: 15,
      origin: { evidence: 'measured' as const, written: '33:5', at: 'stages.main.turns' },
    };
    expect(quantityWords(ratio, { unit: '1' })).toBe('6.6');
    expect(quantityWords({ ...ratio, low: 7, nominal: 7, high: 7 }, { unit: '1' })).toBe('7');
    expect(quantityWords({ ...ratio, significant: 3 }, { unit: '1' })).toBe('6.60');
    expect(plain(stageByStage(derive(read())))).toContain('turns ratio 6.6 ');
  });

  it('keeps what a stage works at, and what is comfortable, behind a line that says how much it is', () => {
    const html = stageByStage(derive(read()));
    const folds = [...html.matchAll(/<details class="fold"><summary>(.*?)<\/summary>/g)].map((match) => plain(match[1] ?? '').trim());
    expect(folds.some((line) => /^\d+ values? that \d+ stages? works? at, worked out$/.test(line.replace(/ +/g, ' ')))).toBe(true);
    const open = plain(html.replace(/<details.*?<\/details>/gs, ''));
    expect(open).toContain('F1 (input fuse) uses 106 % of its 250 V');
    expect(open).not.toContain('Comfortable');
    expect(open).not.toContain('turns ratio');
  });

  it('gives the limit beside a ratio that may be above one', () => {
    const row = /<tr id="part-F1">.*?<\/tr>/s.exec(partsView(read(), derive(read())))?.[0] ?? '';
    expect(plain(row)).toMatch(/1\.06 of 1\.10/);
  });

  it('tells megohms and minutes where people would', () => {
    const table = storedEnergy.build({ entry: read(), derived: derive(read()) });
    if (table === null) throw new Error('there is a bulk capacitor');
    const units = table.groups[0]?.rows.map(({ cells }) => (cells[1]?.kind === 'value' ? cells[1].unit : null));
    expect(units).toEqual(['µF', 'V', 'J', 'MΩ', 'min']);
    expect(tableCsv(table)).toContain('6.6');
  });

  it('leaves a finding and its answer in view, and the advice behind a line, but for who mends a broken entry', () => {
    const finding: Diagnostic = {
      file: 'teardowns/x/index.md',
      line: 142,
      column: 14,
      endLine: 142,
      endColumn: 20,
      severity: 'warning',
      rule: 'capacitor-voltage-margin',
      message: 'Thin.',
      why: 'Surges.',
      advice: 'Read it again.',
      source: null,
      subject: 'C5',
      answer: 'Measured.',
    };
    const inView = (html: string): string => plain(html.replace(/<details.*?<\/details>/gs, ''));
    const shown = inView(findingList([finding]));
    expect(shown).toContain('Thin.');
    expect(shown).toContain('Measured.');
    expect(shown).not.toContain('Surges.');
    expect(findingList([finding])).toContain('Surges.');
    expect(inView(findingList([finding], { answers: false }))).toContain('Read it again.');
  });
});
