import type { CorpusPart, CorpusSheet } from '../src/corpus/corpus-sheet.ts';
import type { TraitValue } from '../src/corpus/sheet-traits.ts';
import { seededRandom } from './random.ts';

/** Invented sheets with the answer beside them: the platform that each was made from, by address. */
export interface GeneratedFamilies {
  readonly sheets: readonly CorpusSheet[];
  readonly platforms: ReadonlyMap<string, number>;
}

/** Sheets made from one platform: each has as many near ones as a page shows. */
const MEMBERS = 6;

interface Chain {
  readonly family: string;
  readonly glyphs: readonly string[];
  readonly topology: string;
}

interface Platform {
  readonly chain: Chain;
  readonly parts: readonly CorpusPart[];
  readonly values: readonly TraitValue[];
  readonly ports: readonly string[];
  readonly watts: number;
  readonly outline: readonly [number, number, number];
}

const CHAINS: readonly [Chain, ...Chain[]] = [
  { family: 'flyback', glyphs: ['rectifier', 'flyback'], topology: 'bridge · flyback' },
  {
    family: 'active-clamp-flyback',
    glyphs: ['rectifier', 'active-clamp-flyback', 'buck'],
    topology: 'bridge · active-clamp flyback · buck',
  },
  {
    family: 'boost-pfc-llc-half-bridge',
    glyphs: ['rectifier', 'boost-pfc', 'llc-half-bridge', 'buck', 'buck', 'buck'],
    topology: 'bridge · boost PFC · LLC half bridge · 3 × buck',
  },
];

const LAYOUTS: readonly [readonly string[], ...(readonly string[])[]] = [
  ['USB-C 30 W'],
  ['USB-C 65 W', 'USB-C 30 W', 'USB-A 18 W'],
  ['USB-C 100 W', 'USB-C 100 W', 'USB-C 30 W', 'USB-A 18 W'],
  ['USB-C 65 W', 'USB-C 65 W'],
];

/** Values from the rows that parts are sold in. */
const SERIES = ['1', '1.5', '2.2', '3.3', '4.7', '6.8', '10', '15', '22', '33', '47', '68', '100', '220', '330', '470'] as const;

const VALUE_KINDS: readonly (readonly [string, string])[] = [
  ['bulk-capacitor', 'µF'],
  ['output-capacitor', 'µF'],
  ['y-capacitor', 'nF'],
  ['x-capacitor', 'nF'],
  ['supply-capacitor', 'µF'],
  ['current-sense-resistor', 'mΩ'],
  ['inductor', 'µH'],
];

type Random = () => number;

/**
 * `count` sheets in platforms of six. Platforms draw their parts from pools in which a few are popular, so that unrelated sheets share much;
 * of one platform's members one value in four, one chip or switch in seven and one port layout in six are changed, beside label and size.
 */
export function generateFamilies(count: number, seed = 1): GeneratedFamilies {
  const random = seededRandom(seed);
  const sheets: CorpusSheet[] = [];
  const platforms = new Map<string, number>();
  for (let platform = 0; sheets.length < count; platform += 1) {
    const made = platformOf(random, count);
    for (let member = 0; member < MEMBERS && sheets.length < count; member += 1) {
      const sheet = memberOf(random, made, sheets.length);
      platforms.set(sheet.slug, platform);
      sheets.push(sheet);
    }
  }
  return { sheets, platforms };
}

/** Popular ones much more often than rare ones: the square of an even draw. */
function popular(random: Random, size: number): number {
  return Math.floor(random() ** 2 * size);
}

function pick<T>(random: Random, list: readonly [T, ...T[]]): T {
  return list[Math.floor(random() * list.length)] ?? list[0];
}

function platformOf(random: Random, count: number): Platform {
  const pool = Math.max(12, Math.floor(count / 60));
  const part = (role: string, prefix: string, size: number): CorpusPart => ({
    maker: 'Velloric',
    number: `${prefix}-${String(popular(random, size))}`,
    role,
    stage: 'main',
    references: ['U1'],
    rating: null,
  });
  return {
    chain: pick(random, CHAINS),
    parts: [
      part('controller', 'VLR', pool),
      part('controller', 'VLS', pool),
      part('primary-switch', 'NBK', pool),
      part('synchronous-rectifier', 'DVF', pool),
      part('protocol-controller', 'QRN', 12),
    ],
    values: VALUE_KINDS.map(([kind, unit]) => ({ kind, words: `${pick(random, SERIES)} ${unit}` })),
    ports: pick(random, LAYOUTS),
    watts: pick(random, [30, 45, 65, 100, 140]),
    outline: [50 + Math.floor(random() * 50), 40 + Math.floor(random() * 30), 25 + Math.floor(random() * 10)],
  };
}

function memberOf(random: Random, platform: Platform, index: number): CorpusSheet {
  const slug = `unit-${String(index).padStart(5, '0')}`;
  const values = platform.values.map((value) =>
    random() < 0.25 ? { kind: value.kind, words: `${pick(random, SERIES)} ${value.words.split(' ')[1] ?? ''}` } : value,
  );
  const parts = platform.parts.map((part) =>
    random() < 0.15 ? { ...part, number: `${part.number.split('-')[0] ?? ''}-${String(popular(random, 60))}` } : part,
  );
  const ports = random() < 1 / 6 ? pick(random, LAYOUTS) : platform.ports;
  const [length, width, height] = platform.outline;
  return {
    slug,
    digest: slug,
    number: null,
    revision: 'A',
    maker: pick(random, ['Skelderby', 'Fennimoor', 'Ostlewick', 'Larkmoor']),
    name: slug,
    kind: 'wall charger',
    published: '2026-03-14',
    outline: [length + Math.floor(random() * 6), width, height],
    ports: ports.map((words, place) => ({ id: `P${String(place)}`, connector: words.startsWith('USB-A') ? 'USB-A' : 'USB-C' })),
    ratedWatts: platform.watts,
    densityWPerCm3: null,
    bulkMicrofarads: null,
    topology: platform.chain.topology,
    family: platform.chain.family,
    glyphs: platform.chain.glyphs,
    over: 0,
    straddles: 0,
    withheld: 0,
    within: 1,
    partsIdentified: parts.length,
    parts,
    partMakers: ['Velloric'],
    formerAddresses: [],
    traits: {
      basis: 'cased',
      massGrams: null,
      wattsPerKilogram: null,
      efficiency: null,
      stress: [],
      isolated: true,
      rectification: 'synchronous',
      fanOut: [],
      ports,
      sharing: [`total ${String(platform.watts)} W`],
      values,
      evidence: { ratedPower: 'printed', density: null, mass: null, specificPower: null, efficiency: null, bulk: null },
    },
  };
}
