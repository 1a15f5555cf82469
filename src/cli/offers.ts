import { reportText } from '../diagnostics/report-text.ts';
import { didYouMean } from '../markdown/nearest-name.ts';
import type { Quantity } from '../units/quantity.ts';
import { readQuantity } from '../units/read-quantity.ts';
import { hexWord } from '../usb-pd/byte-order.ts';
import { judgeOffers } from '../usb-pd/judge-offers.ts';
import type { PortOffers, ReadThrough } from '../usb-pd/judgement/judgement.ts';
import { objectOfOffer } from '../usb-pd/offer-of-object.ts';
import { readOfferList, type OfferList, type ReadOffer } from '../usb-pd/offer-list.ts';
import { offerWords } from '../usb-pd/offer-words.ts';
import { decodeObject, encodeObject } from '../usb-pd/power-data-object.ts';
import type { Command, GivenOptions } from './command.ts';
import { OFFERS_PLACE, offerDiagnostics } from './offer-diagnostics.ts';
import { DONE, FAILED, type CommandStreams } from './streams.ts';
import { WrongUsage } from './wrong-usage.ts';

export const offers: Command = {
  name: 'offers',
  operand: '<words or text>…',
  meaning: 'decode, list and judge what a port offers, without an entry',
  options: ['power', 'revision', 'cable', 'format'],
  run: (text, options, streams) => Promise.resolve(runOffers(text, options, streams)),
};

function runOffers(operand: string, options: GivenOptions, streams: CommandStreams): number {
  // One line, so that a place is a column.
  const text = operand.replaceAll(/\s/g, ' ');
  const isJson = formatOf(options) === 'json';
  const known = knownOf(options);
  const list = readOfferList(text);
  const isRead = !list.remarks.some(({ severity }) => severity === 'error');
  const judged = isRead ? judgeOffers({ ...known, offers: list.offers }) : [];
  const diagnostics = offerDiagnostics(text, list, judged);
  const said = diagnostics.length === 0 ? '' : reportText(diagnostics, new Map([[OFFERS_PLACE, text]]), { colour: false });
  if (isJson) {
    streams.stdout.write(`${JSON.stringify(isRead ? decodedRows(list) : [], null, 2)}\n`);
    streams.stderr.write(said);
  } else {
    if (isRead) streams.stdout.write(`${linesOf(list).join('\n')}\n`);
    streams.stdout.write(isRead && said !== '' ? `\n${said}` : said);
  }
  return diagnostics.some(({ severity }) => severity === 'error') ? FAILED : DONE;
}

function formatOf(options: GivenOptions): 'text' | 'json' {
  const format = options.text('format') ?? 'text';
  if (format === 'text' || format === 'json') return format;
  throw new WrongUsage(`--format of offers must be text or json, not "${format}"${didYouMean(format, ['text', 'json'])}`);
}

const CABLES: Readonly<Record<string, ReadThrough>> = {
  unmarked: 'unmarked cable',
  marked: 'marked cable',
  EPR: 'EPR cable',
  captive: 'captive cable',
};

function knownOf(options: GivenOptions): Omit<PortOffers, 'offers'> {
  const cable = options.text('cable');
  const through =
    cable === undefined ? null : (Object.entries(CABLES).find(([name]) => name.toLowerCase() === cable.toLowerCase())?.[1] ?? undefined);
  if (through === undefined) throw new WrongUsage(`--cable must be unmarked, marked, EPR or captive, not "${cable ?? ''}"`);
  const revision = options.text('revision') ?? null;
  if (revision !== null && !/^[123]\.\d+(?: V\d+(?:\.\d+)?)?$/.test(revision))
    throw new WrongUsage(`--revision must be a number such as 3.1, not "${revision}"`);
  const power = ratedPower(options.text('power'));
  const rated = power === null ? null : { low: power.low ?? power.nominal, high: power.high ?? power.nominal, written: power.written };
  return { rated, revision, cable: through, connector: 'USB-C', protocols: [] };
}

function ratedPower(text: string | undefined): Quantity<'power'> | null {
  if (text === undefined) return null;
  const reading = readQuantity(/^[\d.,]+$/.test(text) ? `${text} W` : text, 'power');
  if (!reading.ok || !(reading.value.nominal > 0)) throw new WrongUsage(`--power must be watts such as "65 W", not "${text}"`);
  return reading.value;
}

/** One row a word, field by field; an offer in text has the word that would carry it, or null where no object can. */
function decodedRows(list: OfferList): readonly object[] {
  const ofText = list.offers.filter((offer) => offer.word === null);
  if (ofText.length === 0) return list.words.map((word) => ({ word: hexWord(word), ...decodeObject(word) }));
  return list.offers.map((offer) => {
    if (offer.word !== null) return { word: hexWord(offer.word), ...decodeObject(offer.word) };
    const object = objectOfOffer(offer);
    if (object === null) return plainRow(offer);
    const word = encodeObject(object);
    return { word: word === null ? null : hexWord(word), ...object };
  });
}

function plainRow(offer: ReadOffer): object {
  if (offer.kind !== 'plain') return { word: null, kind: offer.kind };
  return { word: null, kind: 'plain', voltage_mV: Math.round(offer.volts * 1000), current_mA: Math.round(offer.amps * 1000) };
}

/** "1  0x0801912C  fixed  5 V 3 A  15 W": place, writing, kind, numbers. */
function linesOf(list: OfferList): readonly string[] {
  const rows = list.offers.map((offer, index) => {
    const object = offer.word === null ? objectOfOffer(offer) : null;
    const encoded = object === null ? null : encodeObject(object);
    const word = offer.word ?? encoded;
    return [String(placeOf(list, index)), word === null ? '–' : hexWord(word), offer.kind, offerWords(offer)];
  });
  const widths = [0, 1, 2].map((column) => Math.max(...rows.map((row) => (row[column] ?? '').length)));
  return rows.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join('  ')
      .trimEnd(),
  );
}

/** Place in the message, which zero words before it count towards. */
function placeOf(list: OfferList, index: number): number {
  if (list.words.length < list.offers.length) return index + 1;
  const own = list.words.flatMap((word, place) => (word === 0 ? [] : [place]));
  return (own[index] ?? index) + 1;
}
