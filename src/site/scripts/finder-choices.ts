import { CHOICE_GROUPS, type FinderQuery } from '../../corpus/finder-query.ts';

const THIN_SPACE = '\u202F';

/** Puts words into an element, where there is one. */
export function set(element: HTMLElement | null, words: string): void {
  if (element !== null) element.textContent = words.replaceAll('\u2009', THIN_SPACE);
}

/** Shows in the form which choices are made. */
export function showChoices(form: HTMLElement, query: FinderQuery): void {
  for (const holder of form.querySelectorAll<HTMLElement>('[data-choice]')) {
    const group = CHOICE_GROUPS.find((each) => each === holder.dataset['choice']);
    const words = group === undefined ? [] : (query.choices[group] ?? []);
    for (const input of holder.querySelectorAll<HTMLInputElement>('input')) input.checked = words.includes(input.value);
    const select = holder.querySelector('select');
    if (select !== null) select.value = words[0] ?? '';
    set(holder.querySelector<HTMLElement>('[data-said]'), words.length === 0 ? 'any' : `${String(words.length)} chosen`);
  }
}

/** Says what was not understood or does not go; empty words take it away. */
export function say(box: HTMLElement, words: string): void {
  const refused = box.querySelector<HTMLElement>('[data-refused]');
  if (refused === null) return;
  refused.textContent = words;
  refused.hidden = words === '';
}
