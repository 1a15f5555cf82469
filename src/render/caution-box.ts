import { escapeText } from '../figures/markup.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { Derived } from '../derived/derived.ts';
import type { Entry } from '../entry/entry.ts';
import { quantity, quantityWords } from './quantity.ts';
import { partAnchor, referenceList, workingAnchor } from './references.ts';
import { stageOf } from '../stages/index.ts';
import { sentence } from './words.ts';

/** What a caution box holds; each line is ready markup. */
export interface Caution {
  readonly title: string;
  /** The value that stands large, where there is one. */
  readonly value: string | null;
  readonly paragraphs: readonly string[];
  /** The flash stands for mains voltage only; every other caution has the plain sign. */
  readonly sign: 'flash' | 'plain';
}

const SIGNS = { flash: 'M12 6.2 9 11.6h3.6L10 16.4', plain: 'M11 7v5.4M11 14.6v1.6' } as const;

const NO_VERDICT = 'A look inside is not a safety test, and nothing here is a verdict of compliance.';
const MAINS_FIXED =
  'Never power an opened adapter from the mains. Work on mains equipment follows local codes and belongs to qualified people. ' +
  NO_VERDICT;
const LITHIUM_FIXED =
  'Lithium cells hold their energy with every switch off, and no resistor takes it out. Never pierce, bend, heat or short a cell, and never charge a swollen or opened one: it can catch fire hours later. ' +
  'Transport and disposal follow local rules. ';
const DIRECT_FIXED =
  'A vehicle socket or a laboratory supply feeds far more current than a board survives: an opened adapter goes on a current-limited supply with a fuse, or on none. Work on a vehicle’s wiring follows local rules. ' +
  NO_VERDICT;

/** The caution that a device of this kind carries in its fixed place. */
export function cautionOf(entry: Entry, derived: Derived): Caution {
  if (entry.device.kind === 'power bank' || entry.stages.some((stage) => stage.kind === 'battery-pack')) return lithiumCaution(entry);
  return isMainsDevice(entry)
    ? mainsCaution(derived)
    : { title: 'Current in an opened unit', value: null, paragraphs: [DIRECT_FIXED], sign: 'plain' };
}

/** The box itself: nothing else on a page looks like it. */
export function cautionBox(caution: Caution): string {
  const value = caution.value === null ? '' : `<p class="caution-value">${caution.value}</p>`;
  return (
    `<aside class="caution" aria-label="Caution">` +
    `<h3><svg aria-hidden="true" width="22" height="20" viewBox="0 0 22 20"><path d="M11 1.6 20.6 18.6H1.4Z"/><path d="${SIGNS[caution.sign]}"/></svg>${escapeText(caution.title)}</h3>` +
    `${value}${caution.paragraphs.map((paragraph) => `<p>${paragraph}</p>`).join('')}</aside>`
  );
}

/** Whether mains voltage reaches the device's inside. */
export function isMainsDevice(entry: Entry): boolean {
  return (
    entry.nameplate.inputs.some((input) => input.kind === 'AC') ||
    entry.stages.some((stage) => ['primary', 'barrier'].includes(stageOf(stage.kind)?.side ?? 'none')) ||
    (entry.nameplate.inputs.length === 0 && ['wall charger', 'desktop charger'].includes(entry.device.kind))
  );
}

function lithiumCaution(entry: Entry): Caution {
  const energy = entry.nameplate.capacity?.energy?.quantity.written ?? null;
  const mains = isMainsDevice(entry) ? [MAINS_FIXED] : [NO_VERDICT];
  return {
    title: 'Energy in the cells',
    value: energy === null ? null : `<span class="q">${escapeText(energy)}</span>`,
    paragraphs: [LITHIUM_FIXED, ...mains],
    sign: 'plain',
  };
}

function mainsCaution(derived: Derived): Caution {
  const { bulk } = derived;
  const names = referenceList(bulk.references);
  const first = bulk.references[0];
  const name = first === undefined ? 'The bulk capacitor' : `<a class="q" href="#${partAnchor(first)}">${escapeText(names)}</a>`;
  const keeps = bulk.references.length > 1 ? 'keep their charge' : 'keeps its charge';
  const value = isMissing(bulk.energy)
    ? '<span class="q">not known</span>'
    : quantity(bulk.energy, { link: `#${workingAnchor('stored-energy')}` }) +
      (isMissing(bulk.voltage) ? '' : ` at ${quantity(bulk.voltage)}`);
  const why = isMissing(bulk.energy)
    ? ` The energy cannot be computed (${sentence(bulk.energy.reason)}): take it as charged and dangerous.`
    : '';
  return {
    title: 'Stored energy in an opened unit',
    value,
    paragraphs: [`${name} ${keeps} after unplugging.${why} ${wayDown(bulk.bleed, bulk.timeToSafe)}`, MAINS_FIXED],
    sign: 'flash',
  };
}

/** People wait in minutes: from 100 s on the time is given in them, from two hours on in hours. */
function timeUnit(seconds: number): { readonly unit?: string } {
  return seconds < 100 ? {} : { unit: seconds < 7200 ? 'min' : 'h' };
}

function wayDown(bleed: Known, time: Known): string {
  if (isMissing(bleed)) return 'No way down is known, so it can stay charged for hours or days: measure before touching.';
  const through = `The only known way down is ${quantity(bleed)}`;
  if (isMissing(time)) return `${through}; how long it takes is not known: measure before touching.`;
  return `${through}: <strong class="q">${escapeText(quantityWords(time, { interval: true, ...timeUnit(time.nominal) }))} to 60\u00a0V</strong>, longer if that path is open. Measure before touching.`;
}
