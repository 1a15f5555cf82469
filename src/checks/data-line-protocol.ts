import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'data-line-protocol',
  title: 'A Type-C port that raises its voltage over the data lines',
  severity: 'note',
  why: 'Engineers of open firmware hold that a Type-C port should not offer the older scheme over D+ and D− beside USB PD; many do, and some devices are confused by it.',
  advice: 'Nothing need be done: it tells the reader what the port does.',
  source: {
    title: 'Discussion in the issues of an open soldering iron firmware',
    section: 'older D+/D− schemes at Type-C ports',
    standing: 'read',
  },
};

export const dataLineProtocol: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return entry.ports
    .filter((port) => port.connector === 'USB-C' && port.direction !== 'input')
    .flatMap((port) => {
      const name = port.protocols.find((candidate) => /D\s?\+|D\s?[−-](?!\w)|data lines?/iu.test(candidate));
      if (name === undefined) return [];
      return [findingOf(RULE, atKey(...port.path), { message: `${port.id} has “${name}” beside its Type-C offers.`, subject: port.id })];
    });
}
