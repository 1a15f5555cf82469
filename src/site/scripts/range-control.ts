import type { Range, RangeColumn } from '../../corpus/finder-query.ts';
import { fractionOf, rangeScale, valueAt } from '../../corpus/range-scale.ts';
import { rangeFigure } from '../../figures/range-figure.ts';

/** One range of the form. */
export interface RangeControl {
  readonly column: RangeColumn;
  readonly show: (range: Range | undefined) => void;
  /** Reads the width anew and draws for it. */
  readonly fit: () => void;
}

/** Binds two handles, two number fields and the figure of one range; `changed` gets null for the whole scale. */
export function bindRange(
  element: HTMLElement,
  column: RangeColumn,
  values: readonly (number | null)[],
  changed: (range: Range | null) => void,
): RangeControl | null {
  const scale = rangeScale(column, values);
  const handle = {
    low: element.querySelector<HTMLInputElement>('[data-handle=low]'),
    high: element.querySelector<HTMLInputElement>('[data-handle=high]'),
  };
  const field = {
    low: element.querySelector<HTMLInputElement>('[data-field=low]'),
    high: element.querySelector<HTMLInputElement>('[data-field=high]'),
  };
  const figure = element.querySelector<HTMLElement>('[data-figure]');
  const said = element.querySelector<HTMLElement>('[data-said]');
  if (scale === null || !handle.low || !handle.high || !field.low || !field.high || !figure || !said) return null;
  const ends = { low: handle.low, high: handle.high };
  const fields = { low: field.low, high: field.high };
  const steps = Number(ends.low.max);
  let current: Range = { low: null, high: null };
  // Read once and after changes of the window: reading it between writes would lay the page out again for each range.
  let width = figure.clientWidth || 256;
  let drawn = '';

  const give = (low: number | null, high: number | null): void => {
    const whole = (low === null || low <= scale.low) && (high === null || high >= scale.high);
    changed(whole ? null : { low: low !== null && low <= scale.low ? null : low, high: high !== null && high >= scale.high ? null : high });
  };
  for (const end of ['low', 'high'] as const) {
    ends[end].addEventListener('input', () => {
      // One arrow pushes at the other and stops there.
      if (end === 'low') ends.low.value = String(Math.min(Number(ends.low.value), Number(ends.high.value)));
      else ends.high.value = String(Math.max(Number(ends.high.value), Number(ends.low.value)));
      const place = Number(ends[end].value);
      const open = end === 'low' ? place === 0 : place === steps;
      const value = open ? null : valueAt(scale, place / steps);
      give(end === 'low' ? value : current.low, end === 'high' ? value : current.high);
    });
    fields[end].addEventListener('change', () => {
      const text = fields[end].value.trim();
      const value = text === '' ? null : Number(text);
      if (value !== null && !Number.isFinite(value)) return;
      const [low, high] = end === 'low' ? [value, current.high] : [current.low, value];
      if (low !== null && high !== null && low > high) give(high, low);
      else give(low, high);
    });
  }

  const show = (range: Range | undefined): void => {
    current = range ?? { low: null, high: null };
    const low = current.low === null ? 0 : fractionOf(scale, current.low);
    const high = current.high === null ? 1 : fractionOf(scale, current.high);
    const key = `${String(low)} ${String(high)} ${String(width)}`;
    if (key !== drawn) figure.innerHTML = rangeFigure(scale.bins, low, high, width);
    drawn = key;
    if (document.activeElement !== ends.low) ends.low.value = String(Math.round(low * steps));
    if (document.activeElement !== ends.high) ends.high.value = String(Math.round(high * steps));
    ends.low.classList.toggle('above', low > 0.5);
    const words = { low: String(current.low ?? scale.low), high: String(current.high ?? scale.high) };
    ends.low.setAttribute('aria-valuetext', words.low);
    ends.high.setAttribute('aria-valuetext', words.high);
    if (document.activeElement !== fields.low) fields.low.value = current.low === null ? '' : words.low;
    if (document.activeElement !== fields.high) fields.high.value = current.high === null ? '' : words.high;
    said.textContent = range === undefined ? 'any' : words.low === words.high ? words.low : `${words.low} to ${words.high}`;
  };
  const fit = (): void => {
    width = figure.clientWidth || 256;
    show(current.low === null && current.high === null ? undefined : current);
  };
  element.addEventListener('toggle', fit);
  return { column, show, fit };
}
