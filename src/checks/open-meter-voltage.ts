import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'open-meter-voltage',
  title: 'A voltage into an open meter is not a touch current',
  severity: 'note',
  why: 'Half the mains on a high-impedance meter is normal for a two-pin unit; what counts is the current.',
  advice: 'Give the current in mA through the network of the standard, or leave the row out.',
  source: { title: 'IEC 60950-1, table 5A', section: 'limits are currents: 0.25 mA for equipment without earth', standing: 'secondary' },
};

export const openMeterVoltage: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  const rows = entry.measurements.filter((point) => point.subject === 'touch current' && point.value.quantity.dimension === 'voltage');
  return rows.map((point) =>
    findingOf(RULE, atKey(...point.path), {
      message: `${point.value.quantity.written} is the voltage on an open meter and says nothing about the touch current.`,
    }),
  );
}
