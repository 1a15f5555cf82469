import type { DataPath } from '../diagnostics/finding.ts';
import type { ReadingRemark } from '../units/quantity.ts';
import type { Offer } from '../usb-pd/offer.ts';
import { readOffers } from '../usb-pd/read-offers.ts';
import { reportRemarks, type ReadingContext } from './reading-context.ts';

/** One item of a list in the data. */
interface ListItem {
  readonly item: string;
  readonly path: DataPath;
}

/** Whether a list holds one 32-bit word an item, as one would paste a whole message line by line. */
export function isWordList(items: readonly ListItem[]): boolean {
  return items.length > 1 && items.every(({ item }) => /^\s*(?:0x)?[0-9a-f]{1,8}\s*$/i.test(item));
}

/** Reads such a list as one message, as the place of a word in its message counts; each remark goes to the item it is about. */
export function readWordList(context: ReadingContext, items: readonly ListItem[]): readonly Offer[] {
  const starts: number[] = [];
  let text = '';
  for (const { item } of items) {
    starts.push(text.length);
    text += `${item} `;
  }
  const reading = readOffers(text);
  for (const remark of reading.remarks) report(context, remark, items, starts);
  if (!reading.ok) return [];
  const offering = items.filter(({ item }) => !/^\s*(?:0x)?0+\s*$/i.test(item));
  return reading.value.flatMap((offer, index) => {
    const path = offering[index]?.path;
    return path === undefined ? [] : [{ ...offer, path }];
  });
}

function report(context: ReadingContext, remark: ReadingRemark, items: readonly ListItem[], starts: readonly number[]): void {
  const index = starts.findLastIndex((start) => start <= remark.span.start);
  const at = items[index];
  const start = starts[index];
  if (at === undefined || start === undefined) return;
  const end = Math.min(remark.span.end - start, at.item.length);
  reportRemarks(context, [{ ...remark, span: { start: remark.span.start - start, end } }], at.path);
}
