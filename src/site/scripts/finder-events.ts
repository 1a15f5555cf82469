import { MOST_COMPARED } from '../../corpus/comparison-address.ts';
import { CHOICE_GROUPS, readFinderQuery, withChoice, type FinderQuery } from '../../corpus/finder-query.ts';
import { say } from './finder-choices.ts';

/** The parts of the page that the finder works with. */
export interface FinderPage {
  readonly box: HTMLElement;
  readonly form: HTMLElement;
  readonly table: HTMLElement;
  readonly part: (name: string) => HTMLElement | null;
}

/** What is asked and ticked now, and what changes it. Every change is drawn and kept in the address. */
export interface Finder {
  readonly query: () => FinderQuery;
  readonly ask: (next: Partial<FinderQuery>) => void;
  readonly showMore: () => void;
  /** False where as many are ticked as can stand side by side. */
  readonly tick: (slug: string, isOn: boolean) => boolean;
  /** Draws everything anew at the width that the page has now. */
  readonly fit: () => void;
}

/** Boxes and lists of the form. */
export function bindChoices({ form }: FinderPage, { query, ask }: Finder): void {
  form.addEventListener('change', (event) => {
    const field = event.target;
    const holder = field instanceof Element ? field.closest<HTMLElement>('[data-choice]') : null;
    const group = CHOICE_GROUPS.find((each) => each === holder?.dataset['choice']);
    if (holder === null || group === undefined) return;
    const words =
      field instanceof HTMLSelectElement
        ? [field.value].filter((word) => word !== '')
        : [...holder.querySelectorAll<HTMLInputElement>('input:checked')].map((input) => input.value);
    ask(withChoice(query(), group, words));
  });
}

/** Clearing, sorting by a head, and more rows. */
export function bindButtons({ box, form, table, part }: FinderPage, { query, ask, showMore }: Finder): void {
  const clear = part('clear');
  box.addEventListener('click', (event) => {
    const target = event.target instanceof Element ? event.target.closest<HTMLElement>('button') : null;
    const by = target?.dataset['sort'];
    if (target === clear && clear !== null) {
      ask({ ranges: {}, choices: {} });
      form.querySelector<HTMLElement>('summary')?.focus();
    } else if (by !== undefined) {
      const { sort } = query();
      const isFalling = sort.by === by ? !sort.falling : by !== 'name';
      ask({ sort: readFinderQuery([['sort', `${isFalling ? '-' : ''}${by}`]]).query.sort });
      table.querySelector<HTMLElement>(`[data-sort="${by}"]`)?.focus();
    } else if (target !== null && 'all' in target.dataset) showMore();
  });
}

/** The boxes that choose devices for the comparison. */
export function bindTicks({ box, table }: FinderPage, { tick }: Finder): void {
  table.addEventListener('change', (event) => {
    const input = event.target;
    if (!(input instanceof HTMLInputElement) || input.dataset['compare'] === undefined) return;
    const isTaken = tick(input.dataset['compare'], input.checked);
    if (!isTaken) input.checked = false;
    say(box, isTaken ? '' : `At most ${String(MOST_COMPARED)} devices stand side by side: take one away first.`);
  });
}
