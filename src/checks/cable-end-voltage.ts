import { cableDropAt, lowestAtCableEnd } from '../derived/cable-end.ts';
import { factValue } from '../derived/fact-value.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { EfficiencyPoint } from '../entry/entry.ts';
import { highestSourceVoltage } from '../formulas/cable/highest-source-voltage.ts';
import { lowestSourceVoltage } from '../formulas/cable/lowest-source-voltage.ts';
import { CABLE_DROP, SOURCE_VOLTAGE } from '../standards/usb-output-limits.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { isMissing, type Value } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'cable-end-voltage',
  title: 'A measured output voltage outside its allowance',
  severity: 'warning',
  why: 'A source holds its voltage within 5 % at its port, and a cable may take 0.75 V more: a reading beyond that is a faulty contact, a thin cable or a slip.',
  advice: 'Say where it was measured (at: connector or cable end) and with which cable, and measure once more at the port.',
  source: SOURCE_VOLTAGE.source,
};

export const cableEndVoltage: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  const usb = new Set(entry.ports.filter((port) => port.connector !== 'barrel').map((port) => port.id));
  return entry.efficiency.flatMap((point) => {
    if (point.of !== null) return [];
    const each = point.loads.length === 0 ? [point] : point.loads.map((load) => ({ ...point, ...load }));
    return each.flatMap((one) => {
      // Without a port the point may belong to a barrel, unless there is none.
      const isUsb = one.port === null ? usb.size === entry.ports.length : usb.has(one.port);
      const fault = isUsb ? faultOf(one) : null;
      return fault === null ? [] : [findingOf(RULE, atValue(...(one.measuredOutput?.path ?? one.path)), fault)];
    });
  });
}

type Fault = Pick<Parameters<typeof findingOf>[2], 'message' | 'severity' | 'source'>;

function faultOf(point: EfficiencyPoint): Fault | null {
  const { output, measuredOutput, place } = point;
  if (output === null || measuredOutput === null || place === null || place === 'board') return null;
  const [set, read] = [factValue(output), factValue(measuredOutput)];
  if (isMissing(set) || isMissing(read)) return null;
  const words = `${measuredOutput.quantity.written} was read where ${output.quantity.written} was set`;
  const highest = applyFormula(highestSourceVoltage, { voltage: set });
  if (!isMissing(highest) && read.nominal > highest.nominal + SLACK)
    return judged(`${words}: more than 5 % above`, read, { isOutside: read.low > highest.nominal + SLACK });
  if (place === 'cable end') return atFarEnd(point, read, words);
  const lowest = applyFormula(lowestSourceVoltage, { voltage: set });
  if (isMissing(lowest) || read.nominal >= lowest.nominal - SLACK) return null;
  return judged(`${words}: more than 5 % below, at the port itself`, read, { isOutside: read.high < lowest.nominal - SLACK });
}

const SLACK = 1e-9;

/** A reading outside is a finding; where the edge lies inside what the meter leaves open, it is undecided and no more than a note. */
function judged(
  message: string,
  read: Value<'voltage'>,
  { isOutside, more = '' }: { readonly isOutside: boolean; readonly more?: string },
): Fault {
  if (isOutside) return { message: `${message}.${more}` };
  const span = `${rounded(read.low, 4)} V to ${rounded(read.high, 4)} V`;
  return { message: `${message} as read; the meter leaves ${span}, so it is undecided.${more}`, severity: 'note' };
}

function atFarEnd(point: EfficiencyPoint, read: Value<'voltage'>, words: string): Fault | null {
  const lowest = lowestAtCableEnd(point);
  if (lowest === null || isMissing(lowest) || read.nominal >= lowest.nominal - SLACK) return null;
  const drop = cableDropAt(point);
  const more =
    drop === null || isMissing(drop)
      ? ''
      : ` A cable of ${point.cable?.written ?? ''} takes ${rounded(drop.nominal, 3)} V at ${point.current?.quantity.written ?? ''}.`;
  const message = `${words}: below the ${rounded(lowest.nominal, 4)} V that 5 % and a cable’s 0.75 V leave`;
  return { ...judged(message, read, { isOutside: read.high < lowest.nominal - SLACK, more }), source: CABLE_DROP.source };
}
