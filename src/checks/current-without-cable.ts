import type { Finding } from '../diagnostics/finding.ts';
import type { EfficiencyPoint, Port } from '../entry/entry.ts';
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
      const [first] = entry.efficiency.filter((point) => isAt(point, port) && lacksCable(point));
      if (first === undefined) return [];
      const message = `${first.current?.quantity.written ?? ''} was drawn from ${port.id} and no cable is named.`;
      return [findingOf(RULE, atKey(...first.path), { message, subject: port.id })];
    });
}

function isAt(point: EfficiencyPoint, port: Port): boolean {
  return point.of === null && point.port === port.id;
}

/** At the board no cable is between. */
function lacksCable(point: EfficiencyPoint): boolean {
  return point.cable === null && point.place !== 'board' && (point.current?.quantity.nominal ?? 0) > CABLE_CURRENT.amps + 1e-9;
}
