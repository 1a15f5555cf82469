import type { Source } from '../values/value.ts';

/** Rated voltages in which capacitors are usually sold. A rating outside the series may be a slip and is never an error. */
export const CAPACITOR_VOLTAGES: { readonly volts: readonly number[]; readonly source: Source } = {
  volts: [2.5, 4, 6.3, 10, 16, 25, 35, 50, 63, 80, 100, 160, 200, 250, 315, 350, 400, 420, 450, 500, 630, 1000, 2000],
  source: { title: 'Rated voltages in capacitor catalogues', section: 'common practice, from memory', standing: 'common practice' },
};

/** Whether a rated voltage is one of the series, within a thousandth. */
export function isCapacitorVoltage(volts: number): boolean {
  return CAPACITOR_VOLTAGES.volts.some((listed) => Math.abs(listed - volts) <= listed / 1000);
}
