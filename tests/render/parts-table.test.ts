import { join } from 'node:path';
import { expect, test } from 'vitest';
import { partsView } from '../../src/render/parts.ts';
import { entriesIn } from '../demo/entries-in.ts';

const [first] = entriesIn(join(import.meta.dirname, '../../demo/teardowns'));

test('a very long maker or number goes on in a second line; the usual ones stay on one', () => {
  if (first === undefined) throw new Error('no demo entry');
  const { entry, derived } = first;
  expect(partsView(entry, derived)).not.toContain('long');
  const [part, ...others] = entry.parts;
  if (part === undefined) throw new Error('no part');
  const maker = 'Larkmoor Electronic Components and Capacitor Works (Lower Vale)';
  const long = { ...part, maker, number: 'LM-KV-100-420-EXTRAORDINARILY-LONG-ORDERING-CODE' };
  const html = partsView({ ...entry, parts: [long, ...others] }, derived);
  expect(html).toContain('<td class="long"><a href="/makers/');
  expect(html).toContain('<td class="m1 long"><a href="/parts/');
});
