import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { answeredIn, bySlug, entriesIn, saidOf } from './entries-in.ts';

const ENTRIES = entriesIn(join(import.meta.dirname, '../../demo/teardowns'));

/** What each sheet is meant to show, and which of it the author answers. */
const MEANT: readonly { readonly slug: string; readonly found: readonly string[]; readonly answered: readonly string[] }[] = [
  { slug: 'crossgarth-bothy-45', found: [], answered: [] },
  {
    slug: 'fennimoor-deskway-100',
    found: ['capacitor-voltage-margin at C21, C22', 'capacitor-voltage-margin at C5', 'shares-above-total at C1 + A1'],
    answered: ['capacitor-voltage-margin at C21, C22', 'shares-above-total at C1 + A1'],
  },
  { slug: 'marlhythe-causeway-100', found: [], answered: [] },
  {
    slug: 'ostlewick-lantern-140',
    found: ['capacitor-voltage-margin at C21, C22, C23', 'capacitor-voltage-margin at C5'],
    answered: ['capacitor-voltage-margin at C5'],
  },
  {
    slug: 'skelderby-trine-65',
    found: ['capacitor-voltage-margin at C21', 'capacitor-voltage-margin at C22'],
    answered: ['capacitor-voltage-margin at C22'],
  },
  {
    slug: 'tillmere-nub-20',
    found: ['capacitor-voltage-margin at C1, C2', 'rectifier-voltage-margin at D3', 'switch-voltage-margin at Q1'],
    answered: ['rectifier-voltage-margin at D3', 'switch-voltage-margin at Q1'],
  },
  {
    slug: 'wendlestone-fairlead-92',
    found: [
      'capacitor-voltage-margin at C11, C12',
      'capacitor-voltage-margin at C3, C4, C5',
      'protection-margin at F1',
      'switch-voltage-margin at Q2, Q3',
    ],
    answered: ['capacitor-voltage-margin at C3, C4, C5', 'switch-voltage-margin at Q2, Q3'],
  },
  { slug: 'yarrowdene-stub-30', found: ['capacitor-voltage-margin at C1', 'capacitor-voltage-margin at C2'], answered: [] },
];

/** Rules that only show when all sheets lie side by side; the test of the prepared folder looks at them. */
const ACROSS: ReadonlySet<string> = new Set(['part-ratings-differ']);

describe('the demo shows the findings it is about, and no others', () => {
  test.each(MEANT)('$slug', ({ slug, found, answered }) => {
    const sheet = bySlug(ENTRIES, slug);
    expect(saidOf(sheet, ['error', 'warning'])).toEqual(found);
    expect(answeredIn(sheet)).toEqual(answered);
  });

  test('every answer answers something', () => {
    const answers = ENTRIES.flatMap(({ slug, entry }) => entry.answers.filter((answer) => !ACROSS.has(answer.to)).map((answer) => `${slug} ${answer.to} ${answer.at ?? ''}`),
    );
    expect(answers.length).toBe(MEANT.flatMap(({ answered }) => answered).length);
  });
});

describe('the numbers behind the findings', () => {
  /** Ratio as two decimals print it, and the verdict. */
  function judged(slug: string, reference: string): { ratio: string; verdict: string } {
    const row = bySlug(ENTRIES, slug).derived.stress.find((candidate) => candidate.references.includes(reference));
    if (row === undefined) throw new Error(`${slug} ${reference}`);
    return { ratio: 'missing' in row.ratio ? '' : row.ratio.nominal.toFixed(2), verdict: row.verdict };
  }

  test('the 140 W unit runs its bulk capacitor at 0.94 of its rating, 395 V on 420 V', () => {
    expect(judged('ostlewick-lantern-140', 'C5')).toEqual({ ratio: '0.94', verdict: 'over' });
  });

  test('the two labels of one platform differ in that capacitor: 0.93 and 0.87', () => {
    expect(judged('fennimoor-deskway-100', 'C5')).toEqual({ ratio: '0.93', verdict: 'over' });
    expect(judged('marlhythe-causeway-100', 'C5')).toEqual({ ratio: '0.87', verdict: 'within' });
  });

  test('the diode of the 20 W unit blocks 40 V of 45 V', () => {
    expect(judged('tillmere-nub-20', 'D3')).toEqual({ ratio: '0.89', verdict: 'over' });
  });

  test.each(['Q1', 'Q2', 'Q3'])('the verdict on %s of the 65 W unit is withheld, since nobody could count its turns', (reference) => {
    const row = bySlug(ENTRIES, 'skelderby-trine-65').derived.stress.find((candidate) => candidate.references.includes(reference));
    expect(row?.verdict).toBe('withheld');
    expect(row !== undefined && 'missing' in row.stress ? row.stress.needs.join() : '').toMatch(/turns/u);
  });
});
