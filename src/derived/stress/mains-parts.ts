import type { Part } from '../../entry/entry.ts';
import type { StressRow } from '../derived.ts';
import { DIRECT_SUPPLY_FUSE } from '../../standards/derating/policy.ts';
import { quantitiesOf, ratingOf } from '../part-rating.ts';
import { judgeCurrent, judgeVoltage } from './judge.ts';
import type { StressInput } from './stress-input.ts';

/** Rows of fuse, varistor and X capacitor; null for other roles. Ratings for alternating voltage meet rms, others the crest. */
export function mainsPart(part: Part, given: StressInput): readonly StressRow[] | null {
  if (part.role === 'input-fuse') return fuseRows(part, given);
  if (part.role === 'varistor') return [varistorRow(part, given)];
  return part.role === 'x-capacitor' ? [xCapacitorRow(part, given)] : null;
}

/** A fuse's rated voltage is that of its supply: alternating unless it is marked for direct voltage only. */
function fuseRows(part: Part, { entry, input, policy }: StressInput): readonly StressRow[] {
  const partClass = entry.nameplate.input?.kind === 'DC' ? DIRECT_SUPPLY_FUSE : 'fuse';
  return [
    judgeVoltage({ part, quantity: 'supply voltage', stress: input.highLine, rating: ratingOf(part, 'voltage'), partClass }, policy),
    judgeCurrent({ part, quantity: 'input current', stress: input.inputCurrent, rating: ratingOf(part, 'current') }, policy),
  ];
}

/** A varistor's first number may be its voltage at 1 mA, so only a rating that says it is for alternating voltage counts. */
function varistorRow(part: Part, { entry, input, policy }: StressInput): StressRow {
  const rating = ratingOf(part, 'voltage', entry.nameplate.input?.kind === 'DC' ? 'DC' : 'AC');
  return judgeVoltage({ part, quantity: 'supply voltage', stress: input.highLine, rating }, policy);
}

/** A class (X2) means a rating for alternating voltage; without class and without "~" it is a direct-voltage part under the crest. */
function xCapacitorRow(part: Part, { input, policy }: StressInput): StressRow {
  const classed = part.rating?.marks.some((mark) => mark.kind === 'safety class') === true;
  const alternating = classed || quantitiesOf(part, 'voltage').some((quantity) => quantity.waveform === 'AC');
  if (alternating) {
    const marked = quantitiesOf(part, 'voltage').some((quantity) => quantity.waveform === 'AC');
    const rating = ratingOf(part, 'voltage', marked ? 'AC' : null);
    return judgeVoltage({ part, quantity: 'supply voltage', stress: input.highLine, rating }, policy);
  }
  const rating = ratingOf(part, 'voltage');
  return judgeVoltage({ part, quantity: 'peak supply voltage', stress: input.peak, rating, partClass: 'film capacitor' }, policy);
}
