import { markedAndMeasured, type MarkedAndMeasured } from '../derived/marked-and-measured.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { CLASS_2_AGEING, CLASS_2_BIAS } from '../standards/class-2-ceramic.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'marked-against-measured',
  title: 'A part measures far from what is marked on it',
  severity: 'warning',
  why: 'A re-sleeved or counterfeit part, an aged one, or a slip of the meter’s range.',
  advice: 'Measure again out of circuit; where it stays so, say so in the text and answer the finding.',
  source: commonPractice(
    'tolerance of the marking, 20 % where none is marked; a marked 6800 µF can that held 2200 µF is reported publicly',
  ),
};

export const markedAgainstMeasured: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return entry.parts.flatMap((part) =>
    markedAndMeasured(part).flatMap((pair) => {
      if (pair.verdict !== 'outside') return [];
      const details = { message: messageOf(pair), subject: part.references.join(', '), ...ofClass2(pair) };
      return [findingOf(RULE, atValue(...part.path, 'measured'), details)];
    }),
  );
}

function messageOf({ references, marked, measured, deviation, tolerance, bias, class2 }: MarkedAndMeasured): string {
  const sign = deviation.nominal > 0 ? '+' : '';
  const allowed = deviation.nominal > 0 ? tolerance.above : tolerance.below;
  const under = bias === null ? '' : ` with ${bias} on it`;
  const usual = tolerance.isMarked ? '' : ' (none is marked)';
  const ceramic = class2 === null ? '' : ` ${class2.code} is a class 2 ceramic: ${class2Words(bias, class2.ageing)}.`;
  return `${references.join(', ')}: marked ${marked.written}, measured ${measured.written}${under}, ${sign}${rounded(deviation.nominal * 100)} %, outside ${rounded(allowed * 100)} % tolerance${usual}.${ceramic}`;
}

function class2Words(bias: string | null, ageing: number): string {
  const age = `age takes up to ${rounded(ageing * 100)} %`;
  return bias === null
    ? `its tolerance is meant new, at 25 °C, without direct voltage and at the test voltage of its data sheet; ${age}`
    : `the tolerance is meant without direct voltage, and what a voltage takes is the part’s nature and no fault of it; ${age}`;
}

/** Less than marked under direct voltage, or by no more than age takes, is what such a part does; more than marked is not. */
function ofClass2({ class2, bias, deviation, tolerance }: MarkedAndMeasured): Partial<Parameters<typeof findingOf>[2]> {
  if (class2 === null || deviation.nominal > 0) return {};
  const isAge = deviation.high >= -(1 - (1 - tolerance.below) * (1 - class2.ageing));
  if (bias === null && !isAge) return { advice: ADVICE };
  return { severity: 'note', advice: ADVICE, source: bias === null ? CLASS_2_AGEING.source : CLASS_2_BIAS };
}

const ADVICE =
  'Measure without direct voltage, at the frequency and the test voltage of its data sheet (mostly 1 kHz and 1 V), a day after soldering; or write the voltage that was on it behind the value: 4.2 µF 20 V.';
