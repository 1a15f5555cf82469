import { sentenceCase } from '../units/sentence-case.ts';
import { partAddress } from '../corpus/address.ts';
import { FACT_FIELDS, type PartFacts } from '../corpus/part-facts/part-facts.ts';
import { escapeText } from '../figures/markup.ts';
import { correctionList } from './findings.ts';

/**
 * What the author's fact sheet of a part states, and what was corrected in it.
 *
 * @param number Number of the page; the sheet may be that of another spelling.
 */
export function partFactSheet(facts: PartFacts, number: string): string {
  const stated = FACT_FIELDS.flatMap((field) => {
    const value = facts.stated[field];
    return value === undefined ? [] : [`<div><dt>${sentenceCase(field)}</dt><dd>${valueWords(value)}</dd></div>`];
  });
  const note = facts.note === null ? '' : `<p>${escapeText(facts.note)}</p>`;
  const corrections = facts.corrections.length === 0 ? '' : correctionList(facts.corrections, null);
  return `<div class="fact-sheet"><h2>Fact sheet</h2><p>${keptFor(facts, number)}</p><dl class="facts">${stated.join('')}</dl>${note}${corrections}</div>`;
}

function keptFor(facts: PartFacts, number: string): string {
  if (facts.number !== number)
    return `By the author’s fact sheet this is another spelling of <a class="mono" href="/parts/${partAddress(facts.number)}/">${escapeText(facts.number)}</a>.`;
  const kept = 'Kept by the author for this number. What a teardown leaves out comes from here.';
  return facts.alsoWritten.length === 0 ? kept : `${kept} Also written <span class="q">${escapeText(facts.alsoWritten.join(', '))}</span>.`;
}

function valueWords(value: string): string {
  const words = escapeText(value);
  return /^https?:\/\//.test(value) ? `<a href="${words}" rel="noopener">${words}</a>` : words;
}
