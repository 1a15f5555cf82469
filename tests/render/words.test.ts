import { describe, expect, it } from 'vitest';
import { comparisonMarkup } from '../../src/render/comparison.ts';
import type { ComparedSheet } from '../../src/render/compared-sheet.ts';
import type { ComparisonRow } from '../../src/corpus/comparison-row.ts';
import { sentence } from '../../src/render/words.ts';

describe('words beside numbers', () => {
  it('a number stays on one line with its unit, whatever space was written', () => {
    expect(sentence('at 230 V, 20 MHz and 37 K over the air')).toBe('at 230\u00a0V, 20\u00a0MHz and 37\u00a0K over the air');
    expect(sentence('bus 390\u202fV, 310 VAC, 0.100 ohm, 24 W/in³, after 60 min, 100 %')).toBe(
      'bus 390\u00a0V, 310\u00a0VAC, 0.100\u00a0ohm, 24\u00a0W/in³, after 60\u00a0min, 100\u00a0%',
    );
    expect(sentence('1 nF, 12 mΩ, 197 cm², 3600 mAh')).toBe('1\u00a0nF, 12\u00a0mΩ, 197\u00a0cm², 3600\u00a0mAh');
  });

  it('a word that only begins like a unit does not hold on to the number before it', () => {
    expect(sentence('4 Ports, 15 values, 2 halves & 3 with one')).toBe('4 Ports, 15 values, 2 halves &amp; 3 with one');
  });

  it('thousands keep their narrow space', () => {
    expect(sentence('12\u202f000 rows')).toBe('12\u202f000 rows');
  });
});

describe('a cell of the comparison', () => {
  it.each([
    ['0.94 over 0.90', '<span class="q">0.94</span> over <span class="q">0.90</span>'],
    ['desktop charger', 'desktop charger'],
    ['VLR-81C, VLR-27S', '<span class="q">VLR-81C</span>, <span class="q">VLR-27S</span>'],
    ['88 × 60 × 31 mm ± 0.3 mm', '<span class="q wrap">88 × 60 × 31\u00a0mm ± 0.3\u00a0mm</span>'],
    ['100 µF 420 V 105 °C', '<span class="q">100\u00a0µF</span> <span class="q">420\u00a0V</span> <span class="q">105\u00a0°C</span>'],
    ['– not known, measured at 20 V', '– not known, measured at 20\u00a0V'],
  ])('sets figures as figures and words as words: %s', (text, html) => {
    const row: ComparisonRow = { id: 'any', group: 'Record', label: 'Any', text, range: null, better: null, basis: '', mark: null };
    const sheet: ComparedSheet = {
      ...{ slug: 'one', name: 'One', fullName: 'One', number: null, revision: 'A', kind: 'wall charger', outline: null },
      ...{ ports: [], glyphs: [], rows: [row], strongestPort: null },
    };
    expect(comparisonMarkup([sheet], [], { onlyDiffering: false, hidden: new Set() })).toContain(`>${html}</td>`);
  });
});
