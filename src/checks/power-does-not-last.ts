import type { SustainedRun } from '../derived/heat/sustained-run.ts';
import { HELD_SHARE } from '../derived/heat/sustained-run.ts';
import { sustainedWords } from '../derived/heat/sustained-words.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, atValue, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'power-does-not-last',
  title: 'The listed power is not held',
  severity: 'warning',
  why: 'Controllers cut the power of a port in steps as they warm up; a laptop then charges slower than the label says.',
  advice: 'Say in the text what is held and for how long; where the test stopped for another reason (an empty pack), answer the finding.',
  source: {
    title: 'Texas Instruments SLVUBX5C (2024), section 4.4, thermal foldback',
    section: 'power cut in phases at set temperatures; 95 % of the listed power as the line is common practice',
    standing: 'read',
  },
};

export const powerDoesNotLast: Check = { ...RULE, check };

function check({ entry, derived }: CheckInput): Finding[] {
  return derived.sustained.flatMap((run) => {
    const { sustained, port } = run;
    const power = entry.ports.find(({ id }) => id === port)?.power?.quantity.nominal;
    const listed = power ?? (port === null ? nominal(derived.ratedPower) : null) ?? nominal(run.peak);
    if (isMissing(sustained) || listed === null || sustained.high >= HELD_SHARE * listed) return [];
    const who = port ?? 'The whole device';
    const message = `${who}: ${sustainedWords(run)}; ${rounded(listed)} W ${power === undefined && port !== null ? 'at first' : 'listed'}.`;
    return [findingOf(RULE, whereOf(run, entry), { message, subject: port ?? 'sustained power' })];
  });
}

function nominal(known: Known): number | null {
  return isMissing(known) ? null : known.nominal;
}

/** The last point of a run, or the log. */
function whereOf({ points, log }: SustainedRun, entry: CheckInput['entry']): Finding['where'] {
  const last = entry.measurements[points.at(-1) ?? -1];
  if (last !== undefined) return atValue(...last.value.path);
  return atKey(...(entry.logs.find(({ id }) => id === log)?.path ?? ['logs']));
}
