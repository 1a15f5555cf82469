import { cableDropAt, lowestAtCableEnd } from '../derived/cable-end.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { EfficiencyPoint } from '../entry/entry.ts';
import { CABLE_DROP, SOURCE_VOLTAGE } from '../standards/usb-output-limits.ts';
import { isMissing } from '../values/value.ts';
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
    // Without a port the point may belong to a barrel, unless there is none.
    const isUsb = point.port === null ? usb.size === entry.ports.length : usb.has(point.port);
    if (!isUsb || point.of !== null) return [];
    const message = faultOf(point);
    return message === null ? [] : [findingOf(RULE, atValue(...(point.measuredOutput?.path ?? point.path)), message)];
  });
}

function faultOf(point: EfficiencyPoint): { readonly message: string; readonly source?: Rule['source'] } | null {
  const { output, measuredOutput, place } = point;
  if (output === null || measuredOutput === null || place === null || place === 'board') return null;
  const [set, read] = [output.quantity.nominal, measuredOutput.quantity.nominal];
  const highest = set * (1 + SOURCE_VOLTAGE.tolerance);
  const words = `${measuredOutput.quantity.written} was read where ${output.quantity.written} was set`;
  if (read > highest + 1e-9) return { message: `${words}: more than 5 % above.` };
  if (place === 'connector') {
    const lowest = set * (1 - SOURCE_VOLTAGE.tolerance);
    return read < lowest - 1e-9 ? { message: `${words}: more than 5 % below, at the port itself.` } : null;
  }
  return atFarEnd(point, read, words);
}

function atFarEnd(
  point: EfficiencyPoint,
  read: number,
  words: string,
): { readonly message: string; readonly source: Rule['source'] } | null {
  const lowest = lowestAtCableEnd(point);
  if (lowest === null || isMissing(lowest) || read >= lowest.low - 1e-9) return null;
  const drop = cableDropAt(point);
  const cable =
    drop === null || isMissing(drop)
      ? ''
      : ` A cable of ${point.cable?.written ?? ''} takes ${rounded(drop.nominal, 3)} V at ${point.current?.quantity.written ?? ''}.`;
  return {
    message: `${words}: below the ${rounded(lowest.low, 4)} V that 5 % and a cable’s 0.75 V leave.${cable}`,
    source: CABLE_DROP.source,
  };
}
