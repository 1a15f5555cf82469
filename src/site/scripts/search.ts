import { answerSearch, neededShards, type SearchAnswer } from '../../corpus/search-answer.ts';
import type { FoundDocument, SearchStart, Shard } from '../../corpus/search-index.ts';
import { readSearch, type SearchQuery } from '../../corpus/search-query.ts';
import { escapeText } from '../../figures/markup.ts';

/** Results of a group shown at first. */
const FIRST_RESULTS = 8;
const MOST_RESULTS = 100;

/** Answers the search field of the page: at once for what the address asks, then as the reader types. */
export function startSearch(): void {
  const box = document.querySelector<HTMLElement>('#search');
  const form = box?.querySelector('form');
  const input = box?.querySelector<HTMLInputElement>('input[type=search]');
  const said = box?.querySelector<HTMLElement>('[data-said]');
  const results = box?.querySelector<HTMLElement>('[data-results]');
  if (!box || !form || !input || !said || !results) return;
  const index = box.dataset['index'] ?? '/search/';
  const base = box.dataset['base'] ?? '/';
  let latest = 0;
  let opened = new Set<string>();

  const ask = async (): Promise<void> => {
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
  const remember = (): void => {
    const address = new URL(location.href);
    if (input.value.trim() === '') address.searchParams.delete('q');
    else address.searchParams.set('q', input.value.trim());
    history.replaceState(null, '', address);
  };
  let waiting = 0;
  input.addEventListener('input', () => {
    clearTimeout(waiting);
    opened = new Set();
    waiting = Number(setTimeout(() => {
      remember();
      void ask();
    }, 120)); // prettier-ignore
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    clearTimeout(waiting);
    remember();
    void ask();
  });
  results.addEventListener('click', (event) => {
    const group = event.target instanceof HTMLElement ? event.target.dataset['more'] : undefined;
    if (group === undefined) return;
    opened.add(group);
    void ask().then(() => results.querySelectorAll<HTMLElement>(`[data-group="${group}"] a`)[FIRST_RESULTS]?.focus());
  });
  box.addEventListener('keydown', (event) => {
    const links = [...results.querySelectorAll<HTMLElement>('a')];
    const at = links.indexOf(document.activeElement as HTMLElement);
    if (event.key === 'Escape' && at >= 0) input.focus();
    if ((event.key !== 'ArrowDown' && event.key !== 'ArrowUp') || links.length === 0) return;
    if (document.activeElement !== input && at < 0) return;
    event.preventDefault();
    const next = at + (event.key === 'ArrowDown' ? 1 : -1);
    if (next < 0) input.focus();
    else links[Math.min(next, links.length - 1)]?.focus();
  });

  const asked = new URL(location.href).searchParams.get('q') ?? '';
  input.value = asked;
  if (asked.trim() !== '') void ask();
  else input.focus();
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
