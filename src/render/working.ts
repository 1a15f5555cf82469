import { escapeText } from '../figures/markup.ts';
import { FORMULAS } from '../formulas/index.ts';
import type { Derived } from '../derived/derived.ts';
import type { Entry } from '../entry/entry.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
import { restsOnAssumption } from '../values/trace.ts';
import { isMainsDevice } from './caution-box.ts';
import { fold } from './fold.ts';
import { benchLink } from './made-by.ts';
import { quantity, quantityWords } from './quantity.ts';
import { workingAnchor } from './references.ts';
import { counted } from '../units/counted.ts';
import { sentenceCase } from '../units/sentence-case.ts';
import { shortStanding } from '../values/short-standing.ts';
import { sentence } from './words.ts';

const TITLES: ReadonlyMap<string, string> = new Map(FORMULAS.map((formula) => [formula.id, formula.title]));
const SYMBOLS: ReadonlyMap<string, Readonly<Record<string, { readonly meaning: string; readonly unit: string }>>> = new Map(
  FORMULAS.map((formula) => [formula.id, formula.inputs]),
);

/** Every value that was computed, with the formula, its inputs and how each of them is known, and the interval. */
export function workingView(entry: Entry, derived: Derived): string {
  const computed = Object.entries(derived.named).filter(([, known]) => !isMissing(known) && known.origin.evidence === 'computed');
  const withheld = Object.entries(derived.named).filter(([name, known]) => isMissing(known) && concerns(name, entry));
  const items = computed.map(([name, known]) => workingItem(name, known));
  const missing = withheld.map(
    ([name, known]) =>
      `<li id="${workingAnchor(name)}"><div><b>${escapeText(sentenceCase(name.replaceAll('-', ' ')))}</b></div><div class="w-inputs faded">${isMissing(known) ? sentence(withheldWords(known)) : ''}</div><div class="w-out faded">withheld</div></li>`,
  );
  const held = missing.length === 0 ? '' : `, ${missing.length} withheld`;
  return fold(
    `<b>${counted(items.length, 'value')}</b> computed${held}: formula, inputs and interval of each`,
    `<ul class="working">${items.join('')}${missing.join('')}</ul>`,
  );
}

const OF_MAINS: ReadonlySet<string> = new Set([
  'high-line',
  'low-line',
  'peak-voltage',
  'bulk-capacitance',
  'bulk-per-watt',
  'bulk-voltage',
  'stored-energy',
  'bleed-resistance',
  'time-to-safe',
  'y-current',
]);

/** Whether a missing value is one that a device of this kind could have: nobody misses the bulk capacitor of a car adapter. */
function concerns(name: string, entry: Entry): boolean {
  if (OF_MAINS.has(name)) return isMainsDevice(entry);
  return !name.startsWith('battery') || entry.device.kind === 'power bank';
}

function withheldWords(known: Extract<Known, { missing: true }>): string {
  return known.needs.length === 0 ? known.reason : `${known.reason}; needs ${known.needs.join(', ')}`;
}

function workingItem(name: string, known: Known): string {
  if (isMissing(known) || known.origin.evidence !== 'computed') return '';
  const { formula, inputs } = known.origin;
  const title = TITLES.get(formula) ?? formula.replaceAll('-', ' ');
  const link = `<a href="/methods/${formula}/">${escapeText(title)}</a>`;
  const assumption = restsOnAssumption(known) ? '<p class="note">Rests on an assumption.</p>' : '';
  const interval = quantityWords(known, { interval: true });
  const nominal = quantityWords(known);
  const spread = interval === nominal ? '' : `<p class="note q">${escapeText(interval)}</p>`;
  return (
    `<li id="${workingAnchor(name)}"><div><b>${escapeText(sentenceCase(name.replaceAll('-', ' ')))}</b><p class="note">${link}</p></div>` +
    `<ul class="w-inputs">${Object.entries(inputs)
      .map(([key, input]) => inputLine(formula, key, input))
      .join('')}</ul><div class="w-out">${quantity(known)}${spread}${assumption}</div></li>`
  );
}

function inputLine(formula: string, key: string, input: Value): string {
  const symbol = SYMBOLS.get(formula)?.[key];
  const meaning = symbol?.meaning ?? key;
  const showing = symbol?.unit === '1' ? { unit: '1' } : {};
  return `<li><span>${escapeText(meaning)}</span> ${quantity(input, showing)} <span class="soft">${originWords(input)}</span></li>`;
}

/** How an input is known; the instrument and the method of the bench that made it are links. */
function originWords({ origin }: Value): string {
  if (origin.evidence === 'computed') return escapeText(`computed, ${TITLES.get(origin.formula) ?? origin.formula}`);
  if (origin.evidence === 'assumed')
    return sentence(`assumed: ${origin.reason}${origin.source.standing === 'read' ? '' : ` (${shortStanding(origin.source.standing)})`}`);
  const { instrument, method } = origin;
  return [
    origin.evidence,
    instrument === undefined ? '' : `instrument ${benchLink(instrument, instrument)}`,
    method === undefined ? '' : benchLink(method, 'method'),
  ]
    .filter((piece) => piece !== '')
    .join(', ');
}
