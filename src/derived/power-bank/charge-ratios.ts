import type { Entry, Fact } from '../../entry/entry.ts';
import type { LogSummary } from '../../logs/log-summary.ts';
import { formatInterval } from '../../units/format.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { factValue, isOf } from '../fact-value.ts';
import type { PowerBankFigures } from './power-bank-figures.ts';

/** A charge at the output over a charge of the cells: two voltages, so no conversion; beside it the ratio of the energies, which is one. */
export interface ChargeRatio {
  /** Share that the charges give. */
  readonly ofCharges: number;
  /** "6000 of 10 000 mAh, counted at 5 V and at the cells". */
  readonly words: string;
  readonly delivered: Known<'energy'>;
  readonly ofEnergies: Known<'ratio'>;
}

/** Every such pair of an entry: rated at the output, measured as a charge, or summed up in the log of a discharge. */
export function chargeRatios(entry: Entry, bank: PowerBankFigures, logs: readonly LogSummary[]): readonly ChargeRatio[] {
  const cells = entry.nameplate.capacity?.charge ?? null;
  const held = cells === null ? null : factValue(cells, { bound: 'use' });
  if (held === null || isMissing(held) || !(held.nominal > 0)) return [];
  const pair = (charge: Known<'charge'>, at: string | null, out: Pick<ChargeRatio, 'delivered' | 'ofEnergies'>): readonly ChargeRatio[] => {
    if (isMissing(charge)) return [];
    const [given, stored] = [charge, held].map((value) => formatInterval(value, 'charge', 'mAh').number);
    const where = at === null ? 'at the output' : `at ${at}`;
    return [{ ofCharges: charge.nominal / held.nominal, words: `${given ?? ''} mAh ${where} of ${stored ?? ''} mAh in the cells`, ...out }];
  };
  const rated = entry.nameplate.outputCapacity?.charge ?? null;
  const ofRated =
    rated === null ? [] : pair(chargeOf(rated), bank.rated.voltage, { delivered: bank.rated.energy, ofEnergies: bank.rated.ratio });
  const ofRows = bank.delivered.flatMap(({ index, log, output, energy, ratio }) => {
    const point = index === null ? undefined : entry.measurements[index]?.value;
    const charge = isOf(point, 'charge') ? chargeOf(point) : logs.find(({ id }) => id === log)?.charge;
    return charge === undefined ? [] : pair(charge, output, { delivered: energy, ofEnergies: ratio });
  });
  return [...ofRated, ...ofRows];
}

function chargeOf(fact: Fact<'charge'>): Known<'charge'> {
  return factValue(fact, { bound: 'use' });
}
