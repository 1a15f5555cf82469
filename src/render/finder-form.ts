import { columnWords } from '../corpus/finder-words.ts';
import { NUMBER_COLUMNS, RANGE_COLUMNS, type ChoiceGroup } from '../corpus/finder-query.ts';
import type { FinderRegister } from '../corpus/finder-row.ts';
import { rangeScale } from '../corpus/range-scale.ts';
import { kindMark } from '../figures/kind-mark.ts';
import { escapeText } from '../figures/markup.ts';

/** Places on a range input, so that a key moves an arrow by a two-hundredth of the scale. */
const RANGE_STEPS = 200;
/** Boxes of one group; more of them are a list to choose from. */
const MOST_BOXES = 10;

const GROUP_WORDS: Readonly<Record<ChoiceGroup, string>> = {
  kind: 'Kind',
  family: 'Topology',
  switches: 'Switch technology',
  controllers: 'Controller',
};

/** The form of the finder. It needs its script, so the page keeps it hidden until the script has filled it. */
export function finderForm(register: FinderRegister): string {
  const groups = (['kind', 'family', 'switches', 'controllers'] as const).map((group) => choiceGroup(group, register));
  const ranges = RANGE_COLUMNS.map((column, index) => rangeGroup(column, register, index > 1));
  return `<div class="finder-form" id="finder-form" role="group" aria-label="Ranges and choices" hidden>${ranges.slice(0, 2).join('')}${groups[0] ?? ''}${ranges.slice(2).join('')}${groups.slice(1).join('')}${columnGroup(register)}</div>`;
}

function rangeGroup(column: (typeof RANGE_COLUMNS)[number], { rows, currency }: FinderRegister, folds: boolean): string {
  const scale = rangeScale(
    column,
    rows.map((row) => row[column]),
  );
  if (scale === null) return '';
  const { long, unit } = columnWords(column, currency);
  const input = (end: 'low' | 'high', words: string): string =>
    `<input type="range" data-handle="${end}" min="0" max="${String(RANGE_STEPS)}" value="${end === 'low' ? '0' : String(RANGE_STEPS)}" aria-label="${long}, ${words}">`;
  const field = (end: 'low' | 'high', words: string): string =>
    `<label>${words} <input type="number" data-field="${end}" step="any" inputmode="decimal" placeholder="${String(end === 'low' ? scale.low : scale.high)}" aria-label="${long}, ${words}${unit === '' ? '' : `, ${escapeText(unit)}`}"></label>`;
  return (
    `<details class="choose" open data-range="${column}"${folds ? ' data-folds' : ''}><summary><b>${long}</b> <span class="q said" data-said>any</span></summary>` +
    `<div class="range"><div data-figure></div>${input('low', 'from')}${input('high', 'to')}</div>` +
    `<p class="range-fields">${field('low', 'from')} ${field('high', 'to')} <span class="q">${escapeText(unit)}</span></p></details>`
  );
}

function choiceGroup(group: ChoiceGroup, { rows, families }: FinderRegister): string {
  const counts = new Map<string, number>();
  for (const row of rows) {
    const value = row[group];
    for (const word of typeof value === 'string' ? [value] : value) counts.set(word, (counts.get(word) ?? 0) + 1);
  }
  if (counts.size === 0) return '';
  const words = [...counts].sort((one, other) => other[1] - one[1] || (one[0] < other[0] ? -1 : 1));
  const labelOf = (word: string): string => escapeText(group === 'family' ? (families[word] ?? word) : word);
  const head = `<summary><b>${GROUP_WORDS[group]}</b> <span class="q said" data-said>any</span></summary>`;
  const folds = group === 'kind' ? '' : ' data-folds';
  if (words.length > MOST_BOXES || group === 'controllers') {
    const options = words.map(([word, count]) => `<option value="${escapeText(word)}">${labelOf(word)} (${String(count)})</option>`);
    return `<details class="choose" open data-choice="${group}"${folds}>${head}<select data-select aria-label="${GROUP_WORDS[group]}"><option value="">any</option>${options.join('')}</select></details>`;
  }
  const boxes = words.map(
    ([word, count]) =>
      `<li><label><input type="checkbox" value="${escapeText(word)}"> <span>${labelOf(word)}</span>${group === 'kind' ? kindSymbol(word) : ''}</label> <span class="q">${String(count)}</span></li>`,
  );
  return `<details class="choose" open data-choice="${group}"${folds}>${head}<ul class="boxes">${boxes.join('')}</ul></details>`;
}

function kindSymbol(kind: string): string {
  return ` <svg class="kind-mark" aria-hidden="true" width="14" height="14" viewBox="0 0 14 14"><path class="point-in" d="${kindMark(kind, 7, 7)}"/></svg>`;
}

/** Which columns the table shows, and in what order. */
function columnGroup({ currency }: FinderRegister): string {
  const items = NUMBER_COLUMNS.map((column) => {
    const { long } = columnWords(column, currency);
    return (
      `<li data-column="${column}"><label><input type="checkbox" data-shown> <span>${long}</span></label>` +
      `<span><button type="button" data-move="-1" aria-label="${long}: one place to the left">←</button><button type="button" data-move="1" aria-label="${long}: one place to the right">→</button></span></li>`
    );
  });
  return `<details class="choose" data-columns><summary><b>Columns</b></summary><ol class="boxes">${items.join('')}</ol></details>`;
}
