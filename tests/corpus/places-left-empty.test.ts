import { expect, it } from 'vitest';
import { factsOf } from '../../src/corpus/sheet-facts.ts';
import { derive } from '../../src/derived/derive.ts';
import { parseFrontmatter } from '../../src/entry/parse-frontmatter.ts';
import { readEntry } from '../../src/entry/read-entry.ts';

const ENTRY = `---
title: A board with places left empty
device: { maker: Larkmoor, model: LM-Q30, kind: wall charger }
nameplate: { input: 100-240 V~ 50/60 Hz 0.8 A, total: 30 W }
stages: { bridge: rectifier, main: flyback }
parts:
  main:
    Q1: { role: switch, technology: GaN, rating: "650 V, 190 mΩ" }
    Q2: { role: switch, technology: silicon, rating: "650 V, 300 mΩ", fitted: no }
    U1: { role: controller, number: VLR-81C }
    U2: { role: controller, number: VLR-90, fitted: no }
    C1: { role: bulk capacitor, rating: 68 µF 400 V }
    C2: { role: bulk capacitor, rating: 22 µF 400 V, fitted: no }
---

Text.
`;

it('what is not on the board is neither found nor compared', () => {
  const { entry } = readEntry({ slug: 'a', file: 'a', frontmatter: parseFrontmatter(ENTRY).data });
  if (entry === null) throw new Error('no entry');
  const { switches, controllers, comparison } = factsOf(entry, derive(entry));
  expect({ switches, controllers }).toEqual({ switches: ['GaN'], controllers: ['VLR-81C'] });
  const textOf = (id: string) => comparison.find((row) => row.id === id)?.text;
  expect([textOf('controllers'), textOf('bulk')]).toEqual(['VLR-81C', '68 µF 400 V']);
});
