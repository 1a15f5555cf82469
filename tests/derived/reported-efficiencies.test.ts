import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { reportedAndMeasured } from '../../src/derived/reported-and-measured.ts';
import { checkText } from '../checks/read-example.ts';

const MEASURED =
  '{ port: C1, line: 230 V, output: 20 V, at: connector, points: { 25 %: 88.1 %, 50 %: 90.4 %, 75 %: 90.9 %, 100 %: 90.6 % } }';

/** "peak efficiency 94.5 against 90.9", or "agrees"; mean of the measured rows 90.0 %, the highest 90.9 %. */
function said({ runs = [], claims = [] }: { readonly runs?: readonly string[]; readonly claims?: readonly string[] }): readonly string[] {
  const text = `---\ntitle: Trial\ndevice: { maker: Larkmoor, name: Trial, kind: wall charger }\nnameplate: { input: 100-240 V~ 50/60 Hz, total: 100 W }\nports: { C1: { connector: USB-C, power: 100 W, offers: 20 V 5 A } }\nmeasurements: { efficiency: [${[MEASURED, ...runs].join(', ')}] }\nclaims: [${claims.join(', ')}]\n---\n`;
  const { entry, reading } = checkText('trial', text);
  if (entry === null || reading.some(({ severity }) => severity === 'error')) throw new Error(JSON.stringify(reading));
  return reportedAndMeasured(entry, derive(entry)).map(({ subject, agrees, reported, measured }) =>
    agrees ? 'agrees' : `${subject} ${(reported.nominal * 100).toFixed(1)} against ${(measured.nominal * 100).toFixed(1)}`,
  );
}

describe('an efficiency that is stated beside the one that was measured', () => {
  test('a display that says more at the same load is found out, in points', () => {
    const run = (points: string, about = ''): string =>
      `{ port: C1, line: 230 V, output: 20 V${about}, method: its own display, points: { ${points} } }`;
    expect(said({ runs: [run('50 %: 94 %')] })).toEqual(['efficiency 94.0 against 90.4']);
    expect(said({ runs: [run('50 %: 91 %')] })).toEqual(['agrees']);
    expect(said({ runs: [run('10 %: 94 %')] })).toEqual([]);
  });

  test('another line voltage or another output voltage is another condition', () => {
    expect(said({ runs: ['{ port: C1, line: 115 V, output: 20 V, method: its own display, points: { 50 %: 94 % } }'] })).toEqual([]);
    expect(said({ claims: ['{ of: peak efficiency, value: 95 %, line: 115 V }'] })).toEqual([]);
    expect(said({ claims: ['{ of: peak efficiency, value: 95 %, line: 230 V 50 Hz }'] })).toEqual(['peak efficiency 95.0 against 90.9']);
  });

  test('a print on the device is no measurement: it is compared and not judged', () => {
    expect(said({ runs: ['{ port: C1, line: 230 V, output: 20 V, average: 92.8 %, evidence: printed }'] })).toEqual([
      'average efficiency 92.8 against 90.0',
    ]);
    expect(said({ claims: ['{ of: average efficiency, value: 90.5 % }'] })).toEqual(['agrees']);
  });

  test('a rounded print may be half a digit less, and a careful one is no boast', () => {
    expect(said({ claims: ['{ of: peak efficiency, value: 92 % }'] })).toEqual(['agrees']);
    expect(said({ claims: ['{ of: peak efficiency, value: 92.0 % }'] })).toEqual(['peak efficiency 92.0 against 90.9']);
    expect(said({ claims: ['{ of: peak efficiency, value: 85 % }'] })).toEqual(['agrees']);
  });
});
