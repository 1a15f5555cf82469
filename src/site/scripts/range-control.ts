import type { Range, RangeColumn } from '../../corpus/finder-query.ts';
import { fractionOf, rangeScale, valueAt, type RangeScale } from '../../corpus/range-scale.ts';
import { rangeFigure } from '../../figures/range-figure.ts';

/** One range of the form. */
export interface RangeControl {
  readonly column: RangeColumn;
  readonly show: (range: Range | undefined) => void;
  /** Reads the width anew and draws for it. */
  readonly fit: () => void;
}

/** Both ends of a range, each of the same kind. */
interface Ends<T> {
  readonly low: T;
  readonly high: T;
}

/** What the page holds for one range. */
interface RangeParts {
  readonly handles: Ends<HTMLInputElement>;
  readonly fields: Ends<HTMLInputElement>;
  readonly figure: HTMLElement;
  readonly said: HTMLElement;
}

/** Width of a figure that is not laid out yet, in px. */
const USUAL_WIDTH = 256;

const OPEN: Range = { low: null, high: null };

/** Binds two handles, two number fields and the figure of one range; `changed` gets null for the whole scale. */
export function bindRange(
  element: HTMLElement,
  column: RangeColumn,
  values: readonly (number | null)[],
  changed: (range: Range | null) => void,
): RangeControl | null {
  const scale = rangeScale(column, values);
  const parts = partsOf(element);
  if (scale === null || parts === null) return null;
  let current = OPEN;
  const give = (range: Range): void => {
    changed(withinScale(range, scale));
  };
  listenToHandles(parts.handles, scale, () => current, give);
  listenToFields(parts.fields, () => current, give);
  // Read once and after changes of the window: reading it between writes would lay the page out again for each range.
  let width = parts.figure.clientWidth || USUAL_WIDTH;
  let drawn = '';
  const show = (range: Range | undefined): void => {
    current = range ?? OPEN;
    const low = current.low === null ? 0 : fractionOf(scale, current.low);
    const high = current.high === null ? 1 : fractionOf(scale, current.high);
    const key = `${String(low)} ${String(high)} ${String(width)}`;
    if (key !== drawn) parts.figure.innerHTML = rangeFigure(scale.bins, low, high, width);
    drawn = key;
    showEnds(parts, current, scale, { low, high });
    const words = wordsOf(current, scale);
    parts.said.textContent = range === undefined ? 'any' : words.low === words.high ? words.low : `${words.low} to ${words.high}`;
  };
  const fit = (): void => {
    width = parts.figure.clientWidth || USUAL_WIDTH;
    show(current.low === null && current.high === null ? undefined : current);
  };
  element.addEventListener('toggle', fit);
  return { column, show, fit };
}

function partsOf(element: HTMLElement): RangeParts | null {
  const input = (name: string): HTMLInputElement | null => element.querySelector<HTMLInputElement>(`[data-${name}]`);
  const [lowHandle, highHandle, lowField, highField] = [input('handle=low'), input('handle=high'), input('field=low'), input('field=high')];
  const figure = element.querySelector<HTMLElement>('[data-figure]');
  const said = element.querySelector<HTMLElement>('[data-said]');
  if (!lowHandle || !highHandle || !lowField || !highField || !figure || !said) return null;
  return { handles: { low: lowHandle, high: highHandle }, fields: { low: lowField, high: highField }, figure, said };
}

/** An end that lies at or beyond the end of the scale is open; null where both are. */
function withinScale({ low, high }: Range, scale: RangeScale): Range | null {
  const within = { low: low !== null && low <= scale.low ? null : low, high: high !== null && high >= scale.high ? null : high };
  return within.low === null && within.high === null ? null : within;
}

/** One arrow pushes at the other and stops there. */
function listenToHandles(handles: Ends<HTMLInputElement>, scale: RangeScale, current: () => Range, give: (range: Range) => void): void {
  const steps = Number(handles.low.max);
  const valueOf = (place: number, open: number): number | null => (place === open ? null : valueAt(scale, place / steps));
  handles.low.addEventListener('input', () => {
    handles.low.value = String(Math.min(Number(handles.low.value), Number(handles.high.value)));
    give({ low: valueOf(Number(handles.low.value), 0), high: current().high });
  });
  handles.high.addEventListener('input', () => {
    handles.high.value = String(Math.max(Number(handles.high.value), Number(handles.low.value)));
    give({ low: current().low, high: valueOf(Number(handles.high.value), steps) });
  });
}

/** Numbers that were written the wrong way round are turned round. */
function listenToFields(fields: Ends<HTMLInputElement>, current: () => Range, give: (range: Range) => void): void {
  for (const end of ['low', 'high'] as const) {
    fields[end].addEventListener('change', () => {
      const text = fields[end].value.trim();
      const value = text === '' ? null : Number(text);
      if (value !== null && !Number.isFinite(value)) return;
      const [low, high] = end === 'low' ? [value, current().high] : [current().low, value];
      give(low !== null && high !== null && low > high ? { low: high, high: low } : { low, high });
    });
  }
}

/** Sets handles and fields; the one that has the focus is the reader's. */
function showEnds({ handles, fields }: RangeParts, current: Range, scale: RangeScale, places: Ends<number>): void {
  const words = wordsOf(current, scale);
  const steps = Number(handles.low.max);
  for (const end of ['low', 'high'] as const) {
    if (document.activeElement !== handles[end]) handles[end].value = String(Math.round(places[end] * steps));
    handles[end].setAttribute('aria-valuetext', words[end]);
    if (document.activeElement !== fields[end]) fields[end].value = current[end] === null ? '' : words[end];
  }
  handles.low.classList.toggle('above', places.low > 0.5);
}

function wordsOf({ low, high }: Range, scale: RangeScale): Ends<string> {
  return { low: String(low ?? scale.low), high: String(high ?? scale.high) };
}
