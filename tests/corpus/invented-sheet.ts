import type { CorpusPart, CorpusSheet } from '../../src/corpus/corpus-sheet.ts';
import type { SheetTraits } from '../../src/corpus/sheet-traits.ts';

/** An invented sheet; what a test does not name has a plain value. */
export function inventedSheet(given: Partial<CorpusSheet> & { readonly slug: string }): CorpusSheet {
  return {
    number: null,
    revision: 'A',
    maker: 'Larkmoor',
    name: given.slug,
    kind: 'wall charger',
    published: '2026-03-14',
    outline: [68, 52, 29],
    ports: [{ id: 'C1', connector: 'USB-C' }],
    ratedWatts: 65,
    densityWPerCm3: 0.63,
    bulkMicrofarads: 82,
    topology: 'bridge · active-clamp flyback',
    family: 'active-clamp-flyback',
    glyphs: ['rectifier', 'active-clamp-flyback'],
    over: 0,
    straddles: 0,
    withheld: 0,
    within: 1,
    partsIdentified: 30,
    parts: [],
    partMakers: [...new Set((given.parts ?? []).map((part) => part.maker).filter((maker) => maker !== null))],
    formerAddresses: [],
    traits: inventedTraits({}),
    digest: JSON.stringify(given),
    ...given,
  };
}

/** An invented part; its role is a controller unless the test names another. */
export function inventedPart(given: Partial<CorpusPart> & { readonly number: string }): CorpusPart {
  return { maker: 'Ostrel', role: 'controller', stage: 'main', references: ['U1'], rating: null, ...given };
}

/** Invented traits: a cased device of which nothing else is known. */
export function inventedTraits(given: Partial<SheetTraits>): SheetTraits {
  return {
    basis: 'cased',
    massGrams: null,
    wattsPerKilogram: null,
    efficiency: null,
    stress: [],
    isolated: true,
    rectification: 'not known',
    fanOut: [],
    ports: [],
    sharing: [],
    values: [],
    evidence: { ratedPower: 'printed', density: 'computed', mass: null, specificPower: null, efficiency: null, bulk: 'marked' },
    ...given,
  };
}
