import type { Finding } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';
import { ratedParts, safetyClassesOf } from './safety-class.ts';

const RULE: Rule = {
  id: 'x-capacitor-class',
  title: 'A capacitor across the line has no X class',
  severity: 'warning',
  why: 'An ordinary film capacitor is rated for direct voltage and is not made to fail safely on the mains.',
  advice: 'Read the marking again: the class stands beside the voltage, as in 0.1 µF X2 275 VAC.',
  source: {
    title: 'IEC 60384-14 classes',
    section: 'X capacitors, with a public forum thread on replacing "0.1uF 250V~ X2"',
    standing: 'secondary',
  },
};

export const xCapacitorClass: Check = { ...RULE, check };

function check({ entry, derived }: CheckInput): Finding[] {
  if (entry.nameplate.input?.kind === 'DC') return [];
  return ratedParts(entry, 'x-capacitor').flatMap((part) => {
    if (safetyClassesOf(part).length > 0) return [];
    const volts = part.rating?.quantities.find((quantity) => quantity.dimension === 'voltage');
    const peak = derived.input.peak;
    const direct = volts !== undefined && volts.waveform !== 'AC';
    const below = direct && !isMissing(peak) && volts.nominal < peak.nominal;
    const tail = below ? `, and ${volts.written} read as direct voltage is below the mains peak of ${rounded(peak.nominal)} V` : '';
    const message = `${part.references.join(', ')} (${part.rating?.written ?? ''}) has no X class${tail}.`;
    return [findingOf(RULE, atKey(...part.path), { message, subject: part.references.join(', ') })];
  });
}
