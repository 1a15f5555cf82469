import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { readSize } from '../../src/units/read-size.ts';
import { supply } from '../derived/an-entry.ts';
import { claimed, CUBIC_INCH, design, known, offeredWatts, rowsAt } from './designs.ts';
import { operatingValue } from './modelled.ts';
import { expectPrinted } from './prints-as.ts';

// Texas Instruments, TIDA-01622 design guide, TIDUDW2, February 2018.
const { entry, derived } = design('tida-01622-65w-acf');

describe('the 65 W active-clamp design', () => {
  test('its crest at 265 V is 374.8 V and its bulk capacitor holds 5.76 J', () => {
    expectPrinted(known(derived.input.peak), '374.8', 'table 1: 265 V maximum');
    expectPrinted(known(derived.bulk.energy), '5.76', 'bill of material: C#1 82 µF 400 V');
  });

  test('each fixed offer has the power of table 1', () => {
    expect(offeredWatts(entry, 'C1')).toEqual([15, 27, 45, 65]);
  });

  test('the size of the front page gives 32 W/in³ where the title says 30', () => {
    expectPrinted(known(derived.size.volume) * 1e6, '33.232', 'front page: 62 × 26.8 × 20 mm');
    expectPrinted(known(derived.size.density) * CUBIC_INCH, '32.05', 'front page size, 65 W');
    expect(claimed(entry, 'power density', { where: 'title' }) * CUBIC_INCH).toBeLessThan(known(derived.size.density) * CUBIC_INCH - 2);
  });

  test('the other size, of table 1, is another box: 34.32 cm³ and 31.0 W/in³', () => {
    expect(entry.body.alsoStated).toEqual(['60 × 28.6 × 20 mm in table 1']);
    const other = readSize('60 × 28.6 × 20 mm');
    if (!other.ok || other.value.shape !== 'box') throw new Error('not a box');
    const volume = other.value.edges.reduce((product, edge) => product * edge.nominal, 1);
    expectPrinted(volume * 1e6, '34.320', 'table 1: 60 × 28.6 × 20 mm');
    expectPrinted((65 / volume) * CUBIC_INCH, '31.04', 'table 1 size, 65 W');
    expect(volume).not.toBe(known(derived.size.volume));
  });

  test('its turns are 22:4 in the schematic, 5.5 and not the 6 of the text', () => {
    const stage = entry.stages.find((candidate) => candidate.id === 'main');
    const [primary = 0, secondary = 1] = stage?.turns ?? [];
    expect(primary / secondary).toBe(5.5);
    expect(stage?.alsoStated).toEqual(['turns 6:1 in section 2.3.1.2']);
    // Equations 2 and 3 of the guide: 4.68 ≤ n ≤ 6.87; both lie inside.
    for (const ratio of [5.5, 6]) expect(ratio > 4.68 && ratio < 6.87).toBe(true);
  });

  test('its switch sees 484.8 V of 650 V and its rectifier 88.1 V of 150 V, without spike', () => {
    const row = (reference: string): { stress: number; ratio: number } => {
      const found = derived.stress.find((candidate) => candidate.references.includes(reference) && candidate.quantity !== 'supply voltage');
      return { stress: known(found?.stress), ratio: known(found?.ratio) };
    };
    expectPrinted(row('QL').stress, '484.8', '374.8 V + 5.5 × 20 V');
    expectPrinted(row('QL').ratio, '0.746', 'bill of material: 650 V');
    expectPrinted(row('Q_SR1').stress, '88.1', '374.8 V / 5.5 + 20 V');
    expectPrinted(row('Q_SR1').ratio, '0.588', 'bill of material: 150 V');
    expectPrinted(row('C2').ratio, '0.80', '20 V on 25 V');
  });

  // Equation 4 of the guide prints a largest duty of 0.67 and no bulk voltage; with turns 6 it follows from 60 V, with 22:4 from 54 V.
  test('its valley at 85 V, from 82 µF and 65 W alone, holds the 60 V and its duty the 0.67 of equation 4', () => {
    const valley = operatingValue(derived, 'main', 'lowest bulk voltage at the lowest line');
    expect(valley.low < 60 && 60 < valley.high, `${String(valley.low)} to ${String(valley.high)} V`).toBe(true);
    const duty = operatingValue(derived, 'main', 'largest duty');
    expect(duty.low < 0.67 && 0.67 < duty.high, `${String(duty.low)} to ${String(duty.high)}`).toBe(true);
  });

  test('it holds 1.26 µF for each watt, and its bulk capacitor of 400 V is used to 94 %', () => {
    expectPrinted(operatingValue(derived, 'main', 'bulk capacitance per watt').nominal * 1e6, '1.26', 'bill of material: C#1');
    const bulk = derived.stress.find((row) => row.references.includes('C#1'));
    expect([bulk?.verdict, Math.round(known(bulk?.ratio) * 100)]).toEqual(['over', 94]);
  });

  // 231 µA at its own 265 V and 63 Hz; the 159 µA of 230 V and 50 Hz is no corner and stands with the formula.
  test('its Y capacitor of 2.2 nF lets 219 µA through at 264 V and 60 Hz', () => {
    const input = supply('AC', '85-264 V', '60 Hz');
    const at = derive({ ...entry, nameplate: { ...entry.nameplate, input, inputs: [input] } });
    expectPrinted(known(at.mains?.yCurrent) * 1e6, '219', 'bill of material: CY1');
    expectPrinted(known(derived.mains?.yCurrent) * 1e6, '231', 'table 1: 265 V, 63 Hz');
  });

  test('each row of tables 4 to 7 is its volts times its amperes over its watts, to 0.005 points', () => {
    expect(entry.efficiency.length).toBe(20);
    for (const point of entry.efficiency) {
      const { measuredOutput, current, input, efficiency } = point;
      if (measuredOutput === null || current === null || input === null || efficiency === null) throw new Error('a row is not whole');
      const ratio = (measuredOutput.quantity.nominal * current.quantity.nominal) / input.quantity.nominal;
      expect(Math.abs(ratio - efficiency.quantity.nominal)).toBeLessThan(0.00005);
    }
  });

  test.each([
    [5, '82.818'],
    [9, '88.340'],
    [15, '90.108'],
    [20, '90.765'],
  ])('the mean of its quarter, half, three-quarter and full load rows at %i V is %s %%', (volts, printed) => {
    const rows = rowsAt(entry, volts).slice(1);
    expect(rows.length).toBe(4);
    const mean = rows.reduce((sum, { efficiency }) => sum + (efficiency?.quantity.nominal ?? 0), 0) / 4;
    expectPrinted(mean * 100, printed, 'tables 4 to 7, rows nearest 25, 50, 75 and 100 %');
  });

  test('no row reaches the 92 and 93 % that the title and section 2.3 state', () => {
    const best = Math.max(...entry.efficiency.map(({ efficiency }) => efficiency?.quantity.nominal ?? 0));
    expect(best).toBeLessThan(claimed(entry, 'peak efficiency', { where: 'title' }));
    expect(best).toBeLessThan(claimed(entry, 'peak efficiency', { where: 'section 2.3' }));
    expect(best).toBeGreaterThan(claimed(entry, 'peak efficiency', { where: 'table 1' }) - 0.001);
  });

  test('what is not in its bill of material is absent and not unknown', () => {
    const absent = entry.parts.filter((part) => part.fitting === 'absent').map((part) => part.role);
    expect(absent).toEqual(['x-capacitor', 'varistor']);
  });
});
