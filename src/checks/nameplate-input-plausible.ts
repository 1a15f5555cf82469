import type { Finding } from '../diagnostics/finding.ts';
import type { SupplyInput } from '../units/quantity.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'nameplate-input-plausible',
  title: 'The printed input does not fit the output',
  severity: 'warning',
  why: 'Input volt-amperes far above the output are a slipped decimal point; below the output they break the energy balance.',
  advice: 'Read the current on the nameplate again; where it is really printed so, answer the finding.',
  source: {
    title: 'Label of a 65 W three-port charger, quoted in a public listing',
    section: '"100~240V~,50Hz, 16A Max" where 1.6 A was meant; limits 1.0 and 5 times are common practice',
    standing: 'read',
  },
};

export const nameplateInputPlausible: Check = { ...RULE, check };

const MOST_TIMES_OUTPUT = 5;

/** A power bank's input charges its cells, so it says nothing about its output. */
function check({ entry, derived }: CheckInput): Finding[] {
  const { input } = entry.nameplate;
  if (input?.current == null || entry.device.kind === 'power bank' || isMissing(derived.ratedPower)) return [];
  const output = derived.ratedPower.nominal;
  const low = atLowestLine(input, input.current.nominal);
  const high = (input.voltage.high ?? input.voltage.nominal) * input.current.nominal;
  if (low > output * MOST_TIMES_OUTPUT) return [slip(input, input.current.nominal, output)];
  // A direct-current input may be rated for its upper range only: 140 W from 20 V up.
  if ((input.kind === 'AC' ? low : high) >= output) return [];
  const volts = input.kind === 'AC' ? (input.voltage.low ?? input.voltage.nominal) : (input.voltage.high ?? input.voltage.nominal);
  const product = rounded(volts * input.current.nominal);
  const message = `${rounded(volts)} V × ${input.current.written} = ${product} VA is less than the rated output of ${rounded(output)} W.`;
  return [findingOf(RULE, atValue('nameplate', 'input'), { message, subject: 'input' })];
}

function slip(input: SupplyInput, amps: number, output: number): Finding {
  const volts = input.voltage.low ?? input.voltage.nominal;
  const product = volts * amps;
  const tenth = product / 10;
  const meant = tenth >= output && tenth <= output * MOST_TIMES_OUTPUT ? ` Did you mean ${rounded(amps / 10)} A?` : '';
  const message = `${rounded(volts)} V × ${rounded(amps)} A = ${rounded(product, 4)} VA is ${rounded(product / output)} × the rated output of ${rounded(output)} W.${meant}`;
  return findingOf(RULE, atValue('nameplate', 'input'), { message, subject: 'input' });
}

function atLowestLine(input: SupplyInput, amps: number): number {
  return (input.voltage.low ?? input.voltage.nominal) * amps;
}
