import { remark, writtenBetween } from '../units/cursor.ts';
import type { Cursor } from '../units/cursor.ts';
import { decodeObject } from './power-data-object.ts';
import type { PowerDataObject } from './power-data-object.ts';

/** A word with where it stands in the text. */
export interface PlacedWord {
  readonly word: number;
  readonly start: number;
  readonly end: number;
}

/** Objects of EPR stand from this place on; the seven before it are those of SPR, filled up with zero words. USB PD R3.2 V1.1, 6.5.15.1. */
const FIRST_EPR_PLACE = 8;

/** Highest voltage of a fixed supply outside EPR, in millivolts. */
const SPR_TOP_mV = 20_000;

/** Whether an object belongs to the part of a message from position 8 on. */
function isEprObject(object: PowerDataObject): boolean {
  return object.kind === 'eprAvs' || (object.kind === 'fixed' && object.voltage_mV > SPR_TOP_mV);
}

/** Says what is odd about the places of the words of one list: zero words that fill nothing up, and EPR objects in a wrong place. */
export function remarkPlaces(cursor: Cursor, words: readonly PlacedWord[]): void {
  const objects = words.map(({ word }) => decodeObject(word));
  const firstEpr = objects.findIndex(isEprObject);
  const isRightlyFilled = firstEpr === FIRST_EPR_PLACE - 1;
  words.forEach((placed, index) => {
    if (placed.word === 0 && !(isRightlyFilled && index < firstEpr && isTail(words, index, firstEpr)))
      remarkFiller(cursor, placed, index, firstEpr);
  });
  if (firstEpr === -1 || isRightlyFilled || !words.some(({ word }) => word === 0)) return;
  const at = words[firstEpr];
  if (at === undefined) return;
  const message = `${writtenBetween(cursor, at.start, at.end)} stands in place ${firstEpr + 1}; objects of EPR begin at place ${FIRST_EPR_PLACE}, behind zero words`;
  remark(cursor, 'warning', message, at.start, at.end);
}

/** Nothing but zero words between here and the first object of EPR. */
function isTail(words: readonly PlacedWord[], index: number, end: number): boolean {
  return words.slice(index, end).every(({ word }) => word === 0);
}

function remarkFiller(cursor: Cursor, placed: PlacedWord, index: number, firstEpr: number): void {
  const written = writtenBetween(cursor, placed.start, placed.end);
  const why =
    firstEpr === -1
      ? 'a message without objects of EPR has no unused places; a tester that prints all seven pads its list so'
      : 'zero words fill the places up to the seventh, behind the other objects';
  remark(cursor, 'note', `${written} in place ${index + 1} offers nothing: ${why}`, placed.start, placed.end);
}
