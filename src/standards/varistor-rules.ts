import type { Source } from '../values/value.ts';

/** A varistor stands the mains and its tolerance for good: the next continuous rating above this many times the mains. */
export const VARISTOR_MARGIN: { readonly factor: number; readonly source: Source } = {
  factor: 1.1,
  source: {
    title: 'NTE, varistor selection note',
    section: 'line voltage and 10 %, then the next higher continuous rating',
    standing: 'secondary',
    url: 'https://pe2bz.philpem.me.uk/Parts-Active/VaristorsMOV/MOV.html',
  },
};

/** Continuous ratings that varistors for the mains are sold in, V rms. */
export const VARISTOR_RATINGS: { readonly volts: readonly number[]; readonly source: Source } = {
  volts: [130, 150, 175, 230, 250, 275, 300, 320, 350, 385, 420, 460, 510, 550],
  source: { title: 'Makers’ series of disc varistors', section: 'continuous ratings', standing: 'memory' },
};

/** Varistor voltage at 1 mA that makers advise on mains of 220 to 240 V, V. */
export const VARISTOR_VOLTAGE_HIGH_LINE: { readonly low: number; readonly high: number; readonly source: Source } = {
  low: 470,
  high: 620,
  source: {
    title: 'A maker’s article on the use of varistors',
    section: 'rule 2',
    standing: 'secondary',
    url: 'http://www.film-capacitor.com/Rules-to-follow-when-using-varistor-id3904864.html',
  },
};

/** Least varistor voltage at 1 mA from line to earth, V, even on a mains of 100 V. */
export const VARISTOR_VOLTAGE_TO_EARTH: { readonly volts: number; readonly source: Source } = {
  volts: 430,
  source: {
    title: 'Chemi-Con, varistor questions',
    section: '29A8Z3Y',
    standing: 'secondary',
    url: 'https://www.chemi-con.co.jp/en/faq/detail.php?id=29A8Z3Y',
  },
};

/** Continuous rating, V rms, of the smallest varistor that fits a mains voltage; null above the series. */
export function varistorRatingFor(mainsRms: number): number | null {
  return VARISTOR_RATINGS.volts.find((volts) => volts >= VARISTOR_MARGIN.factor * mainsRms - 1e-9) ?? null;
}
