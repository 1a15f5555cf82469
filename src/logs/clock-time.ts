/** How days are written where it cannot be told from the digits. */
export type DayOrder = 'year first' | 'day first' | 'month first';

/** Which of hours, minutes and seconds a time of two numbers leaves out. */
export type ClockParts = 'm:s' | 'h:m';

/** Seconds. */
export const DAY = 86_400;

/** Seconds of a clock or elapsed time: "14:03:05.250", "0:12", "125:00:00"; `NaN` for anything else. Two numbers are read by `parts`. */
function secondsOfClock(text: string, parts: ClockParts | null): number {
  let total = 0;
  let fields = 1;
  let value = 0;
  let digits = 0;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code >= 48 && code <= 57) {
      value = value * 10 + code - 48;
      digits += 1;
    } else if (code === 58 && digits > 0 && (fields === 1 || value < 60)) {
      total = total * 60 + value;
      fields += 1;
      value = 0;
      digits = 0;
    } else if ((code === 46 || code === 44) && digits > 0) {
      const fraction = text.slice(at + 1);
      if (!/^\d+$/.test(fraction)) return Number.NaN;
      value += Number(`0.${fraction}`);
      break;
    } else return Number.NaN;
  }
  if (digits === 0 || value >= 60) return Number.NaN;
  if (fields === 3) return total * 60 + value;
  if (fields !== 2 || parts === null) return Number.NaN;
  return parts === 'm:s' ? total * 60 + value : (total * 60 + value) * 60;
}

/** A day as written, in seconds from 1 January 2000; "ambiguous" where day and month cannot be told apart; null where it is no day. */
export function secondsOfDay(text: string, order: DayOrder | null): number | 'ambiguous' | null {
  const yearFirst = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$/.exec(text);
  if (yearFirst !== null) return dayNumber(Number(yearFirst[1]), Number(yearFirst[3]), Number(yearFirst[4]));
  const found = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})\.?$/.exec(text);
  if (found === null) return null;
  const [one, two] = [Number(found[1]), Number(found[3])];
  const year = Number(found[4]) + (found[4]?.length === 2 ? 2000 : 0);
  // Dots between day and month mean that the day comes first; slashes mean either.
  const told = order ?? (found[2] === '.' || one > 12 ? 'day first' : two > 12 ? 'month first' : null);
  if (told === null) return 'ambiguous';
  return told === 'month first' ? dayNumber(year, one, two) : dayNumber(year, two, one);
}

function dayNumber(year: number, month: number, day: number): number | null {
  if (month < 1 || month > 12 || day < 1 || day > daysIn(year, month)) return null;
  // Years begin in March, so that the leap day is the last of its year.
  const shifted = month > 2 ? year : year - 1;
  const inYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const days = shifted * 365 + Math.floor(shifted / 4) - Math.floor(shifted / 100) + Math.floor(shifted / 400) + inYear;
  return (days - MILLENNIUM) * DAY;
}

/** 1 January 2000 in days counted as above. */
const MILLENNIUM = 730_425;

function daysIn(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** Date and time of day in one text, parted by "T" or a space; `date` null for a time alone. */
export function splitInstant(text: string): { readonly date: string | null; readonly clock: string } {
  const trimmed = text.trim();
  const parting = /[T ]/.exec(trimmed);
  if (parting === null || trimmed.indexOf(':') < parting.index) return { date: null, clock: trimmed };
  return { date: trimmed.slice(0, parting.index), clock: trimmed.slice(parting.index + 1).trim() };
}

/** A time of day with what may stand behind it: "2:03:05 PM", "14:03:05Z", "14:03:05+02:00"; seconds, zone taken off. */
export function secondsOfDayTime(text: string, parts: ClockParts | null): number {
  const last = text.charCodeAt(text.length - 1) | 32;
  if (last === 109) return withHalfDay(text, parts);
  if (last === 122) return secondsOfClock(text.slice(0, -1), parts);
  const zone = isSign(text.charCodeAt(text.length - 6)) || isSign(text.charCodeAt(text.length - 5)) ? ZONE.exec(text) : null;
  if (zone === null) return secondsOfClock(text, parts);
  const seconds = Number(zone[2]) * 3600 + Number(zone[3]) * 60;
  return secondsOfClock(text.slice(0, text.length - zone[0].length), parts) - (zone[1] === '-' ? -seconds : seconds);
}

const ZONE = /([+-])(\d{2}):?(\d{2})$/;

function isSign(code: number): boolean {
  return code === 43 || code === 45;
}

function withHalfDay(text: string, parts: ClockParts | null): number {
  const found = /^(\S+)\s*([ap])\.?m\.?$/i.exec(text);
  if (found === null) return Number.NaN;
  const seconds = secondsOfClock(found[1] ?? '', parts);
  const twelve = 12 * 3600;
  return (seconds % twelve) + (found[2]?.toLowerCase() === 'p' ? twelve : 0);
}
