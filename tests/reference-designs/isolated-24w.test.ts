import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { isMissing } from '../../src/values/value.ts';
import { fact } from '../derived/an-entry.ts';
import { claimed, design, known } from './designs.ts';
import { operatingValue, roleRms, withParameters } from './modelled.ts';
import { expectPrinted, roundsTo } from './prints-as.ts';

// Maxim Integrated, MAXREFDES1085, Rev 0, 4/19.
const { entry, derived } = design('maxrefdes1085-24w');

function stressOf(reference: string): number {
  return known(derived.stress.find((row) => row.references.includes(reference))?.stress);
}

describe('the 24 W isolated flyback', () => {
  const stage = entry.stages.find((candidate) => candidate.id === 'main');

  test('its peak current is 8.4 A', () => {
    const [duty, inductance, frequency] = ['duty', 'Lm', 'frequency'].map((key) => stage?.parameters[key]?.quantity.nominal ?? 0);
    expectPrinted((17 * (duty ?? 0)) / ((inductance ?? 0) * (frequency ?? 0)), '8.4', 'primary peak current, 17 V and duty 0.42');
  });

  // The document's own allowance for the spike: 2.5 times the reflected voltage; drop 0.7 V, ratio 2.
  test('its drain voltage is 60 V and 2.5 × 24.7 V / 2 = 90.875 V: the 90.78 V of the page has its digits exchanged', () => {
    const worst = 60 + (2.5 * (24 + 0.7)) / 2;
    expect(roundsTo(worst, '90.875')).toBe(true);
    expect(roundsTo(worst, '90.78')).toBe(false);
    expectPrinted(claimed(entry, 'drain voltage'), '90.78', 'step of the primary switch');
    expect(stressOf('Q1')).toBeLessThan(worst);
  });

  test('its rectifier blocks 2 × 60 V + 24 V = 144 V, 180.0 V with a quarter on top, where the page prints 180.8 V', () => {
    expectPrinted(stressOf('D2'), '144', 'step of the secondary diode');
    expectPrinted(1.25 * stressOf('D2'), '180.0', 'step of the secondary diode');
    expect(claimed(entry, 'diode reverse voltage')).toBe(180.8);
  });

  test('its snubber diode sees 90 V at the 60 V of table 1, where the page computed 65.8 V from 36 V', () => {
    const highest = entry.nameplate.input?.voltage.high ?? 0;
    expectPrinted(highest + 2.5 * (24 / 2), '90.0', 'table 1: 60 V');
    expectPrinted(36 + 2.5 * (24 / 2), '66.0', 'step of the snubber: 36 V');
    expect(claimed(entry, 'snubber diode voltage')).toBe(65.8);
    expect(entry.stages.find((candidate) => candidate.id === 'plug')?.alsoStated).toEqual(['17-36 V in step 2']);
  });

  test('24 W at 86 % take 27.9 W and lose 3.9 W', () => {
    const input = 24 / claimed(entry, 'peak efficiency');
    expectPrinted(input, '27.9', 'page 1');
    expectPrinted(input - 24, '3.9', 'page 1');
  });

  // The paper works with 2.5 · L · Vo · Io · f, which is 2 · L · f · Pin at an efficiency of 0.8.
  describe('worked from its power alone, without its printed peak current', () => {
    const asDesigned = withParameters(entry, 'main', {
      'peak current': null,
      duty: null,
      efficiency: fact('80 %', 'ratio', 'stages.main.efficiency'),
    });

    test('the primary peaks at 8.4 A and carries 3.14 A rms', () => {
      expectPrinted(operatingValue(derive(asDesigned), 'main', 'peak primary current').nominal, '8.4', 'primary peak current');
      expectPrinted(roleRms(asDesigned, 'main', 'primary-switch').nominal, '3.14', 'primary rms current');
    });

    test('the secondary carries 1.67 A rms; its peak is half of 8.4 A, where 4.17 A is printed', () => {
      // The paper has a diode; the rms of a flyback secondary is the same in either.
      expectPrinted(roleRms(asDesigned, 'main', 'synchronous-rectifier').nominal, '1.67', 'secondary rms current');
      const peak = operatingValue(derive(asDesigned), 'main', 'peak primary current').nominal / 2;
      expectPrinted(peak, '4.20', 'half of the primary peak');
      expect(roundsTo(peak, '4.17')).toBe(false);
    });
  });

  test('its 30 mΩ and the 305 mV of its controller trip at 1.2 times the peak', () => {
    const limit = operatingValue(derived, 'main', 'current limit of the sense resistor').nominal;
    expectPrinted(limit / 8.4, '1.2', 'choice of the sense resistor');
    expectPrinted(305 / (1.2 * 8.402), '30.25', 'mΩ, computed before 30 mΩ were fitted');
  });

  test('its paper finds 90.8 % on the switch of 100 V; the snubber diode of 100 V meets as much at 60 V, which it misses', () => {
    for (const reference of ['Q1', 'D1']) {
      const { ratio, verdict } = derived.stress.find((one) => one.references.includes(reference)) ?? {};
      if (ratio === undefined || isMissing(ratio)) throw new Error(reference);
      expectPrinted(ratio.high * 100, '90.9', 'upper end of the four methods');
      expect(verdict).toBe('straddles');
    }
  });
});
