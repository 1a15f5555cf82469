import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'former-addresses',
  title: 'A former address cannot lead here',
  severity: 'error',
  why: 'A page that leads to itself never ends, and an address can lead to one place only.',
  advice: 'List addresses that this teardown had before, each once, as in /teardowns/lm-q-100/.',
  source: commonPractice('redirects must end'),
};

export const formerAddresses: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  const own = bare(`/teardowns/${entry.slug}/`);
  return entry.formerAddresses.flatMap((address, index) => {
    const finding = (message: string): Finding[] => [findingOf(RULE, atValue('former addresses', index), { message, subject: address })];
    if (bare(address) === own) return finding(`${address} is the present address of this teardown.`);
    const earlier = entry.formerAddresses.slice(0, index).some((other) => bare(other) === bare(address));
    return earlier ? finding(`${address} is listed twice.`) : [];
  });
}

/** Without the slashes around it and without index.html, as servers see it. */
function bare(address: string): string {
  return address.replace(/index\.html$/, '').replace(/^\/+|\/+$/g, '');
}
