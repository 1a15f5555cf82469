import { join } from 'node:path';
import { expect, test } from 'vitest';
import { withoutOutline } from '../../src/figures/text-outline.ts';
import { sharingFaces } from '../../src/pipeline/sharing-images.ts';
import { summaryOf } from '../../src/pipeline/summary-of.ts';
import { sharingAlt, sharingFields } from '../../src/render/sharing-fields.ts';
import { sharingImage } from '../../src/render/sharing-image.ts';
import { entriesIn } from '../demo/entries-in.ts';

const SHEETS = entriesIn(join(import.meta.dirname, '../../demo/teardowns')).map(({ slug, entry, derived }) => ({
  slug,
  summary: { ...summaryOf({ entry, derived }), digest: '' },
}));
const FACES = sharingFaces();
const SITE = { name: 'The Ropewalk Bench' };

function summaryNamed(slug: string): (typeof SHEETS)[number]['summary'] {
  const found = SHEETS.find((sheet) => sheet.slug === slug);
  if (found === undefined) throw new Error(`no sheet ${slug}`);
  return found.summary;
}

test('the title block says what the sheet says', () => {
  const sheet = summaryNamed('ostlewick-lantern-140');
  expect(sharingFields(sheet)).toEqual({
    name: ['Ostlewick', 'Lantern 140'],
    power: '140\u00a0W',
    density: '0.784\u00a0W/cm³',
    size: '96 × 62 × 30',
    kind: 'wall charger',
    issue: [
      { label: 'Number', value: 'RWB-0034', at: 0 },
      { label: 'Revision', value: sheet.revision, at: 0.4 },
      { label: 'Date of issue', value: '2026-07-12', at: 0.66 },
    ],
  });
});

test('a cylinder is written by its diameter, and drawn round', () => {
  const sheet = summaryNamed('wendlestone-fairlead-92');
  expect(sharingFields(sheet).size).toBe('⌀34 × 80');
  expect(sharingImage(sheet, SITE, FACES)).toContain('<circle class="wide"');
  expect(sharingAlt(sheet)).toContain('⌀34 × 80 mm');
});

test.each(SHEETS)('the image of $slug holds no text that a machine would set in a font of its own', ({ summary }) => {
  const svg = sharingImage(summary, SITE, FACES);
  expect(svg).not.toMatch(/<text|font-family|NaN|undefined|Infinity/u);
  expect(svg).toBe(sharingImage(summary, SITE, FACES));
});

test.each(SHEETS)('every character of $slug has an outline', ({ summary }) => {
  const { name, power, density, size, kind, issue } = sharingFields(summary);
  const said = [...name, power, density, size, kind, ...issue.flatMap(({ label, value }) => [label, value])].join('');
  expect(withoutOutline(said, FACES.mono)).toEqual([]);
});

test('what is not known is a dash, and the outline says what to do', () => {
  const bare = { ...summaryNamed('tillmere-nub-20'), outline: null, ratedWatts: null, densityWPerCm3: null, number: null };
  expect(sharingFields(bare)).toMatchObject({ power: '–', density: '–', size: '–' });
  expect(sharingAlt(bare)).toBe('Drawing sheet of the wall charger Tillmere Nub 20: outline, title block and power path.');
  expect(sharingImage(bare, SITE, FACES)).not.toMatch(/NaN|null/u);
});

test('a name too long for the block is set smaller, never over its edge', () => {
  const long = { ...summaryNamed('tillmere-nub-20'), name: 'Extended Wall Charger Series Four Hundred' };
  const inBlock = [...sharingImage(long, SITE, FACES).matchAll(/[ML](\d+(?:\.\d+)?) (\d+(?:\.\d+)?)/gu)]
    .map(([, x, y]) => ({ x: Number(x), y: Number(y) }))
    .filter(({ y }) => y > 80 && y < 178);
  // The frame is at 1154; only the letters of the zones and their line stand outside, and those are lower down.
  expect(Math.max(...inBlock.map(({ x }) => x))).toBeLessThanOrEqual(1154);
});

test('a recall stands before the name, with its sign and in words', () => {
  const recall = { authority: 'The market office', date: '2026-07-10', url: 'https://office.example/20', hazard: 'the prongs come off' };
  const sheet = { ...summaryNamed('tillmere-nub-20'), recall };
  expect(sharingAlt(sheet)).toMatch(/^Recalled\. Drawing sheet/u);
  expect(sharingImage(sheet, SITE, FACES)).toContain('class="c"');
  expect(sharingImage(summaryNamed('tillmere-nub-20'), SITE, FACES)).not.toContain('class="c"');
});
