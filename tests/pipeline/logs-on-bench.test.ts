import { describe, expect, it } from 'vitest';
import { contentFolder, entryText } from './content-folder.ts';
import { findingsOf, NAMED, steadyRows } from './a-log.ts';
import { prepareIn } from './run-in.ts';

const CSV = `t (s),U (V),I (A)\n${steadyRows()}`;

describe('a log that names its instrument', () => {
  it('an instrument for a column that is not there is said at its key, with the nearest', async () => {
    expect(await findingsOf(CSV, `${NAMED}    instrument: { voltge: meter, time: meter }\n`)).toEqual([
      'index.md:11:19 log-instrument: An instrument is named for "voltge", which is no column of this log; it has voltage, current, time. Did you mean "voltage"?',
    ]);
  });

  it('a name that is not on the bench is said in the entry', async () => {
    const entry = entryText('A', 'x\n', `logs:\n  run:\n    file: run.csv\n${NAMED}    instrument: meterr\n`);
    const { diagnostics } = await prepareIn(
      contentFolder({
        'bench.yaml': 'instruments: { meter: { name: power meter, accuracy: { power: 1 % } } }\n',
        'teardowns/a/index.md': entry,
        'teardowns/a/run.csv': CSV,
      }),
    );
    expect(
      diagnostics.filter(({ rule }) => rule === 'instrument-unknown').map(({ line, column, message }) => `${line}:${column} ${message}`),
    ).toEqual(['11:17 There is no instrument "meterr" on the bench or in this entry. Did you mean "meter"?']);
  });
});
