import type { Finding } from '../diagnostics/finding.ts';
import type { Allocation, Entry, Share } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { PRINTED_SLACK } from './rounded.ts';

const RULE: Rule = {
  id: 'share-between-steps',
  title: 'A share is none of the steps that the port is said to take',
  severity: 'warning',
  why: 'Where the steps of a port are given, a share between them says that a step is missing or that the share is a slip.',
  advice: 'Add the step, or correct the share.',
  source: {
    title: 'Power Systems Design, Intelligent power sharing for next-generation charger design (1 August 2023)',
    section: 'a four-port charger of 100 W whose first port gives 100, 65 or 45 W, depending on the others',
    standing: 'read',
  },
};

export const shareBetweenSteps: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return (entry.sharing?.allocations ?? []).flatMap((allocation) =>
    allocation.shares.flatMap((share) => findingsOf(share, allocation, entry)),
  );
}

/** Of a pool a port may take any part, so only a port's own share is compared. */
function findingsOf({ ports, power }: Share, allocation: Allocation, entry: Entry): Finding[] {
  const [port, ...more] = ports;
  const steps = port === undefined ? undefined : entry.sharing?.steps[port];
  if (port === undefined || more.length > 0 || steps === undefined || steps.length === 0) return [];
  const low = (power.low ?? power.nominal) * (1 - PRINTED_SLACK);
  const high = (power.high ?? power.nominal) * (1 + PRINTED_SLACK);
  if (steps.some((step) => (step.high ?? step.nominal) >= low && (step.low ?? step.nominal) <= high)) return [];
  const message = `${port} gets ${power.written} with ${allocation.ports.join(' + ')} in use, and its steps are ${steps.map((step) => step.written).join(', ')}.`;
  return [findingOf(RULE, atValue(...allocation.path), { message, subject: port })];
}
