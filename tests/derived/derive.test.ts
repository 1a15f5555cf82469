import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { Body, Entry } from '../../src/entry/entry.ts';
import { restsOnAssumption } from '../../src/values/trace.ts';
import { isMissing, type Known, type Value } from '../../src/values/value.ts';
import { outputPort } from '../sharing/entry-with-ports.ts';
import { published } from '../published/published.ts';
import { anEntry, fact, part, portWith, quantity, stage, supply } from './an-entry.ts';

const MAINS = supply('AC', '100-240 V');

function of(known: Known): Value {
  if (isMissing(known)) throw new Error(known.reason);
  return known;
}

function withBody(entry: Entry, body: Partial<Body>): Entry {
  return { ...entry, body: { ...entry.body, ...body } };
}

describe('rated power', () => {
  it('is the printed total before anything else', () => {
    const entry = anEntry(MAINS, [outputPort('C1', '65 W'), outputPort('C2', '30 W')]);
    const printed = { ...entry, nameplate: { ...entry.nameplate, total: fact('≤ 100 W', 'power', 'nameplate.total', 'printed') } };
    expect(derive(printed).ratedPower).toMatchObject({ nominal: 100, origin: { written: '≤ 100 W' } });
  });

  it('is the limit of a single port, else its strongest offer', () => {
    expect(derive(anEntry(MAINS, [outputPort('C1', '30 W')])).ratedPower).toMatchObject({ nominal: 30 });
    expect(derive(anEntry(MAINS, [portWith('C1', [5, 3], [20, 3.25])])).ratedPower).toMatchObject({ nominal: 65 });
  });

  it('is not known for several ports without a total', () => {
    const rated = derive(anEntry(MAINS, [outputPort('C1', '65 W'), outputPort('C2', '30 W')])).ratedPower;
    expect(rated).toMatchObject({ missing: true, needs: ['rated power'] });
  });
});

describe('size', () => {
  const edges = [quantity('68 mm', 'length'), quantity('52 mm', 'length'), quantity('29 mm', 'length')] as const;
  const size = { size: { shape: 'box', edges, written: '' }, evidence: 'measured', path: ['body', 'size'] } as const;

  it('gives density and specific power, and says what is inside', () => {
    const entry = withBody(anEntry(MAINS, [outputPort('C1', '100 W')]), {
      size,
      mass: fact('187 g', 'mass', 'body.mass'),
      prongs: 'folded',
    });
    const figures = derive(entry).size;
    expect(published(of(figures.volume).nominal, '102.544 cm³', 'volume').agrees).toBe(true);
    expect(published(of(figures.density).nominal, '0.975 W/cm³', 'power density').agrees).toBe(true);
    expect(published(of(figures.specificPower).nominal, '535 W/kg', 'specific power').agrees).toBe(true);
    expect(figures.basis).toBe('cased, prongs folded');
  });

  it('takes a volume by displacement before the edges', () => {
    const entry = withBody(anEntry(MAINS, [outputPort('C1', '100 W')]), { size, volume: fact('90 cm³', 'volume', 'body.volume') });
    expect(derive(entry).size.volume).toMatchObject({ nominal: 9e-5 });
  });

  it('says what is missing', () => {
    expect(derive(anEntry(MAINS, [outputPort('C1', '100 W')])).size.density).toMatchObject({ missing: true, needs: ['size'] });
  });
});

describe('mains side', () => {
  it('adds 10 % to a printed 240 V and says that it assumes them', () => {
    const { highLine, peak, lowLine } = derive(anEntry(MAINS, [outputPort('C1', '65 W')])).input;
    expect(published(of(highLine).nominal, '264.0 V', 'voltage').agrees).toBe(true);
    expect(published(of(peak).nominal, '373.4 V', 'voltage').agrees).toBe(true);
    expect(restsOnAssumption(of(peak))).toBe(true);
    expect(lowLine).toMatchObject({ nominal: 100 });
  });

  it('takes a printed 265 V as it is', () => {
    const { highLine } = derive(anEntry(supply('AC', '90-265 V'), [outputPort('C1', '65 W')])).input;
    expect(of(highLine).nominal).toBe(265);
    expect(restsOnAssumption(of(highLine))).toBe(false);
  });

  it('takes a direct supply as it is, with no crest', () => {
    const { highLine, peak, inputCurrent } = derive(anEntry(supply('DC', '12-24 V', null), [outputPort('C1', '60 W')])).input;
    expect(of(highLine).nominal).toBe(24);
    expect(of(peak).nominal).toBe(24);
    expect(published(of(inputCurrent).nominal, '5.6 A', 'current').agrees).toBe(true);
  });

  it('takes the power that a car charger gives at its lowest input', () => {
    const entry = anEntry(supply('DC', '12-24 V', null), [outputPort('C1', '140 W')]);
    const steps = [
      { from: quantity('12 V', 'voltage'), power: quantity('100 W', 'power') },
      { from: quantity('20 V', 'voltage'), power: quantity('140 W', 'power') },
    ];
    const { inputCurrent } = derive({ ...entry, nameplate: { ...entry.nameplate, totalAtInput: steps } }).input;
    expect(published(of(inputCurrent).nominal, '9.26 A', 'current').agrees).toBe(true);
  });

  it('assumes another power factor with a PFC than without', () => {
    const without = of(derive(anEntry(MAINS, [outputPort('C1', '100 W')])).input.inputCurrent);
    const shaped = anEntry(MAINS, [outputPort('C1', '100 W')], { stages: [stage('pfc', 'boost-pfc')] });
    const shaping = of(derive(shaped).input.inputCurrent);
    expect(shaping.high).toBeLessThan(without.low);
    expect(published(without.nominal, '1.85 A', 'current').agrees).toBe(true);
  });
});

describe('bulk capacitor', () => {
  const bulk = part('C5', 'bulk-capacitor', 'bulk', '82 µF 400 V');

  it('is charged to the crest of the mains without PFC', () => {
    const { energy, voltage } = derive(anEntry(supply('AC', '85-265 V'), [outputPort('C1', '65 W')], { parts: [bulk] })).bulk;
    // TIDA-01622: 82 µF at the crest of 265 V.
    expect(published(of(voltage).nominal, '374.8 V', 'voltage').agrees).toBe(true);
    expect(published(of(energy).nominal, '5.76 J', 'energy').agrees).toBe(true);
    expect(published(of(energy).high, '6.91 J', 'energy').agrees).toBe(true);
    expect(restsOnAssumption(of(energy))).toBe(true);
  });

  it('is charged to the bus that the PFC gives, and to the customary one where it gives none', () => {
    const given = stage('pfc', 'boost-pfc', { bus: fact('392 V', 'voltage', 'stages.pfc.bus') });
    expect(derive(anEntry(MAINS, [], { parts: [bulk], stages: [given] })).bulk.voltage).toMatchObject({ nominal: 392, low: 392 });
    expect(derive(anEntry(MAINS, [], { parts: [bulk], stages: [stage('pfc', 'boost-pfc')] })).bulk.voltage).toMatchObject({
      low: 380,
      high: 400,
    });
  });

  it('adds equal pieces and keys, and halves a pair in series', () => {
    const four = [
      part('C1, C2', 'bulk-capacitor', 'bulk', '2 × 10 µF ±20 % 400 V'),
      part('C3', 'bulk-capacitor', 'bulk', '15 µF ±20 % 400 V'),
    ];
    expect(published(of(derive(anEntry(MAINS, [], { parts: four })).bulk.capacitance).nominal, '55.00 µF', 'capacitance').agrees).toBe(
      true,
    );
    const pair = [part('C1, C2', 'bulk-capacitor', 'bulk', '100 µF ±20 % 250 V', { arrangement: 'series' })];
    expect(published(of(derive(anEntry(MAINS, [], { parts: pair })).bulk.capacitance).nominal, '50.00 µF', 'capacitance').agrees).toBe(
      true,
    );
  });

  it('needs no assumption where the tolerance is marked, and takes a measured value before the marking', () => {
    const marked = part('C5', 'bulk-capacitor', 'bulk', '82 µF ±10 % 400 V');
    const capacitance = of(derive(anEntry(MAINS, [], { parts: [marked] })).bulk.capacitance);
    expect(restsOnAssumption(capacitance)).toBe(false);
    expect(published(capacitance.high, '90.20 µF', 'capacitance').agrees).toBe(true);
  });

  it('discharges through the bleed resistor across it, and through no other', () => {
    const stages = [stage('input', 'input-filter'), stage('pfc', 'boost-pfc')];
    const atInput = part('RX', 'bleed-resistor', 'input', '1 MΩ');
    const across = part('RB', 'bleed-resistor', 'pfc', '470 kΩ');
    const none = derive(anEntry(MAINS, [], { stages, parts: [bulk, atInput] })).bulk;
    expect(none.timeToSafe).toMatchObject({ missing: true, needs: ['bleed resistor across the bulk'] });
    const found = derive(
      anEntry(supply('AC', '85-265 V'), [], {
        stages: [stage('pfc', 'boost-pfc', { bus: fact('390 V', 'voltage', 'b') })],
        parts: [bulk, across],
      }),
    ).bulk;
    // 470 kΩ × 82 µF × ln(390/60) = 72.14 s, worked with bc.
    expect(published(of(found.timeToSafe).nominal, '72.1 s', 'time').agrees).toBe(true);
  });

  it('does not guess how two bleed resistors stand', () => {
    const pair = part('R1, R2', 'bleed-resistor', 'pfc', '470 kΩ');
    const stages = [stage('pfc', 'boost-pfc')];
    expect(derive(anEntry(MAINS, [], { stages, parts: [bulk, pair] })).bulk.bleed).toMatchObject({ missing: true });
    const series = { ...pair, arrangement: 'series' } as const;
    expect(derive(anEntry(MAINS, [], { stages, parts: [bulk, series] })).bulk.bleed).toMatchObject({ nominal: 940e3 });
  });

  it('has the customary bus of a PFC even where no input is printed', () => {
    const unknown = derive(anEntry(null, [], { stages: [stage('pfc', 'boost-pfc')] })).bulk;
    expect(unknown.voltage).toMatchObject({ low: 380, high: 400 });
    expect(unknown.capacitance).toMatchObject({ missing: true, needs: ['bulk capacitor'] });
  });

  it('is missing without need for a device with a direct input', () => {
    expect(derive(anEntry(supply('DC', '12-24 V', null), [])).bulk.energy).toMatchObject({ missing: true, needs: [] });
    expect(derive(anEntry(MAINS, [])).bulk.energy).toMatchObject({ missing: true, needs: ['bulk capacitor'] });
  });
});

describe('topology', () => {
  it('counts equal blocks where the first of them stands', () => {
    const stages = [
      stage('input', 'input-filter'),
      stage('bridge', 'rectifier'),
      stage('pfc', 'boost-pfc'),
      stage('main', 'llc-half-bridge'),
      stage('out C1', 'buck'),
      stage('out C2', 'buck'),
      stage('out C3', 'buck'),
    ];
    const derived = derive(anEntry(MAINS, [], { stages }));
    expect(derived.topology).toBe('bridge · boost PFC · LLC half bridge · 3 × buck');
    expect(derived.family).toBe('boost-pfc-llc-half-bridge');
  });

  it('names a family by its converters where nothing is isolated', () => {
    const stages = [stage('input', 'dc-input'), stage('out', 'buck-boost')];
    expect(derive(anEntry(supply('DC', '12-24 V', null), [], { stages })).family).toBe('buck-boost');
    expect(derive(anEntry(MAINS, [])).family).toBe('topology-not-described');
  });
});

describe('revision', () => {
  const correction = (date: string) => ({ date, where: 'C5', was: null, is: null, why: 'misread' });

  it('goes on by one letter for every date with corrections, and skips I and O', () => {
    expect(derive(anEntry(MAINS, [])).revision).toBe('A');
    const corrections = [correction('2026-03-20'), correction('2026-03-20'), correction('2026-04-01')];
    expect(derive(anEntry(MAINS, [], { corrections })).revision).toBe('C');
    const many = Array.from({ length: 24 }, (_, day) => correction(`2026-05-${day + 1}`));
    expect(derive(anEntry(MAINS, [], { corrections: many.slice(0, 8) })).revision).toBe('J');
    expect(derive(anEntry(MAINS, [], { corrections: many })).revision).toBe('AA');
  });
});
