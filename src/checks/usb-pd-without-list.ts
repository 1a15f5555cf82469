import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'usb-pd-without-list',
  title: 'USB PD is claimed, and no offers of it are listed',
  severity: 'warning',
  why: 'A port that negotiates over USB PD has a list of offers; without it nobody can tell what a device will get.',
  advice: 'Read the list with a tester and put it under offers, or leave the revision out.',
  source: commonPractice('a USB PD source sends its list before anything else'),
};

export const usbPdWithoutList: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return entry.ports
    .filter((port) => port.direction !== 'input' && claimsPd(port.revision, port.protocols))
    .filter((port) => port.offers.every((offer) => offer.kind === 'plain'))
    .map((port) =>
      findingOf(RULE, atKey(...port.path), { message: `${port.id} claims USB PD, and no offer of it is listed.`, subject: port.id }),
    );
}

function claimsPd(revision: string | null, protocols: readonly string[]): boolean {
  return revision !== null || protocols.some((name) => /\b(?:USB[- ]?)?PD\b|power delivery/iu.test(name));
}
