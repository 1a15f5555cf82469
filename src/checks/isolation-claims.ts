import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { placesOf, proseFindings } from './prose-findings.ts';
import { isWarningAgainst } from './sentences-of.ts';

const RULE: Rule = {
  id: 'isolation-claims',
  title: 'The text trusts a transformer for safety',
  severity: 'warning',
  why: 'An isolating transformer only allows one earth reference, and its two poles still give a shock; a variable transformer does not isolate at all.',
  advice: 'Say what was used and what it does not protect from.',
  source: { title: 'HSE leaflet INDG354(rev1), Safety in electrical testing at work', section: 'test supplies', standing: 'secondary' },
};

export const isolationClaims: Check = { ...RULE, check };

const SAFE_BECAUSE_ISOLATED =
  /\bsafe(?:ly)?\b[^.]{0,40}\b(?:because|since|as|thanks to|behind|on|with)\b[^.]{0,40}\bisolat\w*|\bisolat\w*[^.]{0,60}\b(?:so|makes?|made|keeps?|kept)\b[^.]{0,30}\bsafe\b/gi;
const VARIAC_ISOLATES = /\b(?:variac|variable transformer|autotransformer)\b[^.]{0,40}\bisolat\w*/gi;

function check(input: CheckInput): Finding[] {
  return proseFindings(RULE, input, ({ text }) => {
    if (!/isolat/i.test(text) || isWarningAgainst(text)) return [];
    return [
      ...placesOf(text, SAFE_BECAUSE_ISOLATED, () => 'Isolation is given as the reason for safety.'),
      ...placesOf(text, VARIAC_ISOLATES, () => 'A variable transformer is named for isolation.'),
    ];
  });
}
