import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { benchInText } from '../../src/pipeline/bench-in-text.ts';
import { prepare } from '../../src/pipeline/prepare.ts';
import { contentFolder, entryText, temporaryFolder, writeFiles } from './content-folder.ts';

describe('the file of the bench', () => {
  it('reports every fault in one run with line and column, and keeps what is sound', () => {
    const { bench, faults } = benchInText(
      [
        'instrument: 1',
        'instruments:',
        '  meter:',
        '    name: AC power meter',
        '    acuracy: { power: 0.1 % }',
        '  load:',
        '    name: electronic load',
        '    accuracy: { voltage: 0.1 % + 2 digits, curent: 0.1 %, current: soso }',
        '    calibrated: 2026-02-30',
        '  "two words": { name: x }',
        '  nameless: { note: no name }',
        'methods: { ripple: 20 MHz at the connector }',
      ].join('\n'),
    );
    expect(faults.map(({ line, column, message }) => `${line}:${column} ${message}`)).toEqual([
      '1:1 "instrument" is not a field of the bench file; did you mean "instruments"?',
      '5:5 "acuracy" is not a field of an instrument; did you mean "accuracy"?',
      '8:44 "curent" is no quantity; did you mean "current"?',
      expect.stringContaining('8:68 "soso" in "soso" is no accuracy'),
      '9:17 "2026-02-30" is no day: write it as 2026-01-12',
      expect.stringContaining('10:3 "two words" cannot be the name of an instrument'),
      '11:3 "instruments.nameless.name" must be a text',
    ]);
    expect(bench.instruments.map(({ id, accuracies }) => [id, accuracies.length])).toEqual([
      ['meter', 0],
      ['load', 1],
    ]);
    expect(bench.methods).toEqual([{ id: 'method-ripple', name: 'ripple', how: '20 MHz at the connector', with: [], of: ['ripple'] }]);
  });

  it('a method says what it is always used for; two of one address and a strange subject are said', () => {
    const { bench, faults } = benchInText(
      [
        'methods:',
        '  Ripple and noise: { how: 20 MHz, for: ripple }',
        '  Ripple & noise: { how: 20 MHz }',
        '  Heat: { how: under tape, for: [thermal, thermall] }',
        '  Nothing: { for: ripple }',
      ].join('\n'),
    );
    expect(bench.methods.map(({ id, of }) => [id, of])).toEqual([
      ['method-ripple-and-noise', ['ripple']],
      ['method-ripple-noise', []],
      ['method-heat', ['thermal']],
    ]);
    expect(faults.map(({ line, column, message }) => `${line}:${column} ${message}`)).toEqual([
      '4:33 "thermall" is not something that is measured; did you mean "thermal"?',
      expect.stringMatching(/^5:\d+ .*must be a text, or "how" with "for"/),
    ]);
    const withOthers = benchInText(
      'instruments: { scope: { name: Oscilloscope } }\nmethods: { Ripple: { how: 20 MHz, with: [scope, scop] } }',
    );
    expect(withOthers.bench.methods[0]?.with).toEqual(['scope']);
    expect(withOthers.faults.map(({ line, message }) => `${line} ${message}`)).toEqual([
      '2 There is no instrument "scop" on the bench; did you mean "scope"?',
    ]);
    const twice = benchInText('methods: { "Ripple, noise": a, Ripple noise: b }');
    expect(twice.faults.map(({ message }) => message)).toEqual([
      '"Ripple noise" reads like the name of another method: both would have one address on the page',
    ]);
  });

  it.each([
    '',
    'words only',
    '- a list',
    'instruments: [a]',
    'a: &a [*a]',
    'instruments: { m: 3 }',
    '{',
    'instruments:\n  m: { name: { a: b } }',
  ])('whatever it holds, faults are said and nothing is thrown: %j', (text) => {
    expect(benchInText(text).faults.length).toBeGreaterThan(0);
  });

  it('an entry is computed anew when the bench changes, and only then', async () => {
    const measured = 'measurements: { standby: [{ value: 42.0 mW, line: 230 V, instrument: meter }] }\n';
    const content = contentFolder({
      'bench.yaml': 'instruments: { meter: { name: power meter, accuracy: { power: 1 % } } }\n',
      'teardowns/one/index.md': entryText('One', 'Nothing to say.\n', measured),
    });
    const [prepared, cache] = [temporaryFolder(), temporaryFolder()];
    const run = async (): Promise<number> => (await prepare({ content, prepared, cache, mode: 'check' })).counts.parsed;
    expect([await run(), await run()]).toEqual([1, 0]);
    writeFiles(content, { 'bench.yaml': 'instruments: { meter: { name: power meter, accuracy: { power: 2 % } } }\n' });
    expect([await run(), await run()]).toEqual([1, 0]);
    writeFiles(content, { 'bench.yaml': 'instruments: { metre: { name: power metre } }\n' });
    const { diagnostics } = await prepare({ content, prepared, cache, mode: 'check' });
    expect(diagnostics.filter(({ rule }) => rule === 'instrument-unknown').map(({ file, message }) => `${file}: ${message}`)).toEqual([
      `${join('teardowns', 'one', 'index.md')}: There is no instrument "meter" on the bench or in this entry. Did you mean "metre"?`,
    ]);
  });

  it('an entry is computed anew when a method of the bench gets another name, and not when it is told otherwise', async () => {
    const content = contentFolder({
      'bench.yaml': 'methods: { ripple and noise: 20 MHz bandwidth }\n',
      'teardowns/one/index.md': entryText(
        'One',
        'x\n',
        'measurements: { ripple: [{ value: 62 mV, output: 5 V, method: ripple and noise }] }\n',
      ),
    });
    const [prepared, cache] = [temporaryFolder(), temporaryFolder()];
    const run = () => prepare({ content, prepared, cache, mode: 'check' });
    await run();
    writeFiles(content, { 'bench.yaml': 'methods: { ripple and noise: 20 MHz bandwidth and 10 µF beside the port }\n' });
    expect((await run()).counts.parsed).toBe(0);
    writeFiles(content, { 'bench.yaml': 'methods: { ripple and noises: 20 MHz bandwidth }\n' });
    const { diagnostics } = await run();
    expect(diagnostics.map(({ rule }) => rule)).toContain('method-unknown');
  });
});
