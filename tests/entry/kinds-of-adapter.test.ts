import { describe, expect, it } from 'vitest';
import { reading } from './reading.ts';

describe('a design with one fixed output and a peak rating', () => {
  // onsemi EVBUM2684: 19 V fixed, 300 W, peak 340 W, 90-265 V, up to 32 W/in3, CrM PFC and LLC.
  const { entry, findings } = reading(`nameplate: { input: 90-265 VAC datasheet, total: 300 W, peak: 340 W, evidence: datasheet }
ports: { DC: { connector: barrel, power: 300 W datasheet, peak: 340 W, offers: 19 V 15.8 A } }
stages:
  pfc: { is: totem-pole PFC, mode: critical conduction }
  main: { is: LLC half bridge, frequency: 500 kHz datasheet }
claims: [{ of: power density, value: 32 W/in³, where: front page }]`);

  it('is expressible', () => {
    expect(findings).toEqual([]);
    expect(entry.nameplate.peak?.quantity.nominal).toBe(340);
    expect(entry.ports[0]?.offers).toMatchObject([{ kind: 'plain', volts: 19, amps: 15.8 }]);
    expect(entry.claims[0]?.quantity?.dimension).toBe('power density');
  });
});

describe('a car charger whose rating depends on its input', () => {
  // Injoinic IP6557 data sheet V1.11 and application note V1.00: 5-31 V in, 140 W from 20 V, 100 W from 12 V, 94 % at 12 V in.
  const { entry, findings } = reading(`nameplate: { input: 5-31 V DC, total: 140 W, total at input: { 12 V: 100 W, 20 V: 140 W } }
ports:
  C1: { connector: USB-C, power: 140 W, offers: [5 V 3 A, 9 V 3 A, 12 V 3 A, 15 V 3 A, 20 V 5 A], read through: EPR cable }
stages:
  in: DC input
  main: { is: H-bridge buck-boost, frequency: 225–275 kHz datasheet, over-voltage: 31 V datasheet, feeds: [C1] }
parts:
  in: { F1: fuse, C1: "input capacitor, 100 µF 50 V" }
  main: { Q1-Q4: switch, L1: "inductor, 10 µH ±20 % 15 A", "R1, R4": "current-sense resistor, 5 mΩ ±1 %" }
measurements:
  efficiency: { line: 12 V, output: 5 V, load: 3 A, efficiency: 94 %, evidence: datasheet }
  ripple: [{ value: 100 mV, line: 24 V, output: 5 V, load: 3 A }, { value: 150 mV, line: 24 V, output: 28 V, load: 5 A }]
  standby: { 24 V: 3.8 mA }`);

  it('is expressible', () => {
    expect(findings).toEqual([]);
    expect(entry.nameplate.totalAtInput.map(({ from, power }) => [from.nominal, power.nominal])).toEqual([
      [12, 100],
      [20, 140],
    ]);
    expect(entry.nameplate.input?.kind).toBe('DC');
    expect(entry.stages[1]?.parameters['frequency']?.quantity.unit).toBe('kHz');
    expect(entry.parts.find(({ role }) => role === 'buck-switch')?.references).toEqual(['Q1', 'Q2', 'Q3', 'Q4']);
    expect(entry.measurements.map(({ subject, value }) => [subject, value.quantity.unit])).toEqual([
      ['standby', 'mA'],
      ['ripple', 'mV'],
      ['ripple', 'mV'],
    ]);
  });
});

describe('a power bank with a two-way port', () => {
  const { entry, findings } = reading(`nameplate: { capacity: 10000 mAh 3.7 V (37 Wh), output capacity: 5500 mAh 5 V }
ports:
  C1: { connector: USB-C, direction: both, power: 45 W, offers: [5 V 3 A, 9 V 3 A, 15 V 3 A], accepts: [5 V 3 A, 9 V 2 A] }
stages:
  pack: { is: battery pack, mode: lithium-ion, cells: 2S1P, voltage: 7.2 V }
  conv: { is: bidirectional buck-boost, feeds: [C1] }
parts: { pack: { B1: { role: cell, rating: 5000 mAh 3.6 V, count: 2, arrangement: series }, U1: protection IC } }
cells opened: { charge state: 3.1 V }
measurements: { delivered energy: { 5 V: 27.5 Wh } }`);

  it('is expressible', () => {
    expect(findings.filter((finding) => !finding.startsWith('value-remark'))).toEqual([]);
    expect(entry.nameplate.capacity?.charge?.quantity.unit).toBe('mAh');
    expect(entry.nameplate.capacity?.energy?.quantity.unit).toBe('Wh');
    expect(entry.nameplate.outputCapacity?.voltage?.quantity.nominal).toBe(5);
    expect(entry.ports[0]?.accepts).toHaveLength(2);
    expect(entry.stages[0]?.cells).toEqual({ series: 2, parallel: 1 });
    expect(entry.cellsOpened).toEqual({ done: true, chargeState: '3.1 V' });
  });
});

describe('a document that contradicts itself', () => {
  // TI TIDA-01622 (TIDUDW2): two board sizes, two turns ratios, three peak efficiencies.
  const { entry, findings } =
    reading(`body: { size: 62 × 26.8 × 20 mm, basis: board, also stated: 60 × 28.6 × 20 mm in table 1, evidence: datasheet }
stages: { main: { is: ACF, turns: 22:4:5:13, also stated: turns 6:1 in section 2.3.1.2 } }
claims:
  - { of: peak efficiency, value: 92 %, where: front page }
  - { of: peak efficiency, value: 91.3 %, line: 115 V, where: table 1 }
  - { of: no-load power, value: < 60 mW, where: section 1 }
  - { of: power density, value: 30 W/in3, where: title }
parts: { main: { "C42, C43": { role: clamp capacitor, rating: 0.22 µF 250 V X7R, also stated: 0.22 µF 500 V in the schematic } } }`);

  it('keeps both statements', () => {
    expect(findings).toEqual([]);
    expect(entry.body.alsoStated).toHaveLength(1);
    expect(entry.stages[0]?.turns).toEqual([22, 4, 5, 13]);
    expect(entry.claims.map(({ quantity }) => quantity?.bound)).toEqual(['value', 'value', 'below', 'value']);
    expect(entry.parts[0]?.alsoStated).toEqual(['0.22 µF 500 V in the schematic']);
  });
});

describe('efficiency as people have it', () => {
  const { entry, findings } = reading(`ports: { C1: { connector: USB-C }, A1: { connector: USB-A } }
measurements:
  efficiency:
    - { line: 115 V 60 Hz, output: 20 V, points: { 0.8127 A: 19.98 V 18.1 W 89.7113 %, 100 %: "> 94 %", 10 Ω: 2.9 W } }
    - { port: A, line: 230 V, average: 91.32 % }
    - { of: pfc, line: 230 V, load: 0.25 W, input: 0.5 W }`);

  it('is read by current, by per cent, by resistance and by watts, as bound or average', () => {
    expect(findings).toEqual([]);
    expect(
      entry.efficiency.map((point) => [
        point.statistic,
        point.current?.quantity.nominal,
        point.load?.quantity.dimension,
        point.efficiency?.quantity.bound,
      ]),
    ).toEqual([
      ['point', 0.8127, undefined, 'value'],
      ['point', undefined, 'ratio', 'above'],
      ['point', undefined, 'resistance', undefined],
      ['average', undefined, undefined, 'value'],
      ['point', undefined, 'power', undefined],
    ]);
    expect(entry.efficiency[3]?.port).toBe('A1');
  });
});
