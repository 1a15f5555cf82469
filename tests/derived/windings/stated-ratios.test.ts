import { describe, expect, it } from 'vitest';
import { derive } from '../../../src/derived/derive.ts';
import { isMissing } from '../../../src/values/value.ts';
import { checkText } from '../../checks/read-example.ts';

const HEAD = `title: Invented
device: { maker: Larkmoor, model: LM-T65, kind: wall charger }
nameplate: { input: 100-240 V~ 50/60 Hz 1.6 A, total: 65 W }
ports: { C1: { connector: USB-C, power: 65 W, offers: [5 V 3 A, 9 V 3 A, 15 V 3 A, 20 V 3.25 A] } }`;

function said(stages: string, parts = ''): readonly string[] {
  const { diagnostics } = checkText('lm-t65', `---\n${HEAD}\n${stages}\n${parts}\n---\n\nText.\n`);
  return diagnostics.filter(({ rule }) => rule.startsWith('turns-ratio')).map(({ severity, message }) => `${severity} ${message}`);
}

function derivedOf(stages: string, parts = ''): ReturnType<typeof derive> {
  const { entry, reading } = checkText('lm-t65', `---\n${HEAD}\n${stages}\n${parts}\n---\n\nText.\n`);
  if (entry === null) throw new Error(JSON.stringify(reading));
  return derive(entry);
}

function flyback(fields: string): string {
  return `stages: { main: { is: flyback, feeds: [C1], ${fields} } }`;
}

/** Reflected voltage at 20 V, as three digits print it. */
function reflected(stages: string, parts = ''): string {
  const value = derivedOf(stages, parts).operating.find(({ name }) => name === 'reflected voltage at the highest output')?.value;
  return value === undefined || isMissing(value) ? 'withheld' : value.nominal.toPrecision(3);
}

describe('which of several ratios counts', () => {
  it.each([
    ['counted turns', flyback('turns: 34:6, turns ratio: "5.5"'), '', '113'],
    [
      'else those on the transformer',
      flyback('turns ratio: "5.5"'),
      'parts: { main: { T1: { role: transformer, rating: "36:6 480 µH" } } }',
      '120',
    ],
    ['else a stated ratio', flyback('turns ratio: "5.5", reflected: 100 V'), '', '100'],
    ['and winding voltages', flyback('turns ratio: "12.0 V : 2.12 V"'), '', '113'],
    ['else the reflected voltage', flyback('reflected: 104 V'), '', '104'],
    ['else nothing', flyback('mode: quasi-resonant'), '', 'withheld'],
  ])('%s', (_, stages, parts, volts) => {
    expect(reflected(stages, parts)).toBe(volts);
  });

  it('the figures say what they were computed with, and what was stated beside it', () => {
    const names = derivedOf(flyback('turns: 34:6, turns ratio: "12.0 V : 2.12 V"')).operating.map(({ name }) => name);
    expect(names).toContain('turns ratio by the winding voltages (computed with the turns)');
  });

  it('a ratio alone asks for no turns any more', () => {
    const parts = 'parts: { main: { Q1: { role: switch, rating: 650 V } } }';
    expect(derivedOf(flyback('turns ratio: "5.67"'), parts).stress[0]?.verdict).not.toBe('withheld');
    expect(derivedOf(flyback('mode: quasi-resonant'), parts).stress[0]).toMatchObject({ stress: { needs: ['turns of main'] } });
  });
});

describe('two ratios of one transformer', () => {
  it.each([
    ['turns: 34:6, turns ratio: "5.67 : 1"'],
    ['turns: 34:6, turns ratio: "5.7"'],
    // 22:4 in the schematic and 6:1 in the text of one published design: rounded to a whole number, it agrees.
    ['turns: 22:4, turns ratio: "6:1"'],
    ['turns: 34:6, turns ratio: "12.0 V : 2.08 V"'],
    ['turns: 34:6, reflected: 118 V'],
  ])('%s agree', (fields) => {
    expect(said(flyback(fields))).toEqual([]);
  });

  it('the inverse is told as such, with what was probably meant', () => {
    expect(said(flyback('turns: 34:6, turns ratio: "1:5.67"'))).toEqual([
      'warning main: the turns 34:6 are 5.67 to 1, the turns ratio 1:5.67 is 0.176 to 1, the inverse. Did you mean 5.67 to 1? Computed with the turns.',
    ]);
  });

  it('another winding and a whole centre tap are recognised', () => {
    expect(said(flyback('turns: 34:6:9, turns ratio: "3.78"'))[0]).toContain('the ratio to the winding of 9 turns');
    const llc = 'stages: { pfc: boost PFC, main: { is: LLC half bridge, output: 22.5 V, turns: 35:4:4, turns ratio: "4.38" } }';
    expect(said(llc)[0]).toContain('both halves of the centre tap together');
  });

  it('one turn too few, a wrong reflected voltage and another transformer marking are said plainly', () => {
    expect(said(flyback('turns: 34:6, turns ratio: "6.8"'))).toEqual([
      'warning main: the turns 34:6 are 5.67 to 1, the turns ratio 6.8 is 6.8 to 1. Computed with the turns.',
    ]);
    expect(said(flyback('turns: 34:6, reflected: 76 V'))[0]).toContain('the reflected voltage 76 V is 3.8 to 1');
    expect(said(flyback('turns: 34:6'), 'parts: { main: { T1: { role: transformer, rating: "34:5" } } }')[0]).toContain(
      'the turns on the transformer 34:5 are 6.8 to 1',
    );
  });

  it('winding voltages may be a fifth too high only where leakage is the resonant inductance', () => {
    const llc = (parts: string): readonly string[] =>
      said(
        'stages: { pfc: boost PFC, main: { is: LLC half bridge, output: 22.5 V, turns: 35:4:4, turns ratio: "10.0 V : 0.96 V" } }',
        parts,
      );
    expect(llc('')).toEqual([]);
    expect(llc('parts: { main: { L3: resonant inductor, 62 µH } }')).toHaveLength(1);
    expect(said(flyback('turns: 35:4, turns ratio: "10.0 V : 0.96 V"'))).toHaveLength(1);
  });
});

describe('a ratio that the voltages do not allow', () => {
  it('turns upside down ask an LLC tank for a hundredth, and a flyback for a duty of 4 %', () => {
    const llc = said(
      'stages: { pfc: { is: boost PFC, bus: 390 V measured }, main: { is: LLC half bridge, output: 21 V, turns: 4:35:35 } }',
    );
    expect(llc).toEqual([
      'warning main: 4:35:35 makes the gain for the highest output at the highest bus 0.0123, where 0.3 to 2.5 can be built. Turned round it would be 0.942: did you mean secondary over primary?',
    ]);
    expect(said(flyback('bus: 100 V measured, turns: 6:34'))[0]).toContain(
      '0.0341, where 0.05 to 0.85 can be built. Turned round it would be 0.531',
    );
  });

  it('a step-up flyback on a vehicle is built so', () => {
    // MAXREFDES1085: 17 to 60 V in, 24 V out, 1:2.
    const vehicle = HEAD.replace(/nameplate.*\n/u, 'nameplate: { input: 17-60 V DC }\n').replace('20 V 3.25 A', '24 V 1 A');
    const text = `---\n${vehicle}\nstages: { main: { is: flyback, feeds: [C1], turns: 1:2 } }\n---\n`;
    expect(checkText('lm-t65', text).diagnostics.filter(({ rule }) => rule.startsWith('turns-ratio'))).toEqual([]);
  });

  it('an asymmetrical half bridge cannot give more than its bus over the turns', () => {
    expect(
      said(
        'stages: { pfc: { is: boost PFC, bus: 390 V measured }, main: { is: asymmetrical half-bridge flyback, feeds: [C1], turns: 42:2 } }',
      )[0],
    ).toContain('1.08, where 0.03 to 0.95');
  });
});
