import type { Device, Sample } from './entry.ts';
import { atValue, readingFinding } from './reading-rules.ts';
import type { ReadingContext } from './reading-context.ts';
import type { EntrySource } from './schema.ts';

/** Reads what was taken apart. The name is the model number where it has no other. */
export function readDevice(context: ReadingContext, source: EntrySource['device']): Device {
  const name = source.name ?? source.model;
  if (name === undefined) {
    const message = 'The device has neither a name nor a model.';
    context.findings.push(readingFinding('missing-field', atValue(['device']), message, { advice: 'Add name or model.' }));
  }
  return {
    maker: source.maker,
    name: name ?? 'not given',
    model: source.model ?? null,
    kind: source.kind,
    released: readRelease(context, source.released),
    price: readPrice(context, source.price),
  };
}

function readRelease(context: ReadingContext, text: string | undefined): string | null {
  if (text === undefined) return null;
  if (/^\d{4}(?:-(?:0[1-9]|1[0-2]))?$/u.test(text)) return text;
  const message = `"${text}" is neither a year nor a year and a month.`;
  context.findings.push(
    readingFinding('unreadable-value', atValue(['device', 'released']), message, { advice: 'Write 2026-01, or "2026".' }),
  );
  return null;
}

function readPrice(context: ReadingContext, text: string | undefined): Device['price'] {
  if (text === undefined) return null;
  const parts = /^(?:(?<before>[A-Z]{3}|[€$£¥])\s*)?(?<amount>\d+(?:[.,]\d{1,2})?)(?:\s*(?<after>[A-Z]{3}|[€$£¥]))?$/u.exec(
    text.trim(),
  )?.groups;
  const currency = parts?.['after'] ?? parts?.['before'];
  if (parts?.['amount'] !== undefined && currency !== undefined) return { amount: Number(parts['amount'].replace(',', '.')), currency };
  const message = `"${text}" is no amount with a currency.`;
  context.findings.push(
    readingFinding('unreadable-value', atValue(['device', 'price']), message, { advice: 'Write the amount and the currency: 62 USD.' }),
  );
  return null;
}

/** Reads what is said about the piece on the bench. */
export function readSample(source: EntrySource['sample']): Sample {
  return {
    obtained: source?.obtained ?? null,
    lot: source?.lot ?? null,
    serial: source?.serial ?? null,
    firmware: source?.firmware ?? null,
    note: source?.note ?? null,
  };
}
