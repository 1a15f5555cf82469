import { reportedAndMeasured } from '../derived/reported-and-measured.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { formatInterval } from '../units/format.ts';
import type { Value } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'reported-against-measured',
  title: 'What a system reports is not what was measured',
  severity: 'warning',
  why: 'A system repeats what was agreed or what its firmware assumes, and measures nothing: one said 5 V and 3 A while some 60 W flowed.',
  advice:
    'Let the measured figure stand and say in the text what is reported; where both are right, give the conditions in which they differ.',
  source: {
    title: 'Public issue 521 on a notebook’s firmware (firmware-lenovo)',
    section:
      '5 V 3 A reported by the operating system, about 60 W on an inline meter; 5 %, 5 K and a point of efficiency as the line are common practice',
    standing: 'read',
    url: 'https://github.com/fwupd/firmware-lenovo/issues/521',
  },
};

export const reportedAgainstMeasured: Check = { ...RULE, check };

function check({ entry, derived }: CheckInput): Finding[] {
  return reportedAndMeasured(entry, derived)
    .filter(({ agrees }) => !agrees)
    .map(({ subject, where, reported, measured, by, log, path }) => {
      const about = where === null ? subject : `${where}, ${subject}`;
      const from = log === null ? '' : ` in the log ${log}`;
      const message = `${about}: ${shown(reported)} (${by}), ${shown(measured)} measured${from}${difference(reported, measured)}.`;
      return findingOf(RULE, atValue(...path), { message, subject: where ?? subject });
    });
}

function shown(value: Value): string {
  const { number, unit } = formatInterval(value, value.dimension);
  return `${number}\u202f${unit}`;
}

/** The reported figure less the measured one: in kelvin for temperatures, in points for efficiencies, else as a share of the measured one. */
function difference({ nominal: reported, dimension }: Value, { nominal: measured }: Value): string {
  const more = reported - measured;
  const sign = more > 0 ? '+' : '';
  if (dimension === 'temperature') return `: ${sign}${rounded(more)} K`;
  if (dimension === 'ratio') return `: ${sign}${rounded(more * 100)} points`;
  return measured === 0 ? '' : `: ${sign}${rounded((more / measured) * 100)} %`;
}
