import { answerSearch, neededShards, type SearchAnswer } from '../../corpus/search-answer.ts';
import type { FoundDocument, SearchStart, Shard } from '../../corpus/search-index.ts';
import { readSearch, type SearchQuery } from '../../corpus/search-query.ts';
import { escapeText } from '../../figures/markup.ts';

/** Results of a group shown at first. */
const FIRST_RESULTS = 8;
const MOST_RESULTS = 100;

/** How long the reader's hand rests before an answer is fetched, in ms. */
const REST = 120;

/** What the page holds for the search. */
interface SearchForm {
  readonly form: HTMLFormElement;
  readonly input: HTMLInputElement;
  readonly said: HTMLElement;
  readonly results: HTMLElement;
  /** Folder of the index, and the base path of the site. */
  readonly index: string;
  readonly base: string;
}

/** Answers the search field of the page: at once for what the address asks, then as the reader types. */
export function startSearch(): void {
  const box = document.querySelector<HTMLElement>('#search');
  const search = box === null ? null : searchFormOf(box);
  if (box === null || search === null) return;
  const { input, results } = search;
  // Groups that the reader has opened.
  const opened = new Set<string>();
  const ask = answering(search, opened);
  listenToWords(search, () => {
    opened.clear();
  }, ask); // prettier-ignore
  results.addEventListener('click', (event) => {
    const group = event.target instanceof HTMLElement ? event.target.dataset['more'] : undefined;
    if (group === undefined) return;
    opened.add(group);
    void ask().then(() => results.querySelectorAll<HTMLElement>(`[data-group="${group}"] a`)[FIRST_RESULTS]?.focus());
  });
  box.addEventListener('keydown', (event) => {
    moveByKeys(event, search);
  });
  input.value = new URL(location.href).searchParams.get('q') ?? '';
  if (input.value.trim() !== '') void ask();
  else input.focus();
}

function searchFormOf(box: HTMLElement): SearchForm | null {
  const [form, input] = [box.querySelector('form'), box.querySelector<HTMLInputElement>('input[type=search]')];
  const [said, results] = [box.querySelector<HTMLElement>('[data-said]'), box.querySelector<HTMLElement>('[data-results]')];
  if (!form || !input || !said || !results) return null;
  return { form, input, said, results, index: box.dataset['index'] ?? '/search/', base: box.dataset['base'] ?? '/' };
}

/** Answers what stands in the field; an answer that comes after a later question is dropped. */
function answering({ input, said, results, index, base }: SearchForm, opened: ReadonlySet<string>): () => Promise<void> {
  let latest = 0;
  return async () => {
    const turn = (latest += 1);
    const query = readSearch(input.value);
    try {
      const answer = await answerOf(index, query);
      if (turn !== latest) return;
      const documents = answer === null ? [] : await documentsOf(index, answer, opened);
      if (turn !== latest) return;
      said.textContent = wordsOf(query, answer);
      results.innerHTML = answer === null ? '' : resultMarkup(answer, documents, base, opened);
    } catch {
      if (turn === latest) said.textContent = 'The index could not be loaded. Try again, or use the lists of the navigation.';
    }
  };
}

function listenToWords({ form, input }: SearchForm, changed: () => void, ask: () => Promise<void>): void {
  let waiting = 0;
  const askNow = (): void => {
    rememberWords(input.value.trim());
    void ask();
  };
  input.addEventListener('input', () => {
    clearTimeout(waiting);
    changed();
    waiting = Number(setTimeout(askNow, REST));
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    clearTimeout(waiting);
    askNow();
  });
}

/** Puts the question into the address, so that it can be kept. */
function rememberWords(words: string): void {
  const address = new URL(location.href);
  if (words === '') address.searchParams.delete('q');
  else address.searchParams.set('q', words);
  history.replaceState(null, '', address);
}

/** Up and down go through field and results, Escape back to the field. */
function moveByKeys(event: KeyboardEvent, { input, results }: SearchForm): void {
  const links = [...results.querySelectorAll<HTMLElement>('a')];
  const at = links.findIndex((link) => link === document.activeElement);
  if (event.key === 'Escape' && at >= 0) input.focus();
  if ((event.key !== 'ArrowDown' && event.key !== 'ArrowUp') || links.length === 0) return;
  if (document.activeElement !== input && at < 0) return;
  event.preventDefault();
  const next = at + (event.key === 'ArrowDown' ? 1 : -1);
  if (next < 0) input.focus();
  else links[Math.min(next, links.length - 1)]?.focus();
}

const FETCHED = new Map<string, Promise<unknown>>();

/** Each piece of the index is fetched once; a failure is forgotten, so that it can be tried again. */
function piece<T>(address: string): Promise<T> {
  const known = FETCHED.get(address);
  const fetched =
    known ??
    fetch(address).then((response) => {
      if (!response.ok) throw new Error(String(response.status));
      return response.json();
    });
  if (known === undefined) {
    FETCHED.set(address, fetched);
    fetched.catch(() => FETCHED.delete(address));
  }
  // Written by the build that this script belongs to.
  return fetched as Promise<T>;
}

async function answerOf(index: string, query: SearchQuery): Promise<SearchAnswer | null> {
  if (query.terms.length === 0) return null;
  const start = await piece<SearchStart>(`${index}start.json`);
  const shards = await Promise.all(neededShards(query, start).map((name) => piece<Shard>(`${index}shard/${name}.json`)));
  return answerSearch(query, start, shards);
}

async function documentsOf(
  index: string,
  answer: SearchAnswer,
  opened: ReadonlySet<string>,
): Promise<readonly (readonly FoundDocument[])[]> {
  const { chunk } = await piece<SearchStart>(`${index}start.json`);
  return await Promise.all(
    answer.groups.map(({ group, documents }) =>
      Promise.all(
        documents.slice(0, opened.has(group) ? MOST_RESULTS : FIRST_RESULTS).map(async (document) => {
          const list = await piece<readonly FoundDocument[]>(`${index}found/${String(Math.floor(document / chunk))}.json`);
          return list[document % chunk] ?? (['', '', ''] as const);
        }),
      ),
    ),
  );
}

function wordsOf(query: SearchQuery, answer: SearchAnswer | null): string {
  const left = query.leftOut.length === 0 ? '' : ` Left out, too short or in every text: ${query.leftOut.join(', ')}.`;
  if (answer === null) return left.trim();
  if (answer.total > 0)
    return `${String(answer.total)} ${answer.total === 1 ? 'page has' : 'pages have'} ${query.terms.map((term) => term.words).join(', ')}.${left}`;
  const alone = answer.alone.map(
    ({ term, count }) =>
      `${term.kind === 'quantity' ? 'the quantity' : 'the word'} ${term.words} (${count === 0 ? 'on no page' : count === 1 ? 'on 1 page' : `on ${String(count)} pages`})`,
  );
  return `No page has ${alone.length > 1 ? 'all of this' : 'this'}. Understood: ${alone.join(', ')}.${left}`;
}

function resultMarkup(
  answer: SearchAnswer,
  documents: readonly (readonly FoundDocument[])[],
  base: string,
  opened: ReadonlySet<string>,
): string {
  return answer.groups
    .map(({ group, documents: all }, index) => {
      const items = (documents[index] ?? []).map(
        ([address, title, line]) =>
          `<li><a href="${escapeText(base + address.slice(1))}">${escapeText(title)}</a> <span class="soft">${escapeText(line)}</span></li>`,
      );
      const left = all.length - items.length;
      const more =
        left <= 0
          ? ''
          : opened.has(group)
            ? `<p class="note under">And ${String(left)} more: add a word to narrow it.</p>`
            : `<p class="note under"><button type="button" class="as-link" data-more="${group}">${String(left)} more</button></p>`;
      return `<section class="results" data-group="${group}" aria-label="${group}"><h2>${group} <span class="q">${String(all.length)}</span></h2><div><ul class="lines">${items.join('')}</ul>${more}</div></section>`;
    })
    .join('');
}
