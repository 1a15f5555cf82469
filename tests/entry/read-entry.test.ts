import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readFile, reading } from './reading.ts';

describe('the example entry', () => {
  const { entry, diagnostics } = readFile(readFileSync('tests/entry/example/index.md', 'utf8'));

  it('reads without an error or a warning', () => {
    expect(diagnostics.filter(({ severity }) => severity !== 'note').map((each) => `${each.line}:${each.column} ${each.message}`)).toEqual(
      [],
    );
  });

  it('has its ports in the order of the case, with what they offer', () => {
    expect(entry?.ports.map(({ id, connector, offers }) => [id, connector, offers.length])).toEqual([
      ['C1', 'USB-C', 5],
      ['C2', 'USB-C', 5],
      ['C3', 'USB-C', 3],
      ['A1', 'USB-A', 2],
    ]);
    expect(entry?.ports[3]?.offers.map(({ kind }) => kind)).toEqual(['plain', 'plain']);
    expect(entry?.ports[2]?.offers[0]?.word).toBe(0x0a01912c);
  });

  it('names the role of a switch by the block it stands in', () => {
    const roleOf = (reference: string): string | undefined => entry?.parts.find((part) => part.references.includes(reference))?.role;
    expect(['Q1', 'Q2', 'Q5', 'Q9', 'L2', 'F1'].map(roleOf)).toEqual([
      'pfc-switch',
      'primary-switch',
      'synchronous-rectifier',
      'buck-switch',
      'pfc-inductor',
      'input-fuse',
    ]);
  });

  it('opens a range of references', () => {
    expect(entry?.parts.find(({ role }) => role === 'current-sense-resistor')?.references).toEqual(['R11', 'R12', 'R13', 'R14']);
  });

  it('tells a part that is absent from one of which nothing is said, and from an empty place', () => {
    expect(entry?.parts.find(({ role }) => role === 'varistor')).toMatchObject({ fitting: 'absent', references: [] });
    expect(entry?.parts.find(({ role }) => role === 'ntc-thermistor')).toBeUndefined();
    expect(entry?.parts.find(({ references }) => references.includes('C6'))).toMatchObject({ fitting: 'not fitted', maker: 'Tammerlyn' });
  });

  it('keeps the evidence of a value that says it', () => {
    const pfc = entry?.stages.find(({ id }) => id === 'pfc');
    expect(pfc?.parameters['bus']).toMatchObject({ evidence: 'measured', quantity: { nominal: 392, dimension: 'voltage' } });
    expect(entry?.nameplate.total).toMatchObject({ evidence: 'printed', quantity: { nominal: 100 } });
    expect(entry?.sharing?.allocations.map(({ evidence }) => evidence).filter((word) => word === 'measured')).toHaveLength(1);
  });

  it('reads one pool for two ports, and a pool beside a share', () => {
    const shares = (ports: string) => entry?.sharing?.allocations.find((each) => each.ports.join(' ') === ports)?.shares;
    expect(shares('C3 A1')?.map(({ ports, power }) => [ports, power.nominal])).toEqual([[['C3', 'A1'], 15]]);
    expect(shares('C1 C3 A1')?.map(({ ports, power }) => [ports, power.nominal])).toEqual([
      [['C1'], 65],
      [['C3', 'A1'], 15],
    ]);
  });

  it('reads loads in per cent and in amperes, results as efficiency and as volts and watts', () => {
    expect(entry?.efficiency).toHaveLength(6);
    const last = entry?.efficiency[4];
    expect(last?.current?.quantity.nominal).toBe(5);
    expect(last?.measuredOutput?.quantity.nominal).toBe(19.96);
    expect(last?.input?.quantity.nominal).toBe(108.3);
    expect(entry?.efficiency[0]?.line?.quantity.nominal).toBe(115);
  });

  it('puts callouts where the zones of the photo are', () => {
    expect(entry?.photos[0]?.callouts).toEqual([
      { part: 'Q1', x: 3.5 / 6, y: 0.375 },
      { part: 'T1', x: 0.42, y: 0.61 },
    ]);
  });
});

describe('faults of shape, each in the words of the author', () => {
  it.each([
    ['a mistyped key', 'parts: { input: { F1: { roel: fuse, role: fuse } } }', 'unknown-key 1:25 "roel" is no key of parts › input › F1.'],
    ['a mistyped key at the top', 'nameplat: { input: x }', 'unknown-key 1:1 "nameplat" is no key of an entry.'],
    ['a number for a lot', 'sample: { lot: 012 }', 'unquoted-number 1:16 sample › lot is a bare number; text is wanted here.'],
    ['a power without unit', 'body: { mass: 187 }', 'unquoted-number 1:15 body › mass is a bare number; text is wanted here.'],
    ['a list for a text', 'body: { mass: [1, 2] }', 'wrong-shape 1:9 body › mass should be text, and is a list.'],
    ['a text for a group', 'body: 187 g', 'wrong-shape 1:7 body should be a group of keys, and is "187 g".'],
    ['an empty field', 'sharing: { total: }', 'wrong-shape 1:12 sharing › total is empty.'],
    [
      'an unknown connector',
      'ports: { C1: { connector: USBC } }',
      'wrong-shape 1:27 ports › C1 › connector is "USBC", which is none of USB-C, USB-A, barrel, captive cable, wireless.',
    ],
    ['a word instead of yes or no', 'powered open: perhaps', 'wrong-shape 1:15 powered open is "perhaps", which is none of yes, no.'],
    ['an answer without a reason', 'answers: [{ to: x }]', 'missing-field 1:11 answers › 1 has no because.'],
    ['a part as a number', 'parts: { input: { F1: 3 } }', 'unquoted-number 1:23 parts › input › F1 is a bare number; text is wanted here.'],
  ])('%s', (_, yaml, expected) => {
    expect(reading(yaml).findings).toContain(expected);
  });

  it('names what an entry without a device lacks', () => {
    const { entry, diagnostics } = readFile('---\ntitle: One\n---\n');
    expect(diagnostics.map((each) => `${each.rule} ${each.line}:${each.column} ${each.message}`)).toContain(
      'missing-field 1:1 The entry has no device.',
    );
    expect(entry?.title).toBe('One');
  });

  it('suggests the nearest key', () => {
    const { diagnostics } = readFile('---\ntitle: One\ndevice: { maker: A, model: B, kind: power bnk }\nmeasurments: {}\n---\n');
    expect(diagnostics.map(({ advice }) => advice)).toEqual(['Did you mean "power bank"?', 'Did you mean "measurements"?']);
  });

  it('are all reported in one run, and what is right beside them is read', () => {
    const { entry, places } = reading(
      'sample: { lot: 2551, firmware: "1.4" }\nbody: { mass: 187 g, size: [1] }\nanswers: [{ to: a }, { to: b, because: c }]\nports: { C1: { connector: USB-C, wer: x, power: 30 W } }',
    );
    expect(places).toEqual(['unquoted-number 1:16', 'wrong-shape 2:22', 'missing-field 3:11', 'unknown-key 4:34']);
    expect(entry.sample).toMatchObject({ lot: null, firmware: '1.4' });
    expect(entry.body.mass?.quantity.nominal).toBe(0.187);
    expect(entry.answers).toEqual([{ to: 'b', at: null, because: 'c', path: ['answers', 1] }]);
    expect(entry.ports[0]?.power?.quantity.nominal).toBe(30);
  });
});

describe('faults inside texts', () => {
  it.each([
    ['a volume where an on-resistance belongs', 'body: { size: 68 × 52 × 29 mL }', 'unreadable-value 1:'],
    ['a length where a mass belongs', 'body: { mass: 187 mm }', 'unreadable-value 1:'],
    ['a role that nobody uses', 'stages: { i: input filter }\nparts: { i: { F1: { role: fuze, rating: 3 A } } }', 'unknown-role 2:27'],
    ['a role that nobody uses, in a line', 'stages: { i: input filter }\nparts: { i: { F1: "fuze, 3 A" } }', 'unknown-role 2:20'],
    ['a block that is not there', 'parts: { pcf: { Q1: inductor } }', 'unknown-stage 1:10'],
    ['a block that nobody calls so', 'stages: { main: flybak }', 'unknown-stage 1:17'],
    ['a parameter of another block', 'stages: { main: { is: buck, Lr: 62 µH } }', 'parameter-out-of-place 1:29'],
    ['a port that is not there', 'ports: { C1: { connector: USB-C } }\nstages: { o: { is: buck, feeds: [C2] } }', 'unknown-port 2:34'],
    [
      'a port that is not there, in an allocation',
      'ports: { C1: { connector: USB-C } }\nsharing: { allocations: { C1 + C9: 5 W + 5 W } }',
      'unknown-port 2:32',
    ],
    [
      'a reference that stands twice',
      'stages: { a: rectifier, b: buck }\nparts: { a: { C1: bulk capacitor }, b: { "C2, C1": output capacitor } }',
      'duplicate-reference 2:47',
    ],
    ['a day that the calendar does not have', 'published: 2026-02-29', 'unreadable-value 1:12'],
    ['a repetition of itself', 'ports: { C1: { same as: C2 }, C2: { same as: C1 } }', 'repetition-circle 1:46'],
    ['a repetition of nothing', 'ports: { C1: { same as: C7, connector: USB-C } }', 'unknown-port 1:25'],
    ['an address that is none', 'recall: { authority: A, date: 2026-05-11, url: "javascript:x", hazard: fire }', 'unreadable-value 1:48'],
    ['a bulk capacitor in a buck', 'stages: { o: buck }\nparts: { o: { C1: { role: bulk capacitor } } }', 'role-out-of-place 2:27'],
    ['a callout to nothing', 'photos: [{ file: a.jpg, alt: A board, callouts: { Q7: B4 } }]', 'unknown-part 1:51'],
    ['a published entry without a day', 'status: published', 'missing-field 1:1'],
  ])('%s', (_, yaml, expected) => {
    expect(
      reading(yaml).places.filter((place) => place.startsWith(expected)),
      reading(yaml).findings.join('\n'),
    ).not.toEqual([]);
  });

  it('are said once where "same as" repeats them', () => {
    expect(reading('ports: { C1: { connector: USB-C, power: 100 kg }, C2: { same as: C1 } }').places).toHaveLength(1);
  });

  it('do not keep the rest of the entry from being read', () => {
    const { entry } = reading('body: { mass: 187 mm, size: 68 × 52 × 29 mm }\nstages: { a: nonsense, b: buck }');
    expect(entry.body.mass).toBeNull();
    expect(entry.body.size?.size.shape).toBe('box');
    expect(entry.stages.map(({ id }) => id)).toEqual(['b']);
  });
});

describe('repetition', () => {
  it('takes what the other port has and keeps what it says itself', () => {
    const { entry } = reading(
      'ports:\n  C1: { connector: USB-C, power: 100 W printed, offers: [5 V 3 A, 20 V 5 A] }\n  C2: { same as: C1, power: 65 W }',
    );
    expect(entry.ports[1]?.power?.quantity.nominal).toBe(65);
    expect(entry.ports[1]?.offers).toEqual(entry.ports[0]?.offers);
  });

  it('works for blocks and for parts, short lines included', () => {
    const { entry, findings } = reading(
      'ports: { C1: { connector: USB-C }, C2: { connector: USB-C } }\nstages:\n  o1: { is: buck, L: 10 µH, feeds: [C1] }\n  o2: { same as: o1, feeds: [C2] }\nparts:\n  o1: { Q1: "switch, 40 V 6 mΩ" }\n  o2: { Q2: { same as: Q1, maker: Ostrel } }',
    );
    expect(findings).toEqual([]);
    expect(entry.stages[1]).toMatchObject({ kind: 'buck', feeds: ['C2'], parameters: { L: { quantity: { dimension: 'inductance' } } } });
    expect(entry.parts[1]).toMatchObject({ role: 'buck-switch', maker: 'Ostrel', references: ['Q2'] });
    expect(entry.parts[1]?.rating?.quantities).toHaveLength(2);
  });
});
