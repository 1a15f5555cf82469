import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'powered-open',
  title: 'A mains unit was powered with its case open',
  severity: 'error',
  why: 'Lethal voltages are within reach, and readers take it for a way to do it.',
  advice:
    'Say by whom and on what bench: powered open: { by: qualified person, isolated and fused bench with cover }. Otherwise leave it out.',
  source: {
    title: 'HSE leaflet INDG354(rev1), Safety in electrical testing at work',
    section: 'covers and interlocks for test benches',
    standing: 'read',
  },
};

export const poweredOpen: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  if (entry.nameplate.input?.kind === 'DC' || entry.poweredOpen?.done !== true || entry.poweredOpen.by !== null) return [];
  return [
    findingOf(RULE, atKey('powered open'), {
      message: 'It was powered open, and nobody is named who is qualified to do so.',
      subject: 'powered open',
    }),
  ];
}
