import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../../src/diagnostics/finding.ts';
import { checkText } from './read-example.ts';

/** Findings of one rule on an entry of these frontmatter lines. */
function findings(rule: string, frontmatter: string, prose = ''): readonly Diagnostic[] {
  const kind = frontmatter.includes('kind:') ? '' : 'device: { maker: Larkmoor, model: LM-T65, kind: wall charger }\n';
  const { entry, reading, diagnostics } = checkText('lm-t65', `---\ntitle: Invented\n${kind}${frontmatter.trim()}\n---\n\n${prose}\n`);
  if (entry === null) throw new Error(JSON.stringify(reading));
  return diagnostics.filter((diagnostic) => diagnostic.rule === rule);
}

const severities = (found: readonly Diagnostic[]): string[] => found.map((diagnostic) => diagnostic.severity);

describe('a three-port label as people write it', () => {
  // Label of a 65 W three-port charger, quoted in a public listing: "C2+A: 15W Max", "C1+C2+A: 45W+15W", "100~240V~,50Hz, 16A Max".
  const ports =
    'ports:\n  C1: { connector: USB-C, power: 65 W }\n  C2: { connector: USB-C, power: 20 W }\n  A: { connector: USB-A, power: 18 W }\n';
  const rows = (allocation: string): string => `${ports}sharing:\n  total: 65 W\n  allocations:\n    ${allocation}`;

  test('45 W and a pool of 15 W is 60 W and draws nothing', () => {
    expect(findings('pool-counted-as-each', rows('C1 + (C2 + A): 45 W + 15 W'))).toEqual([]);
    expect(findings('shares-above-total', rows('C1 + (C2 + A): 45 W + 15 W'))).toEqual([]);
  });

  test('45 + 15 + 15 W is an error that names the pool', () => {
    const [found] = findings('pool-counted-as-each', rows('C1 + C2 + A: 45 W + 15 W + 15 W'));
    expect(found).toMatchObject({ severity: 'error', subject: 'C1 + C2 + A' });
    expect(found?.message).toBe('C1 + C2 + A adds up to 75 W, above the total of 65 W; it fits if C2 and A draw on one pool.');
  });

  test('16 A at 100 V is 24.6 times 65 W; 1.6 A passes, and so does no current at all', () => {
    const input = (current: string): string => `nameplate: { input: "100~240V~,50Hz${current}", total: 65 W }`;
    expect(findings('nameplate-input-plausible', input(', 16A Max'))[0]?.message).toBe(
      '100 V × 16 A = 1600 VA is 24.6 × the rated output of 65 W. Did you mean 1.6 A?',
    );
    expect(findings('nameplate-input-plausible', input(', 1.6A Max'))).toEqual([]);
    expect(findings('nameplate-input-plausible', input(''))).toEqual([]);
  });

  test('an input below the output breaks the energy balance', () => {
    expect(findings('nameplate-input-plausible', 'nameplate: { input: 100-240 V~ 50/60 Hz 0.6 A, total: 65 W }')[0]?.message).toBe(
      '100 V × 0.6 A = 60 VA is less than the rated output of 65 W.',
    );
  });
});

describe('policies of two ports', () => {
  // Texas Instruments SLVAFG6B: assured 60 + 45 = 105 W; shared 60 + 60 W on 75 W.
  const two = (second: string, total: string, policy: string): string =>
    `ports: { A: { connector: USB-C, power: 60 W }, B: { connector: USB-C, power: ${second} } }\nsharing: { total: ${total}, policy: ${policy} }`;

  test('60 + 45 W assured fit 105 W; 60 + 60 W assured do not fit 75 W; shared they do', () => {
    expect(findings('assured-sum-above-total', two('45 W', '105 W', 'assured'))).toEqual([]);
    expect(severities(findings('assured-sum-above-total', two('60 W', '75 W', 'assured')))).toEqual(['error']);
    expect(findings('assured-sum-above-total', two('60 W', '75 W', 'shared'))).toEqual([]);
  });

  test.each(['60 W + 15 W', '45 W + 30 W', '37.5 W + 37.5 W', '15 W + 60 W'])('%s on 75 W draws no finding', (shares) => {
    const entry = `ports: { A: { connector: USB-C, power: 60 W }, B: { connector: USB-C, power: 60 W } }\nsharing: { total: 75 W, policy: shared, allocations: { A + B: ${shares} } }`;
    for (const rule of ['shares-above-total', 'port-above-own-limit', 'port-gains-from-neighbour', 'total-out-of-reach'])
      expect(findings(rule, entry)).toEqual([]);
  });
});

describe('labels that round', () => {
  // Retail listings of 20 W and 25 W adapters: 9 V × 2.22 A, 12 V × 1.67 A, 9 V × 2.77 A; a reference design: 9 V × 2.23 A sold as 20 W.
  test.each([
    ['20 W', '9 V 2.22 A', 0],
    ['20 W', '12 V 1.67 A', 0],
    ['20 W', '9 V 2.23 A', 0],
    ['25 W', '9 V 2.77 A', 0],
    ['20 W', '12 V 1.75 A', 1],
  ])('a %s port with %s: %i findings', (power, offer, count) => {
    expect(
      findings('offers-against-rated-power', `ports: { C1: { connector: USB-C, power: ${power}, offers: [5 V 3 A, ${offer}] } }`),
    ).toHaveLength(count);
  });
});

describe('capacitors at the mains', () => {
  const bulk = (rating: string): string =>
    `nameplate: { input: 100-264 V~ 50/60 Hz 0.8 A, total: 30 W }\nstages: { input: input filter, bridge: rectifier, bulk: bulk capacitor, main: flyback }\nparts: { bulk: { C1: { role: bulk capacitor, rating: ${rating} } } }`;

  // Forum threads on smoothing capacitors: 264 V has a crest of 373.4 V, 6.7 % below 400 V and 17.0 % below 450 V.
  test('400 V on 264 V mains is cautioned, 450 V is not, 350 V is above its rating', () => {
    expect(severities(findings('capacitor-voltage-margin', bulk('22 µF 400 V')))).toEqual(['warning']);
    expect(findings('capacitor-voltage-margin', bulk('22 µF 450 V'))).toEqual([]);
    expect(findings('rating-exceeded', bulk('22 µF 350 V'))).toHaveLength(1);
  });

  // 2.2 nF: 0.219 mA, 3.3 nF: 0.328 mA, 4.7 nF: 0.468 mA at 264 V 60 Hz; 0.25 mA for equipment without earth (IEC 60950-1 table 5A).
  test.each([
    ['2.2 nF', []],
    ['3.3 nF', ['0.328']],
    ['4.7 nF', ['0.468']],
  ])('a Y capacitor of %s', (capacitance, currents) => {
    const entry = `nameplate: { input: 100-264 V~ 50/60 Hz 0.8 A, total: 30 W }\nstages: { input: input filter, main: flyback }\nparts: { main: { CY1: { role: Y capacitor, rating: ${capacitance} Y1 400 VAC } } }`;
    expect(findings('y-capacitor-current-high', entry).map((finding) => /([\d.]+) mA at/.exec(finding.message)?.[1])).toEqual(currents);
  });
});

describe('charge on the plug pins', () => {
  const filter = (capacitor: string, more: string): string =>
    `nameplate: { input: 100-264 V~ 50/60 Hz 0.8 A, total: 30 W }\nstages: { input: input filter, main: flyback }\nparts: { input: { CX1: { role: X capacitor, rating: ${capacitor} X2 310 VAC }${more} } }`;

  // 0.47 µF from 373.4 V: 44.5 V after 2 s through 2 MΩ; 60 V within 2 s (IEC 62368-1, 5.5.2.2).
  test('0.47 µF is empty enough through 2 MΩ, not through 3 MΩ, and not without a way down', () => {
    expect(
      findings('x-capacitor-discharge', filter('0.47 µF', ', RX: { role: bleed resistor, rating: 2 × 1 MΩ, arrangement: series }')),
    ).toEqual([]);
    expect(findings('x-capacitor-discharge', filter('0.47 µF', ', RX: { role: bleed resistor, rating: 3 MΩ }'))[0]?.message).toBe(
      'CX1 (0.47 µF): 90.4 V left after 2 s through 3 MΩ, above 60 V (IEC 62368-1: 60 V within 2 s). It is reached after 2.6 s.',
    );
    expect(findings('x-capacitor-discharge', filter('0.47 µF', ''))).toHaveLength(1);
  });

  test('nothing is asked of 0.1 µF, nor where a discharge IC is listed', () => {
    expect(findings('x-capacitor-discharge', filter('0.1 µF', ''))).toEqual([]);
    expect(findings('x-capacitor-discharge', filter('0.47 µF', ', U1: discharge IC'))).toEqual([]);
  });
});

describe('prefixes on ohms', () => {
  const part = (rating: string): string => `stages: { main: flyback }\nparts: { main: { Q1: { role: switch, rating: "${rating}" } } }`;

  test('700V/140mohm passes; 700V/140Mohm is an error that names m', () => {
    expect(findings('part-value-plausible', part('700V/140mohm'))).toEqual([]);
    const [found] = findings('part-value-plausible', part('700V/140Mohm'));
    expect(found?.severity).toBe('error');
    expect(found?.message).toContain('Did you mean 140 mΩ?');
  });
});

describe('prose against data', () => {
  const body = 'body: { size: 68 × 52 × 29 mm, mass: 187 g ± 1 g }';

  test.each([
    ['It weighs 178 g.', 1],
    ['It weighs 187 g.', 0],
    ['It weighs 0.187 kg.', 0],
    ['It weighs some 190 g.', 0],
    ['The heat spreader weighs 12 g.', 0],
    ['Outside it is 68 x 52 x 92 mm.', 1],
    ['Outside it is 6.8 × 5.2 × 2.9 cm.', 0],
    ['The board is 60 × 45 × 1.6 mm.', 0],
    ['`178 g` is what the draft said.', 0],
  ])('%s %i findings', (sentence, count) => {
    expect(findings('prose-against-data', body, sentence)).toHaveLength(count);
  });

  test('points at the number in the text', () => {
    const [found] = findings('prose-against-data', body, 'First line.\nIt weighs 178 g.');
    expect(found).toMatchObject({ line: 8, column: 11, endColumn: 16, message: '178 g in the text, 187 g ± 1 g in the data.' });
  });
});

describe('efficiency', () => {
  test('a mains adapter above 97 % is asked for its stage; a car charger at 98 % is not', () => {
    const run = 'measurements: { efficiency: { load: 100 %, efficiency: 98 %, at: connector } }';
    expect(severities(findings('efficiency-plausible', `nameplate: { input: 100-240 V~ 50/60 Hz 1.6 A }\n${run}`))).toEqual(['error']);
    expect(
      findings(
        'efficiency-plausible',
        `device: { maker: Ostrel, model: OV-60, kind: car charger }\nnameplate: { input: 12-24 V DC 5 A }\n${run}`,
      ),
    ).toEqual([]);
  });
});

describe('power banks', () => {
  // Notes on official power-bank figures, public listing: 5,500 mAh 5 V of 37 Wh is 74.3 %.
  test('5,500 mAh at 5 V of 37 Wh passes, 7,400 mAh does not', () => {
    const bank = (output: string): string =>
      `device: { maker: Ostrel, model: OB-45, kind: power bank }\nnameplate: { capacity: 10000 mAh 3.7 V (37 Wh), output capacity: ${output} }`;
    expect(findings('output-capacity-plausible', bank('5500 mAh 5 V'))).toEqual([]);
    const [theory] = findings('output-capacity-plausible', bank('7400 mAh 5 V'));
    expect(theory?.severity).toBe('note');
    expect(theory?.message).toBe(
      '37 Wh at the output are 100 % of 37 Wh in the cells. That is the voltage change alone, 100 % efficient: theory only.',
    );
    expect(severities(findings('output-capacity-plausible', bank('7200 mAh 5 V')))).toEqual(['warning']);
  });
});

test('an author’s answer is carried by the finding it names', () => {
  const [found] = findings(
    'mass-plausible',
    'body: { size: 68 × 52 × 29 mm, mass: 1870 g }\nanswers:\n  - { to: mass-plausible, at: mass, because: It is cast iron. }',
  );
  expect(found?.answer).toBe('It is cast iron.');
});
