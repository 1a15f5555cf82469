import { fittedParts } from '../derived/fitted-parts.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { TOUCH_CURRENT_LIMITS } from '../standards/touch-current.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'y-capacitor-current-high',
  title: 'The Y capacitor passes more than a touch-current limit',
  severity: 'warning',
  why: 'Readers feel this current as a tingle; the figure that counts is the current, not the voltage on an open meter. An indication, never a touch-current test.',
  advice: 'Read the capacitance again; where it is right, say in the text what readers will feel.',
  source: { title: 'IEC 60950-1, table 5A', section: '0.25 mA for equipment without earth', standing: 'secondary' },
};

export const yCapacitorCurrentHigh: Check = { ...RULE, check };

function check({ entry, derived }: CheckInput): Finding[] {
  const current = derived.named['y-current'];
  const parts = fittedParts(entry, 'y-capacitor').filter((part) => part.rating !== null);
  const [first] = parts;
  if (first === undefined || current === undefined || isMissing(current)) return [];
  const passed = TOUCH_CURRENT_LIMITS.filter(
    (limit) => ['60950-not-earthed', '62368-es1'].includes(limit.id) && current.nominal > limit.amperes,
  );
  const highest = passed.at(-1);
  if (highest === undefined) return [];
  const names = parts.map((part) => `${part.references.join(', ')} (${part.rating?.written ?? ''})`).join(' and ');
  const limits = passed.map((limit) => `${rounded(limit.amperes * 1e3)} mA (${limit.name})`).join(' and ');
  const message = `${names}: ${rounded(current.nominal * 1e3)} mA at high line, above ${limits}.`;
  const severity = highest.id === '62368-es1' ? 'warning' : 'note';
  return [findingOf(RULE, atKey(...first.path), { message, severity, source: highest.source, subject: first.references.join(', ') })];
}
