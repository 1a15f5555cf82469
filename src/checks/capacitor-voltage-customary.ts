import type { Finding } from '../diagnostics/finding.ts';
import { roleOf } from '../roles/index.ts';
import { CAPACITOR_VOLTAGES, isCapacitorVoltage } from '../standards/capacitor-voltages.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'capacitor-voltage-customary',
  title: 'A capacitor voltage that is rarely sold',
  severity: 'note',
  why: 'Electrolytic and polymer capacitors come in few voltages; another one is often two swapped digits.',
  advice: 'Read the marking again; special types exist, and then the note can stay.',
  source: CAPACITOR_VOLTAGES.source,
};

export const capacitorVoltageCustomary: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return entry.parts.flatMap((part) => {
    const partClass = roleOf(part.role)?.partClass;
    if (partClass !== 'aluminium electrolytic' && partClass !== 'polymer capacitor') return [];
    // A ceramic or film capacitor in the place of an electrolytic has its own voltages.
    if (part.rating?.marks.some((mark) => mark.kind === 'dielectric' || mark.kind === 'safety class') === true) return [];
    const volts = part.rating?.quantities.find((quantity) => quantity.dimension === 'voltage' && quantity.bound === 'value');
    if (volts === undefined || isCapacitorVoltage(volts.nominal)) return [];
    const [below, above] = neighboursOf(volts.nominal);
    const near = [below, above].filter((listed) => listed !== undefined).map((listed) => `${rounded(listed)} V`);
    const message = `${part.references.join(', ')}: ${volts.written} is not customary; near it are ${near.join(' and ')}.`;
    return [findingOf(RULE, atKey(...part.path), { message, subject: part.references.join(', ') })];
  });
}

function neighboursOf(volts: number): [number | undefined, number | undefined] {
  const { volts: listed } = CAPACITOR_VOLTAGES;
  return [listed.filter((one) => one < volts).at(-1), listed.find((one) => one > volts)];
}
