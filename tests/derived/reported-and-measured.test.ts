import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { reportedAndMeasured } from '../../src/derived/reported-and-measured.ts';
import type { Entry } from '../../src/entry/entry.ts';
import type { LogSummary } from '../../src/logs/log-summary.ts';
import { checkText } from '../checks/read-example.ts';
import { foldBackLog } from '../logs/a-log-summary.ts';

function entryWith(measurements: string, kind = 'wall charger'): Entry {
  const text = `---\ntitle: Trial\ndevice: { maker: Larkmoor, name: Trial, kind: ${kind} }\nports: { C1: { connector: USB-C, power: 100 W, offers: 20 V 5 A } }\nmeasurements:\n${measurements}\n---\n`;
  const { entry, reading } = checkText('trial', text);
  if (entry === null) throw new Error(JSON.stringify(reading));
  return entry;
}

/** "agrees", or both numbers in their own unit. */
function said(entry: Entry, logs: readonly LogSummary[] = []): readonly string[] {
  return reportedAndMeasured(entry, derive(entry, logs)).map(({ agrees, reported, measured, log }) =>
    agrees ? 'agrees' : `${String(reported.nominal)} and ${measured.nominal.toPrecision(3)}${log === null ? '' : ` of ${log}`}`,
  );
}

describe('what a system reports beside what was measured', () => {
  // Public issue 521 on a notebook's firmware: 5 V 3 A reported by the operating system, about 60 W on an inline meter.
  test('5 V 3 A reported are 15 W, and 60 W flow', () => {
    const rows =
      '  sustained power: [{ value: 60 W, port: C1, instrument: inline meter }, { value: 15 W, port: C1, method: reported by the operating system }]';
    expect(said(entryWith(rows))).toEqual(['15 and 60.0']);
  });

  test('a figure under other conditions is no contradiction; one condition that is only said once is', () => {
    const rows = (line: string): string =>
      `  standby: [{ value: 40 mW, line: 230 V, instrument: meter }, { value: 90 mW${line}, method: its own display }]`;
    expect(said(entryWith(rows(', line: 115 V')))).toEqual([]);
    expect(said(entryWith(rows(', line: 230 V 50 Hz')))).toEqual(['0.09 and 0.0400']);
    expect(said(entryWith(rows('')))).toEqual(['0.09 and 0.0400']);
  });

  test('of several measured ones the nearest counts', () => {
    const rows =
      '  standby: [{ value: 40 mW, line: 115 V, instrument: meter }, { value: 60 mW, line: 230 V, instrument: meter }, { value: 61 mW, method: its own display }]';
    expect(said(entryWith(rows))).toEqual(['agrees']);
  });

  test('a log counts as measured: the power of its last minutes, and the energy of a discharge', () => {
    const log = foldBackLog();
    const rows = '  sustained power: [{ value: 100 W, port: C1, method: its own display }]';
    expect(said(entryWith(rows), [log])).toEqual(['100 and 65.0 of full load']);
    const display = '  delivered energy: [{ value: 60 Wh, output: 20 V, method: its own display }]';
    expect(said(entryWith(display, 'power bank'), [foldBackLog({ note: 'full to empty' })])).toEqual([
      expect.stringMatching(/^216000 and 1\.\d+e\+5 of full load$/),
    ]);
  });

  test('temperatures are compared in kelvin: 46 °C for 43 °C is near enough, 60 °C is not', () => {
    const rows = (celsius: string): string =>
      `  thermal: [{ value: 43 °C, place: cells, instrument: probe }, { value: ${celsius}, place: cells, method: reported by the app }]`;
    expect([said(entryWith(rows('46 °C'))), said(entryWith(rows('60 °C')))]).toEqual([['agrees'], ['60 and 43.0']]);
  });
});
