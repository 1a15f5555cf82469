import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Entry, EfficiencyPoint, Stage } from '../../src/entry/entry.ts';
import { isMissing, type Known } from '../../src/values/value.ts';
import { entriesIn } from './entries-in.ts';

const ENTRIES = entriesIn(join(import.meta.dirname, '../../demo/teardowns'));

/** The number itself. @throws where it is missing. */
function known(value: Known): number {
  if (isMissing(value)) throw new Error(value.reason);
  return value.nominal;
}

function parameter(stage: Stage, key: string): number {
  const fact = stage.parameters[key];
  if (fact === undefined) throw new Error(`${stage.id} has no ${key}`);
  return fact.quantity.nominal;
}

function stagesOf(kind: string): { readonly slug: string; readonly entry: Entry; readonly stage: Stage }[] {
  return ENTRIES.flatMap(({ slug, entry }) => entry.stages.filter((stage) => stage.kind === kind).map((stage) => ({ slug, entry, stage })));
}

function points(): (EfficiencyPoint & { readonly name: string })[] {
  return ENTRIES.flatMap(({ slug, entry }) => entry.efficiency
      .filter(({ notSustained }) => notSustained === null)
      .map((point) => ({ ...point, name: `${slug} ${point.path.join('.')}` })));
}

describe('the rows of an efficiency run agree with themselves', () => {
  test('there are rows for all eight sheets', () => {
    expect(ENTRIES.filter(({ entry }) => entry.efficiency.length >= 4).length).toBe(8);
  });

  // Half of the last printed digit of the efficiency: volts × amperes over watts must print the same; of several ports their sum.
  test.each(points())('$name: volts × amperes / watts prints the stated efficiency', ({ loads, measuredOutput, current, input, efficiency }) => {
    if (input === null || efficiency === null) throw new Error('a row is not whole');
    const watts = (loads.length === 0 ? [{ measuredOutput, current }] : loads).map((load) => {
      if (load.measuredOutput === null || load.current === null) throw new Error('a row is not whole');
      return load.measuredOutput.quantity.nominal * load.current.quantity.nominal;
    });
    const ratio = watts.reduce((sum, each) => sum + each, 0) / input.quantity.nominal;
    expect(Math.abs(ratio - efficiency.quantity.nominal)).toBeLessThanOrEqual(efficiency.quantity.resolution / 2 + 1e-12);
  });
});

describe('size, mass and power are those of real adapters', () => {
  test.each(ENTRIES)('$slug: the density lies where its kind lies', ({ entry, derived }) => {
    const density = known(derived.size.density) / 1e6;
    const [low, high] = entry.device.kind === 'power bank' ? [0.2, 0.6] : [0.5, 1.6];
    expect(density).toBeGreaterThan(low);
    expect(density).toBeLessThan(high);
  });

  test.each(ENTRIES)('$slug: its mass is 1.2 to 2.2 g/cm³ of its volume', ({ entry, derived }) => {
    const perVolume = (entry.body.mass?.quantity.nominal ?? 0) / known(derived.size.volume) / 1000;
    expect(perVolume).toBeGreaterThan(1.2);
    expect(perVolume).toBeLessThan(2.2);
  });
});

describe('the mains side holds together', () => {
  const mains = ENTRIES.filter(({ entry }) => entry.nameplate.input?.kind === 'AC');

  test('six sheets are of mains devices', () => {
    expect(mains.length).toBe(6);
  });

  test.each(mains)('$slug: the crest of 264 V is 373 V', ({ derived }) => {
    expect(Math.round(known(derived.input.peak))).toBe(373);
  });

  // Half of C·V², worked by hand from the ratings and the bus or the crest (√2 · 264 V = 373.35 V).
  test.each([
    ['yarrowdene-stub-30', 3.07],
    ['skelderby-trine-65', 6.55],
    ['tillmere-nub-20', 2.09],
    ['marlhythe-causeway-100', 7.61],
    ['fennimoor-deskway-100', 7.61],
    ['ostlewick-lantern-140', 9.36],
  ])('%s: its bulk capacitors store %f J', (slug, joules) => {
    const sheet = ENTRIES.find((candidate) => candidate.slug === slug);
    if (sheet === undefined) throw new Error(slug);
    expect(Math.abs(known(sheet.derived.bulk.energy) - joules)).toBeLessThanOrEqual(0.0051);
  });

  test.each(mains)('$slug: the nameplate current covers the input current, and the fuse covers both', ({ entry, derived }) => {
    const printed = entry.nameplate.input?.current?.nominal ?? 0;
    const fuse = entry.parts.find((part) => part.role === 'input-fuse')?.rating?.quantities.find(({ dimension }) => dimension === 'current');
    expect(known(derived.input.inputCurrent)).toBeLessThan(printed);
    expect(fuse?.nominal ?? 0).toBeGreaterThanOrEqual(printed);
  });

  test.each(['marlhythe-causeway-100', 'fennimoor-deskway-100', 'ostlewick-lantern-140'])('%s: the way down is known and takes 20 to 40 minutes', (slug) => {
    const sheet = ENTRIES.find((candidate) => candidate.slug === slug);
    if (sheet === undefined) throw new Error(slug);
    const minutes = known(sheet.derived.bulk.timeToSafe) / 60;
    expect(minutes).toBeGreaterThan(20);
    expect(minutes).toBeLessThan(40);
  });
});

describe('a resonant half bridge gives the rail that its turns say', () => {
  test('there are three', () => {
    expect(stagesOf('llc-half-bridge').length).toBe(3);
  });

  // n = (Vbus/2)/(Vo + VF): 2 % for the rectifier's drop and for running a little off resonance.
  test.each(stagesOf('llc-half-bridge'))('$slug: half the bus over the ratio is the rail within 2 %', ({ entry, stage }) => {
    const bus = entry.stages.find((other) => other.kind === 'boost-pfc');
    const [primary, secondary] = stage.turns;
    if (bus === undefined || primary === undefined || secondary === undefined) throw new Error('no bus or no turns');
    const rail = parameter(bus, 'bus') / 2 / (primary / secondary);
    expect(Math.abs(rail / parameter(stage, 'output') - 1)).toBeLessThan(0.02);
  });

  // First-harmonic approximation at full load; 7 % for capacitors of ±5 % and for the drop of the rectifiers.
  test.each(ENTRIES.filter(({ derived }) => derived.gainCurves.length > 0))('$slug: it runs within 7 % of where the curve of its tank has the gain that it needs', ({ entry, derived }) => {
    for (const { stage: id, points } of derived.gainCurves) {
      const stage = entry.stages.find((candidate) => candidate.id === id);
      const frequencies = points.filter(({ load }) => load === 'full load').map(({ frequency }) => known(frequency));
      const running = stage === undefined ? 0 : parameter(stage, 'frequency');
      expect(running).toBeGreaterThan(0.93 * Math.min(...frequencies));
      expect(running).toBeLessThan(1.07 * Math.max(...frequencies));
    }
  });
});

describe('a flyback stores the power that it passes on', () => {
  // Boundary conduction at the valley of the low line: Ipk = 2·Pin/(V·D), f = V·D/(L·Ipk), V from 80 to 100 V.
  test('the 30 W quasi-resonant stage runs where its inductance says', () => {
    const [stage] = stagesOf('flyback').filter(({ slug }) => slug === 'yarrowdene-stub-30');
    if (stage === undefined) throw new Error('no stage');
    const [primary = 0, secondary = 1] = stage.stage.turns;
    const reflected = 15 * (primary / secondary);
    const frequencyAt = (volts: number): number => (volts * (reflected / (volts + reflected))) ** 2 / (2 * (30 / 0.9) * parameter(stage.stage, 'Lm'));
    expect(frequencyAt(80)).toBeLessThan(parameter(stage.stage, 'frequency'));
    expect(frequencyAt(115)).toBeGreaterThan(parameter(stage.stage, 'frequency'));
  });

  // Discontinuous conduction: ½·L·Ipk²·f = Pin, and the on-time must fit into the period at the lowest valley (75 V).
  test('the 20 W stage stays discontinuous at the lowest valley', () => {
    const [found] = stagesOf('flyback').filter(({ slug }) => slug === 'tillmere-nub-20');
    if (found === undefined) throw new Error('no stage');
    const { stage } = found;
    const [primary = 0, secondary = 1] = stage.turns;
    const [inductance, frequency, input] = [parameter(stage, 'Lm'), parameter(stage, 'frequency'), 20 / 0.855];
    const peak = Math.sqrt((2 * input) / (inductance * frequency));
    const on = (inductance * peak * frequency) / 75;
    const off = (inductance * peak * frequency) / ((9 + 0.5) * (primary / secondary));
    expect(on + off).toBeLessThan(1);
  });
});
