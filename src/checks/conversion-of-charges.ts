import { chargeRatios, type ChargeRatio } from '../derived/power-bank/charge-ratios.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { proseFindings } from './prose-findings.ts';
import { rounded } from './rounded.ts';
import { isWarningAgainst } from './sentences-of.ts';
import { JOULES_PER_WATT_HOUR } from '../units/watt-hour.ts';

const RULE: Rule = {
  id: 'conversion-of-charges',
  title: 'A conversion of a power bank is a ratio of charges',
  severity: 'warning',
  why: 'A milliampere-hour at 5 V is more energy than one at 3.7 V: the ratio of charges is about three quarters of the true figure and says nothing of losses.',
  advice: 'Give the energies: Wh at the output over Wh in the cells. The sheet computes it from what is there.',
  source: {
    title: 'Notes on official power-bank figures, public listing',
    section: '5,500 mAh at 5 V are 27.5 Wh of 37 Wh, 74.3 %, and not 55 %',
    standing: 'read',
  },
};

export const conversionOfCharges: Check = { ...RULE, check };

/** What a figure is that is meant as a conversion. */
const CONVERSION = /\b(?:conver\w+|efficien\w+|yields?|usable|utili[sz]ation)\b/iu;
const PERCENT = /(?<![\d.,])(\d{2}(?:[.,]\d+)?)\s?%/gu;
/** A ratio of energies that lies this near is the one that is meant. */
const NEAR_ENERGY = 0.015;

function check(input: CheckInput): Finding[] {
  const { entry, derived } = input;
  if (derived.bank === null) return [];
  const ratios = chargeRatios(entry, derived.bank, derived.logs);
  if (ratios.length === 0) return [];
  const stored = derived.bank.stored;
  const inCells = isMissing(stored) ? '' : ` of ${rounded(stored.nominal / JOULES_PER_WATT_HOUR)} Wh`;
  const claims = entry.claims.flatMap(({ of, quantity, written, path }) => {
    if (quantity?.dimension !== 'ratio' || !CONVERSION.test(of)) return [];
    const found = ratioOf(quantity.nominal, quantity.resolution / 2, ratios);
    if (found === undefined) return [];
    return [findingOf(RULE, atValue(...path, 'value'), { message: messageOf(`${of} ${written}`, found, inCells), subject: of })];
  });
  const prose = proseFindings(RULE, input, ({ text }) => {
    if (!CONVERSION.test(text) || isWarningAgainst(text)) return [];
    return [...text.matchAll(PERCENT)].flatMap((match) => {
      const figure = (match[1] ?? '').replace(',', '.');
      const decimals = figure.split('.')[1]?.length ?? 0;
      const found = ratioOf(Number(figure) / 100, 0.5 * 10 ** -(decimals + 2), ratios);
      if (found === undefined) return [];
      return [{ start: match.index, end: match.index + match[0].length, message: messageOf(match[0], found, inCells) }];
    });
  });
  return [...claims, ...prose];
}

/** The pair of charges that a figure is the ratio of, to its last digit, where it is not that of the energies. */
function ratioOf(figure: number, half: number, ratios: readonly ChargeRatio[]): ChargeRatio | undefined {
  const isEnergy = ratios.some(({ ofEnergies }) => !isMissing(ofEnergies) && Math.abs(ofEnergies.nominal - figure) <= NEAR_ENERGY);
  return isEnergy ? undefined : ratios.find(({ ofCharges }) => Math.abs(ofCharges - figure) <= half + 1e-9);
}

function messageOf(figure: string, { words, delivered, ofEnergies }: ChargeRatio, inCells: string): string {
  const energies =
    isMissing(delivered) || isMissing(ofEnergies)
      ? 'The ratio of the energies needs both voltages.'
      : `As energies ${rounded(delivered.nominal / JOULES_PER_WATT_HOUR)}${inCells} are ${rounded(ofEnergies.nominal * 100)} %.`;
  return `${figure} is ${words}: charges at two voltages. ${energies}`;
}
