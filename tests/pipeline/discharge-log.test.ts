import { expect, test } from 'vitest';
import { contentFolder, entryText } from './content-folder.ts';
import { prepareIn } from './run-in.ts';

/** Full to empty at 5 V and 2 A for two and a half hours, a row a minute: 25 Wh. */
const CSV = `t (s),U (V),I (A)\n${Array.from({ length: 151 }, (_, row) => `${String(row * 60)},5.00,2.00\n`).join('')}`;

/** Findings about the energy of a bank whose discharge was logged, "line rule: message". */
async function said(rated: string, accuracy = '0.1 %'): Promise<readonly string[]> {
  const sections =
    `nameplate: { capacity: 10000 mAh 3.7 V (37 Wh), output capacity: ${rated} }\n` +
    'logs:\n  discharge:\n    file: run.csv\n    columns: { time: "t (s)", voltage: "U (V)", current: "I (A)" }\n    instrument: tester\n';
  const { diagnostics } = await prepareIn(
    contentFolder({
      'bench.yaml': `instruments: { tester: { name: USB tester, accuracy: { voltage: ${accuracy}, current: ${accuracy} } } }\n`,
      'teardowns/a/index.md': entryText('A', 'x\n', sections),
      'teardowns/a/run.csv': CSV,
    }),
  );
  return diagnostics
    .filter(({ rule }) => rule === 'rated-capacity-not-reached' || rule === 'delivered-energy-plausible')
    .map(({ rule, message }) => `${rule}: ${message}`);
}

test('a logged discharge of 25 Wh is held against 27.5 Wh rated at its voltage', async () => {
  expect(await said('5500 mAh 5 V')).toEqual(['rated-capacity-not-reached: 25 Wh delivered at 5 V, and 27.5 Wh are rated there: 90.9 %.']);
});

test('an instrument that leaves open whether 95 % are reached leaves the verdict open', async () => {
  expect(await said('5500 mAh 5 V', '3 %')).toEqual([]);
});

test('a bank that keeps its promise is told nothing', async () => {
  expect(await said('5000 mAh 5 V')).toEqual([]);
});
