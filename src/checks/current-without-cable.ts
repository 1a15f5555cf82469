import type { Finding } from '../diagnostics/finding.ts';
import type { EfficiencyPoint, Fact, Port } from '../entry/entry.ts';
import { CABLE_CURRENT } from '../standards/usb-output-limits.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'current-without-cable',
  title: 'More than 3 A was drawn, and the cable is not named',
  severity: 'warning',
  why: 'A source gives more than 3 A only through a marked cable; without knowing the cable nobody can repeat the reading.',
  advice: 'Name the cable of the measurement (cable: 1 m AWG 20, marked 5 A) or of the port (read through: marked cable).',
  source: CABLE_CURRENT.source,
};

export const currentWithoutCable: Check = { ...RULE, check };

/** One finding for all points of a port, at the first of them. */
function check({ entry }: CheckInput): Finding[] {
  return entry.ports
    .filter((port) => port.connector === 'USB-C' && port.readThrough === null)
    .flatMap((port) => {
      const drawn = entry.efficiency.flatMap((point) => {
        const current = currentAt(point, port);
        return current !== null && lacksCable(point, current) ? [{ point, current }] : [];
      });
      const [first] = drawn;
      if (first === undefined) return [];
      const message = `${first.current.quantity.written} was drawn from ${port.id} and no cable is named.`;
      return [findingOf(RULE, atKey(...first.point.path), { message, subject: port.id })];
    });
}

/** What a point drew from a port, by itself or beside others. */
function currentAt({ of: stage, port, loads, current }: EfficiencyPoint, { id }: Port): Fact<'current'> | null {
  if (stage !== null) return null;
  return port === id ? current : (loads.find((load) => load.port === id)?.current ?? null);
}

/** At the board no cable is between. */
function lacksCable({ cable, place }: EfficiencyPoint, current: Fact<'current'>): boolean {
  return cable === null && place !== 'board' && current.quantity.nominal > CABLE_CURRENT.amps + 1e-9;
}
