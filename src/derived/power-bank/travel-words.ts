import { LITHIUM_TRAVEL } from '../../standards/lithium-travel.ts';
import { formatInterval } from '../../units/format.ts';
import { isMissing } from '../../values/value.ts';
import type { PowerBankFigures } from './power-bank-figures.ts';

const { freeUpTo, approvedUpTo, spares, source } = LITHIUM_TRAVEL;
const CARRIER = 'check with the carrier.';

/** "Can I take it on a plane?" in one or two sentences, with the rule, its standing and whom to ask. */
export function travelWords({ travel: { energy, verdict } }: PowerBankFigures): string {
  if (verdict === 'not known' || isMissing(energy)) {
    return `On a plane: not known, the energy of the cells is missing (limits ${freeUpTo} and ${approvedUpTo} Wh); ${CARRIER}`;
  }
  const { number, unit } = formatInterval(energy, 'energy', 'Wh');
  const what = {
    free: `up to ${freeUpTo} Wh: in the cabin without asking`,
    'at the limit': `too near a limit (${freeUpTo} and ${approvedUpTo} Wh) to say`,
    'with approval': `above ${freeUpTo} and up to ${approvedUpTo} Wh: in the cabin with the operator’s approval, at most ${spares} of them`,
    'not carried': `above ${approvedUpTo} Wh: not carried by passengers`,
  }[verdict];
  return `On a plane: ${number} ${unit}, ${what}; never in checked baggage (${source.title}, ${source.standing}); ${CARRIER}`;
}
