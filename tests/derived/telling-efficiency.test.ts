import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { tellingEfficiency } from '../../src/derived/telling-efficiency.ts';
import { isMissing } from '../../src/values/value.ts';
import { checkText } from '../checks/read-example.ts';

const PORTS = [
  'C1: { connector: USB-C, power: 65 W, offers: [5 V 3 A, 20 V 3.25 A] }',
  'A1: { connector: USB-A, power: 12 W, offers: [5 V 2.4 A] }',
];

/** What stands for a 65 W charger with these runs: percent, kind of figure, line voltage. */
function telling(...runs: readonly string[]): readonly unknown[] | null {
  const efficiency = runs.map((run) => `    - { at: connector, ${run} }`).join('\n');
  const text = `---\ntitle: A charger\ndevice: { maker: Larkmoor, model: LM-S65, kind: wall charger }\nnameplate: { input: 100-240 V~ 50/60 Hz 1.5 A, total: 65 W }\nports:\n  ${PORTS.join('\n  ')}\nmeasurements:\n  efficiency:\n${efficiency}\n---\n`;
  const { entry, reading } = checkText('charger', text);
  if (entry === null) throw new Error(JSON.stringify(reading));
  const found = tellingEfficiency(entry, derive(entry));
  if (found === null) return null;
  const { value, conditions } = found;
  const percent = isMissing(value) ? value.reason : (value.nominal * 100).toFixed(2);
  return [percent, conditions.statistic, conditions.line?.quantity.written ?? null];
}

// Averages worked by hand: (88 + 91 + 92 + 93) / 4 = 91.00 and (87 + 90 + 91 + 90) / 4 = 89.50.
const AT_230 = 'port: C1, line: 230 V, output: 20 V, points: { 25 %: 88 %, 50 %: 91 %, 75 %: 92 %, 100 %: 93 % }';
const AT_115 = 'port: C1, line: 115 V, output: 20 V, points: { 25 %: 87 %, 50 %: 90 %, 75 %: 91 %, 100 %: 90 % }';

describe('the efficiency that stands for a device', () => {
  test('is the mean at 230 V, not the best point', () => {
    expect(telling(AT_115, AT_230)).toEqual(['91.00', 'average', '230 V']);
  });

  test('is the mean of the other line where none was measured at 230 V', () => {
    expect(telling(AT_115)).toEqual(['89.50', 'average', '115 V']);
  });

  test('is neither the mean of a weaker port nor that of a lower voltage', () => {
    const weaker = 'port: A1, line: 230 V, output: 5 V, points: { 25 %: 80 %, 50 %: 81 %, 75 %: 82 %, 100 %: 83 % }';
    const lower = 'port: C1, line: 230 V, output: 5 V, points: { 25 %: 84 %, 50 %: 85 %, 75 %: 86 %, 100 %: 87 % }';
    expect(telling(weaker, lower, AT_230)).toEqual(['91.00', 'average', '230 V']);
  });

  test('is the point with the most power where a load of the mean is absent', () => {
    const two = 'port: C1, line: 230 V, output: 20 V, points: { 50 %: 35.7 W 91 %, 100 %: 69.9 W 93 % }';
    expect(telling(two)).toEqual(['93.00', 'point', '230 V']);
  });

  test('is no mean of what the device reported of itself', () => {
    expect(telling(`method: reported by the device, ${AT_230}`, AT_115)).toEqual(['89.50', 'average', '115 V']);
  });

  test('is nothing where nothing was measured at the whole device', () => {
    expect(telling('of: pfc, line: 230 V, load: 100 %, efficiency: 97 %')).toBeNull();
  });
});
