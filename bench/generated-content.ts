import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { seededRandom } from './random.ts';

const WORDS =
  'the board carries two bulk capacitors beside a transformer wound with triple insulated wire and the controller stands close to its sense resistor so that every reading on this bench agrees with what its label says about power voltage current temperature and size while silicone holds parts against the shell'.split(
    ' ',
  );

type Random = () => number;

function pick<T>(random: Random, list: readonly [T, ...T[]]): T {
  return list[Math.floor(random() * list.length)] ?? list[0];
}

function prose(random: Random, words: number): string {
  const paragraphs: string[] = [];
  for (let written = 0; written < words; written += 100) {
    const sentence = Array.from({ length: 100 }, (_, index) => {
      const word = pick(random, ['the', ...WORDS]);
      return index % 17 === 16 ? `${word}.` : word;
    });
    paragraphs.push(`${written % 500 === 0 ? '## A closer look\n\n' : ''}${sentence.join(' ')}.`);
  }
  return paragraphs.join('\n\n');
}

function parts(random: Random, stage: string, count: number, first: number): string {
  const rows = [`  ${stage}:`];
  for (let index = 0; index < count; index += 1) {
    const number = first + index;
    const line = pick(random, [
      `R${number}: { role: current-sense resistor, rating: ${pick(random, ['R005', 'R010', '20 mΩ'])} ±1 % }`,
      // One number has one rating, as in a well-kept register; contradictions would be findings in every entry.
      `C${number}: { role: output capacitor, maker: Hallimar, number: HMR-${number % 39}, rating: ${['470 µF 35 V polymer', '22 µF 35 V', '2 × 10 µF 50 V X7R'][number % 3] ?? ''} }`,
      `Q${number}: { role: switch, maker: Nembrook, number: NBK-${number}, rating: "${(stage === 'main' ? ['650 V, 190 mΩ', '700 V, 140 mΩ'] : ['40 V, 6 mΩ', '60 V, 4 mΩ'])[number % 2] ?? ''} datasheet", package: DFN 5×6 }`,
      `U${number}: { role: controller, maker: Velloric, number: VLR-${number % 50}, marking: "${number} 2548" }`,
    ]);
    rows.push(`    ${line}`);
  }
  return rows.join('\n');
}

function entry(index: number): string {
  const random = seededRandom(index + 1);
  const watts = pick(random, [100, 120, 140]);
  const day = String(1 + (index % 28)).padStart(2, '0');
  return `---
title: Generated device ${index}
number: G-${String(index).padStart(5, '0')}
summary: A generated ${watts} W charger with four ports, for measuring the build and nothing else.
status: published
published: 2026-0${1 + (index % 9)}-${day}
device: { maker: ${pick(random, ['Skelderby', 'Fennimoor', 'Ostlewick'])}, name: Unit ${index}, model: GU-${index}, kind: wall charger, released: 2026-01, price: 62 USD }
nameplate: { input: 100-240 V~ 50/60 Hz 1.8 A, output: [${watts} W max], total: ${watts} W }
body: { size: ${60 + (index % 20)} × 52 × 30 mm ± 0.3 mm, mass: ${180 + (index % 40)} g ± 1 g, basis: cased, prongs: folded }
ports:
  C1: { connector: USB-C, power: 100 W, offers: [5 V 3 A, 9 V 3 A, 15 V 3 A, 20 V 5 A, PPS 3.3–21 V 5 A] }
  C2: { same as: C1 }
  C3: { connector: USB-C, power: 30 W, offers: 0x0A01912C 0x0002D12C 0x0004B0C8 }
  A1: { connector: USB-A, power: 18 W, offers: [5 V 3 A, 9 V 2 A] }
sharing:
  total: ${watts} W
  policy: shared
  alike: [[C1, C2]]
  evidence: measured
  allocations: { C1: 100 W, C3: 30 W, A1: 18 W, C1 + C2: 50 W + 50 W, C1 + C3: 65 W + 30 W, C1 + A1: 65 W + 18 W, C3 + A1: 15 W shared, C1 + C2 + C3: 45 W + 30 W + 20 W }
  on new plug: drops
stages:
  input: input filter
  bridge: rectifier
  pfc: { is: boost PFC, mode: critical conduction, bus: 392 V measured }
  main: { is: LLC half bridge, turns: 35:4:4, Lr: 62 µH, Cr: 27 nF, Lm: 480 µH, output: 22.5 V measured }
  out C1: { is: buck, feeds: [C1] }
  out C2: { same as: out C1, feeds: [C2] }
  out C3: { is: buck, feeds: [C3, A1] }
parts:
  input:
    F1: { role: input fuse, rating: T3.15 A 250 VAC }
    CX1: { role: X capacitor, rating: 0.33 µF X2 310 VAC }
    RX: { role: bleed resistor, rating: 2 × 1 MΩ, arrangement: series }
    CY1: { role: Y capacitor, rating: 1 nF Y1 400 VAC }
  bridge:
    BD1: { role: bridge rectifier, rating: 800 V 4 A datasheet }
  pfc:
    CB: { role: bulk capacitor, rating: ${pick(random, ['82 µF 420 V', '100 µF 450 V', '120 µF 420 V'])} 105 °C }
${parts(random, 'main', 24, 100)}
${parts(random, 'out C1', 15, 200)}
${parts(random, 'out C3', 15, 300)}
---

${prose(random, 1500)}
`;
}

/** Writes a content folder of `count` entries of realistic size: 60 parts, 4 ports, 1500 words. The same for every run. */
export function generateContent(folder: string, count: number): void {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'site.yaml'), 'name: Bench\nauthor: Generator\ndescription: Generated entries.\n');
  for (let index = 0; index < count; index += 1) {
    const home = join(folder, 'teardowns', `unit-${index}`);
    mkdirSync(home, { recursive: true });
    writeFileSync(join(home, 'index.md'), entry(index));
  }
}
