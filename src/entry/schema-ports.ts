import { z } from 'zod';
import { evidenceWord, note, oneOrMore, reading, words } from './schema-text.ts';
import { POWER_BY_INPUT_SCHEMA } from './schema-nameplate.ts';

const CONNECTORS = ['USB-C', 'USB-A', 'barrel', 'captive cable', 'wireless'] as const;

const PORT_SCHEMA = z
  .strictObject({
    'same as': words('A port that this one equals; what else stands here differs from it.', 'C1').optional(),
    connector: z.enum(CONNECTORS).optional().describe('Connector of the port.'),
    direction: z.enum(['output', 'input', 'both']).optional().describe('Output where left out.'),
    power: reading("The port's own limit.", '100 W', '100 W printed').optional(),
    peak: reading('Peak power where it is stated beside the continuous one.', '340 W').optional(),
    'power at input': POWER_BY_INPUT_SCHEMA.optional(),
    offers: oneOrMore(
      'What the port can supply: a list, one line of text, or the 32-bit words of a tester.',
      '[5 V 3 A, 20 V 5 A, PPS 3.3–21 V 5 A]',
      '0x0A01912C 0x0002D12C',
      '19 V 4.74 A',
    ).optional(),
    accepts: oneOrMore('What an input or two-way port takes.', '[5 V 3 A, 9 V 2 A]').optional(),
    revision: words('Revision of USB PD that the source claims, in quotes.', '"3.1"').optional(),
    'read through': z
      .enum(['unmarked cable', 'marked cable', 'EPR cable', 'captive cable'])
      .optional()
      .describe('Cable used when the offers were read.'),
    protocols: oneOrMore("Makers' own protocols, free words; no watts are drawn from them.").optional(),
    evidence: evidenceWord(),
    note: note(),
  })
  .describe('One port.');

export const PORTS_SCHEMA = z.record(z.string().min(1), PORT_SCHEMA).describe('Ports by their name on the case: C1, C2, A1, DC …');
