import type { Source } from '../values/value.ts';

/** Why a class 2 ceramic reads less than it is marked: its value holds at 25 °C, without direct voltage, new, and at the test voltage of its paper. */
export const CLASS_2_BIAS: Source = {
  title: 'KEMET, Why that 47 µF capacitor drops to 37 µF, 30 µF, or lower (Prymak, Randall, Blais, Long)',
  section: 'voltage, direct and alternating, temperature and time each take from the capacitance of a ferroelectric ceramic',
  standing: 'read',
  url: 'https://studylib.net/doc/27076956/why-47-uf-capacitor-drops-to-37-uf--30-uf--or-lower',
};

/** Share of the capacitance that is lost with each tenfold of the hours since it was last hot, by the last letter of the code. */
export const CLASS_2_AGEING: { readonly byLetter: Readonly<Record<string, number>>; readonly source: Source } = {
  byLetter: { R: 0.04, U: 0.06, V: 0.1 },
  source: {
    title: 'Holy Stone, general introduction to ceramic capacitors, page 53',
    section: 'a decade of hours takes 1 to 4 % of X7R and X5R, 4 to 6 % of Y5U and Z5U, 6 to 10 % of Y5V',
    standing: 'read',
    url: 'http://38.142.81.21:8001/manual/holystone/c1206x103k102t/information-english/page-55.html',
  },
};

/** From the thousand hours for which a value is marked to ten years and more are two tenfolds (common practice). */
const TENFOLDS = 2;

/** Greatest share that age may have taken from a part of this code; that of X7R where the letter is not in the table. */
export function ageingOf(code: string): number {
  return TENFOLDS * (CLASS_2_AGEING.byLetter[code.slice(-1)] ?? 0.04);
}
