import { describe, expect, test } from 'vitest';
import type { LogFile } from '../../src/entry/entry.ts';
import { isMissing } from '../../src/values/value.ts';
import { findingsOf, NAMED, printed, readingOf, steadyRows } from './a-log.ts';
import { contentFolder, entryText } from './content-folder.ts';
import { prepareIn } from './run-in.ts';

describe('a log beside an entry', () => {
  test('is read with commas, semicolons or tabs, LF or CR LF, with a byte order mark, units in brackets, and lines before its heading', async () => {
    const head = ['t (s)', 'U (V)', 'I (A)'];
    const files = [
      `${head.join(',')}\n${steadyRows()}`,
      `\uFEFF${head.join(';')}\r\n${steadyRows(';', '\r\n')}`,
      `${head.join('\t')}\n${steadyRows('\t')}`,
      `Bench logger 4\nSerial,0042\n\n${head.join(',')}\n${steadyRows()}`,
      `"t (s)","U (V)","I (A)"\n${steadyRows().replace(/[\d.]+/g, '"$&"')}`,
      `${head.join(',')},\n${steadyRows(',', ',\n')}`,
    ];
    for (const csv of files) {
      const { summary, inEntry, inFile } = await readingOf(csv);
      expect([inEntry, inFile]).toEqual([[], []]);
      expect(summary?.rows).toBe(37);
      expect([printed(summary?.energy), printed(summary?.charge), printed(summary?.duration)]).toEqual(['4.000 Wh', '200.0 mAh', '360 s']);
    }
  });

  test('has its unit in the head, in a row of units, behind "in", or in each cell', async () => {
    const milli = steadyRows().replace(/2\.000/g, '2000');
    const current = async (csv: string, columns: LogFile['columns']): Promise<string> => {
      const { summary, inEntry, inFile } = await readingOf(csv, { columns });
      expect([...inEntry, ...inFile].map(({ message }) => message)).toEqual([]);
      return printed(summary?.channels.find(({ quantity }) => quantity === 'current')?.mean);
    };
    expect(await current(`t (s),Volt,I_mA\n${milli}`, { time: 't (s)', current: 'I_mA' })).toBe('2.000 A');
    expect(await current(`t,U,I\ns,V,mA\n${milli}`, { time: 't', voltage: 'U', current: 'I' })).toBe('2.000 A');
    expect(await current(`t,Ch1,Ch2\n${milli}`, { time: 't in s', voltage: 'Ch1 in V', current: 'Ch2 in mA' })).toBe('2.000 A');
    expect(
      await current(`t,U,I\n${milli.replace(/,20\.00,2000/g, ',20.00 V,2000 mA')}`, { time: 't in s', voltage: 'U', current: 'I' }),
    ).toBe('2.000 A');
  });

  test('finds its columns by our own words where none are named', async () => {
    const { summary, inEntry } = await readingOf(`Time (s),Voltage (V),Current (A),Note\n${steadyRows(',', ',x\n')}`, { columns: {} });
    expect(inEntry).toEqual([]);
    expect(summary?.channels.map(({ quantity }) => quantity)).toEqual(['voltage', 'current', 'power']);
  });

  test('a missing file is said where the entry names it, with the files that are there', async () => {
    const entry = entryText('A', 'x\n', 'logs: { run: rum.csv }\n');
    const { diagnostics } = await prepareIn(contentFolder({ 'teardowns/a/index.md': entry, 'teardowns/a/run.csv': 'time (s)\n' }));
    const said = diagnostics.find(({ rule }) => rule === 'log-file-missing');
    expect(said?.line).toBe(7);
    expect(said?.message).toMatch(/no file "rum\.csv".*it has "run\.csv"\. Did you mean "run\.csv"\?/);
  });

  test('a file outside the folder of the entry is not read', async () => {
    const entry = entryText('A', 'x\n', 'logs: { run: ../../site.yaml }\n');
    const { diagnostics } = await prepareIn(contentFolder({ 'teardowns/a/index.md': entry }));
    expect(diagnostics.map(({ rule }) => rule)).toContain('log-file-missing');
  });

  test('a wrong column name is said at its line in the entry, with the nearest', async () => {
    const said = await findingsOf(
      `t (s),U (V),I (A)\n${steadyRows()}`,
      '    columns: { time: "t (s)", voltage: "U(V)", current: "I (A)" }\n',
    );
    expect(said).toEqual([
      'index.md:10:40 log-column: The file has no column "U(V)"; it has "t (s)", "U (V)", "I (A)". Did you mean "U (V)"?',
    ]);
  });

  test('a word that no column can be, and a unit of something else, are said at their places', async () => {
    const said = await findingsOf(
      `t (s),U (V),I (A)\n${steadyRows()}`,
      '    columns: { time: "t (s)", voltge: "U (V)", current: I (A) in mV }\n',
    );
    expect(said).toEqual([
      'index.md:10:31 log-quantity: "voltge" is not what a column of a log can be. Did you mean "voltage"?',
      'index.md:10:57 log-unit: "mV" is no unit of current',
    ]);
  });

  test('a ragged row, a word, NaN and a decimal comma have line and column, all in one run, and the other rows are read', async () => {
    const rows = [
      '0,20.0,2.0',
      '1,20.0',
      '2,20.0,2.0,7',
      '3,OL,2.0',
      '4,20.0,NaN',
      '5,"20,1",2.0',
      '6,20.0,2.0',
      '7,20.0,inf',
      '',
      '8,20.0,2.0',
    ];
    expect(await findingsOf(`t (s),U (V),I (A)\n${rows.join('\n')}\n`)).toEqual([
      'run.csv:3:7 log-row: This row has 2 cells, the heading 3',
      'run.csv:4:12 log-row: This row has 4 cells, the heading 3',
      'run.csv:5:3 log-cell: "OL" is not a number (voltage)',
      'run.csv:6:8 log-cell: "NaN" is not a number (current)',
      'run.csv:7:3 log-cell: "20,1" is not a number (voltage): the file seems to write decimal commas; say "decimal: comma"',
      'run.csv:9:8 log-cell: "inf" is not a number (current)',
    ]);
  });

  test('declared decimal commas are read, and points are then refused', async () => {
    const rows = '0;20,5;2\n1;20,5;2\n2;20.5;2\n3;20,5;2\n';
    const { summary, inFile } = await readingOf(`t (s);U (V);I (A)\n${rows}`, { decimal: 'comma' });
    expect(printed(summary?.channels[0]?.mean)).toBe('20.5 V');
    expect(inFile.map(({ rule, where, message }) => [rule, where, message])).toEqual([
      [
        'log-cell',
        { in: 'file', line: 4, column: 3 },
        '"20.5" is not a number (voltage): the log is said to write decimal commas, and this is a decimal point',
      ],
    ]);
  });

  test('time must rise', async () => {
    expect(await findingsOf('t (s),U (V),I (A)\n0,5,1\n1,5,1\n1,5,1\n0.5,5,1\n2,5,1\n')).toEqual([
      'run.csv:4:1 log-time: "1" does not come after the row before it',
      'run.csv:5:1 log-time: "0.5" does not come after the row before it',
    ]);
  });

  test('a gap is told at the row behind it, and widens the sum', async () => {
    const rows = Array.from({ length: 20 }, (_, row) => `${row < 10 ? row : row + 100},10,${row < 10 ? 1 : 3}`);
    const csv = `t (s),U (V),I (A)\n${rows.join('\n')}\n`;
    expect(await findingsOf(csv)).toEqual([
      'run.csv:12:1 log-gap: No rows for 101 s, from 9 s to 110 s after the first row; rows usually stand 1 s apart',
    ]);
    const { summary } = await readingOf(csv);
    const energy = summary?.energy;
    // Nine seconds at 10 W, nine at 30 W, and 101 s between them at anything from 10 W to 30 W.
    expect(energy !== undefined && !isMissing(energy) ? [energy.low, energy.nominal, energy.high] : []).toEqual([1370, 2380, 3390]);
  });

  test('a million faults are ten and a count', async () => {
    const rows = Array.from({ length: 500 }, (_, row) => `${row},x,1`);
    const said = await findingsOf(`t (s),U (V),I (A)\n${rows.join('\n')}\n`);
    expect(said.filter((line) => line.includes('log-cell')).length).toBe(11);
    expect(said).toContain('run.csv:501:1 log-cell: 490 more rows like the 10 above; the last is line 501');
  });

  test.each<[string, string | Uint8Array, RegExp]>([
    ['an empty file', '', /run\.csv:1:1 log-empty: The file is empty/],
    ['a file of blank lines', '\n\n', /run\.csv:1:1 log-empty: The file is empty/],
    ['a heading alone', 't (s),U (V),I (A)\n', /run\.csv:1:1 log-empty: The file has a heading and no rows/],
    ['UTF-16', new Uint8Array([0xff, 0xfe, 0x74, 0]), /run\.csv:1:1 file-not-utf8: The log is UTF-16/],
    ['a heading in another encoding', new Uint8Array([0x54, 0x20, 0xb0, 0x43, 0x0a]), /run\.csv:1:1 file-not-utf8/],
    ['a quote that is never closed', `t (s),U (V),I (A)\n0,5,1\n1,"5,1\n2,5,1\n`, /run\.csv:3:1 log-quote: A double quote is opened/],
  ])('%s is said', async (_, csv, wanted) => {
    expect((await findingsOf(csv)).join('\n')).toMatch(wanted);
  });

  test('a column without a unit is read in the usual one, and that is said', async () => {
    expect(await findingsOf(`t,U,I\n${steadyRows()}`, '    columns: { time: t, voltage: U, current: I in A }\n')).toEqual([
      'index.md:10:22 log-unit-unsaid: The column "t" states no unit; it is read in s',
      'index.md:10:34 log-unit-unsaid: The column "U" states no unit; it is read in V',
    ]);
  });

  test('blank cells are told once and left out of the mean', async () => {
    const csv = 't (s),U (V),I (A)\n0,20,2\n1,20,\n2,20,\n3,20,2\n';
    expect(await findingsOf(csv)).toEqual(['run.csv:3:6 log-blank-cell: 2 of 4 rows have no current; this is the first']);
    const { summary } = await readingOf(csv);
    expect(summary?.channels.find(({ quantity }) => quantity === 'current')).toMatchObject({ rows: 2, mean: { nominal: 2 } });
  });

  test('a power that is not volts times amperes is said', async () => {
    const columns = '    columns: { time: "t (s)", voltage: "U (V)", current: "I (A)", power: "P (W)" }\n';
    const rows = (watts: string): string => `t (s),U (V),I (A),P (W)\n${steadyRows(',', `,${watts}\n`)}`;
    expect(await findingsOf(rows('40.1'), columns)).toEqual([]);
    expect(await findingsOf(rows('4.0'), columns)).toEqual([
      'run.csv:2:1 log-power-disagrees: The mean of "P (W)" is 4 W, that of volts times amperes 40 W',
    ]);
  });

  test('a counter of the tester is a column like any other, and its table row has no mean', async () => {
    const { summary } = await readingOf(`t (s),E (Wh)\n0,0\n60,0.5\n120,1.25\n`, { columns: { time: 't (s)', energy: 'E (Wh)' } });
    const counter = summary?.channels[0];
    expect([printed(counter?.lowest.value), printed(counter?.highest.value)]).toEqual(['0 J', '1.25 Wh']);
    expect(printed(summary?.energy)).toMatch(/has no volts and amperes, or watts/);
  });

  test('an event outside the log, or at no time, is said at its line', async () => {
    const said = await findingsOf(
      `t (s),U (V),I (A)\n${steadyRows()}`,
      `${NAMED}    events: { 20 s: phone in, 9 min: phone out, later: "?" }\n`,
    );
    expect(said).toEqual([
      'index.md:11:31 log-event: 9 min is not within the log, which lasts 360 s',
      'index.md:11:49 log-event: "later" is not a time: write it as in "20 s" or "1.5 min"',
    ]);
  });
});

describe('sustained power of a log', () => {
  const head = 't (s),U (V),I (A)\n';

  test('100 W peak, 65 W sustained, drop at 12 min', async () => {
    const { summary } = await readingOf(`${head}0,20.00,5.000\n720,20.00,3.250\n1800,20.00,3.250\n`);
    const power = summary?.power;
    expect([printed(power?.peak), printed(power?.sustained), printed(power?.droppedAfter)]).toEqual(['100.0 W', '65.00 W', '12.0 min']);
  });

  test('a test shorter than 30 minutes says so', async () => {
    const { summary } = await readingOf(`${head}${steadyRows()}`);
    expect(printed(summary?.power.peak)).toBe('40.00 W');
    expect(printed(summary?.power.sustained)).toBe('sustained not shown: 360 s under load, 30 min are needed');
  });

  test('a log without current has no power, and says what it needs', async () => {
    const { summary } = await readingOf(`t (s),U (V)\n0,5\n1,5\n`, { columns: { time: 't (s)', voltage: 'U (V)' } });
    expect(printed(summary?.power.peak)).toMatch(/needs volts and amperes, or watts/);
    expect(printed(summary?.energy)).toMatch(/has no volts and amperes, or watts/);
  });
});

test('a port that the entry does not have is said at the log', async () => {
  const data = 'ports: { C1: { connector: USB-C, power: 30 W } }\nlogs:\n  run: { file: run.csv, port: C9 }\n';
  const content = contentFolder({
    'teardowns/a/index.md': entryText('A', 'x\n', data),
    'teardowns/a/run.csv': 'time (s),voltage (V)\n0,5\n1,5\n',
  });
  const { diagnostics } = await prepareIn(content);
  expect(diagnostics.filter(({ rule }) => rule === 'unknown-port').map(({ line, column, message }) => [line, column, message])).toEqual([
    [9, 31, 'There is no port "C9".'],
  ]);
});
