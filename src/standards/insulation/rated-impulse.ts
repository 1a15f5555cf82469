import { tabulated60664 } from './sources.ts';
import type { Source } from '../../values/value.ts';

/** Overvoltage category: II for what is plugged into a socket. */
export type OvervoltageCategory = 'I' | 'II' | 'III' | 'IV';

interface ImpulseRow {
  /** Highest voltage from line to neutral that the row covers, V rms. */
  readonly upTo: number;
  /** Rated impulse voltage by category, V. */
  readonly impulse: Readonly<Record<OvervoltageCategory, number>>;
}

/** Rated impulse voltage of equipment on the mains. */
export const RATED_IMPULSE: { readonly rows: readonly ImpulseRow[]; readonly source: Source } = {
  rows: [
    { upTo: 50, impulse: { I: 330, II: 500, III: 800, IV: 1500 } },
    { upTo: 100, impulse: { I: 500, II: 800, III: 1500, IV: 2500 } },
    { upTo: 150, impulse: { I: 800, II: 1500, III: 2500, IV: 4000 } },
    { upTo: 300, impulse: { I: 1500, II: 2500, III: 4000, IV: 6000 } },
    { upTo: 600, impulse: { I: 2500, II: 4000, III: 6000, IV: 8000 } },
    { upTo: 1250, impulse: { I: 4000, II: 6000, III: 8000, IV: 12_000 } },
    { upTo: 1500, impulse: { I: 6000, II: 8000, III: 10_000, IV: 15_000 } },
  ],
  source: tabulated60664('table F.1; category II agrees with ECMA-287, table 3.3'),
};

/** Preferred impulse voltages, V: reinforced insulation takes the next one. */
const PREFERRED_IMPULSES: readonly number[] = [330, 500, 800, 1500, 2500, 4000, 6000, 8000, 12_000];

/** Impulse voltage, V, that insulation on a mains of this voltage from line to neutral has to stand; null above the table. */
export function ratedImpulse(lineToNeutral: number, category: OvervoltageCategory): number | null {
  return RATED_IMPULSE.rows.find((row) => lineToNeutral <= row.upTo)?.impulse[category] ?? null;
}

/** Impulse voltage for reinforced insulation: the next preferred one, or 160 % of a voltage that is none. */
export function reinforcedImpulse(volts: number): number {
  const step = PREFERRED_IMPULSES.indexOf(volts);
  const next = step === -1 ? undefined : PREFERRED_IMPULSES[step + 1];
  return next ?? 1.6 * volts;
}
