import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { Entry } from '../../src/entry/entry.ts';
import { isMissing, type Value } from '../../src/values/value.ts';
import { fact, rating, supply } from '../derived/an-entry.ts';
import { design, known, offeredWatts } from './designs.ts';
import { operatingValue, stressRow, withParameters } from './modelled.ts';
import { expectPrinted } from './prints-as.ts';

// Injoinic, IP6557 data sheet V1.11, November 2023, and application note V1.00, 2023-03-01.
describe('the 140 W car charger', () => {
  const sheet = design('ip6557-140w-car');
  const { entry, derived } = sheet;

  test('its offers are 15, 27, 36, 45, 100 and 140 W (application note)', () => {
    expect(offeredWatts(entry, 'C1')).toEqual([15, 27, 36, 45, 100, 140]);
  });

  test('its rating depends on the input: 100 W from 12 V, 140 W from 20 V (application note)', () => {
    expect(entry.nameplate.totalAtInput.map(({ from, power }) => [from.nominal, power.nominal])).toEqual([
      [12, 100],
      [20, 140],
    ]);
    expect(known(derived.ratedPower)).toBe(140);
  });

  test('3.8 mA idle at 24 V are the 91 mW of its standby row (data sheet)', () => {
    const idle = entry.claims.find((claim) => claim.of === 'idle current');
    const [standby] = entry.measurements.filter((point) => point.subject === 'standby');
    expectPrinted((idle?.quantity?.nominal ?? 0) * 24 * 1000, '91', 'electrical characteristics: 3.8 mA at 24 V');
    expect(standby?.value.quantity.nominal).toBe(0.091);
  });

  test('28 V on a capacitor of more than 35 V is at most 0.80 of its rating, 31 V on one of more than 50 V 0.62 (section 14)', () => {
    const capacitor = entry.parts.find((part) => part.references.includes('C7'));
    expect(capacitor?.rating?.quantities.find((quantity) => quantity.dimension === 'voltage')?.bound).toBe('above');
    expectPrinted(known(stressRow(sheet, 'C7', 'voltage').stress), '28', 'application note: EPR 28 V 5 A');
    expectPrinted(known(stressRow(sheet, 'C7', 'voltage').ratio), '0.80', 'section 14: more than 35 V');
    expectPrinted(known(stressRow(sheet, 'C1', 'voltage').ratio), '0.62', 'section 14: more than 50 V');
  });

  test('its input runs from the 4.5 V at which it stops to the 31 V at which it shuts down (electrical characteristics)', () => {
    expectPrinted(operatingValue(derived, 'plug', 'lowest input voltage').nominal, '4.5', 'under-voltage lockout, falling');
    expectPrinted(operatingValue(derived, 'plug', 'highest input voltage').nominal, '31', 'over-voltage protection, rising');
  });

  // "at least 20 % above the input voltage", section 14: 37.2 V for 31 V, a ratio of 0.83; the customary line of 0.80 asks for 38.75 V.
  test('its switches see 31 V: parts of 40 V have room, and parts of 35 V are found over the line, as the advice of 20 % has it', () => {
    const quantity = 'off-state voltage, worse side';
    expectPrinted(known(stressRow(sheet, 'Q1', quantity).stress), '31', 'over-voltage protection, rising');
    expect(stressRow(sheet, 'Q1', quantity)).toMatchObject({
      verdict: 'withheld',
      rating: { needs: ['voltage rating of Q1, Q2, Q3, Q4'] },
    });
    expect(
      ['40 V', '35 V'].map((volts) => stressRow({ ...sheet, derived: derive(withSwitches(entry, volts)) }, 'Q1', quantity).verdict),
    ).toEqual(['within', 'over']);
  });

  // Application note: 100 W not below 12 V, 140 W not below 20 V; what is given below 12 V is not stated.
  test('its inductor of 15 A peaks at 10 A with 100 W from 12 V and at 9 A with 140 W from 20 V; below 12 V nothing is said', () => {
    const at = (offer: string): Value => operatingValue(derived, 'main', `peak current of the inductor at ${offer}`);
    // 92 to 98 % assumed; 10 µH less 20 % at the lowest 225 kHz, 12 V to 20 V and 20 V to 28 V.
    expectPrinted(at('20 V 5 A').nominal, '10.1', '100 W over 0.95 and 12 V, and 1.33 A');
    expectPrinted(at('28 V 5 A').nominal, '9.0', '140 W over 0.95 and 20 V, and 1.59 A');
    const row = derived.stress.find(({ references, quantity }) => references.includes('L1') && quantity === 'peak current');
    expect(row).toMatchObject({ verdict: 'withheld', stress: { needs: ['output power below 12 V'] } });
  });

  test('140 W from 12 V at 94 % would be 12.4 A in the inductor, 14.3 A at its peak: the note asks for 20 V', () => {
    const input = supply('DC', '12-31 V', null);
    const nameplate = { ...entry.nameplate, input, inputs: [input], totalAtInput: [] };
    const main = withParameters({ ...entry, nameplate }, 'main', {
      input: null,
      efficiency: fact('94 %', 'ratio', 'stages.main.efficiency'),
    });
    const peak = operatingValue(
      derive(withParameters(main, 'plug', { 'brown-out': null })),
      'main',
      'peak current of the inductor',
    ).nominal;
    // 10 µH less 20 % at the lowest 225 kHz.
    const ripple = (12 * (1 - 12 / 28)) / (8e-6 * 225e3);
    expectPrinted(peak - ripple / 2, '12.4', '140 W over 94 % and 12 V');
    expectPrinted(peak, '14.3', 'with half of the ripple');
  });

  test('50 mV per ampere add the 150 mV of its 3 A offers', () => {
    const drop = entry.stages.find((stage) => stage.id === 'main')?.parameters['line drop'];
    expectPrinted((drop?.quantity.nominal ?? 0) * 3 * 1000, '150', 'application note');
  });

  test('a fuse without a value and switches without a number are no errors', () => {
    expect(entry.parts.find((part) => part.references.includes('F1'))?.rating).toBeNull();
    expect(entry.parts.find((part) => part.references.includes('Q1'))?.number).toBeNull();
  });
});

describe('its build with two ports', () => {
  test('its 100 W begin at 12 V (application note), so that nobody reckons 22 A at 5 V', () => {
    const { inputCurrent } = design('ip6557-two-port').derived.input;
    expect(isMissing(inputCurrent) && inputCurrent.needs).toEqual(['output power at the lowest input']);
  });

  test('both in use share 5 V × 4.8 A = 24 W (application note)', () => {
    const row = design('ip6557-two-port').derived.shares?.rows.find((candidate) => candidate.key === 'C1 + A1');
    expect(row?.sum?.nominal).toBe(24);
    expect(row?.shares.map(({ pool }) => pool)).toEqual([
      ['C1', 'A1'],
      ['C1', 'A1'],
    ]);
  });
});

/** The entry with a rating on its four switches. */
function withSwitches(entry: Entry, volts: string): Entry {
  const parts = entry.parts.map((part) => (part.references.includes('Q1') ? { ...part, rating: rating(`${volts}, 8 mΩ`) } : part));
  return { ...entry, parts };
}

// Not judged, since the data sheet holds no number for it: ripple (no capacitor has a series resistance), the loss at 12 V, 5 V 3 A and
// 94 % (its switches of 8 mΩ are those of a board that is not described), the fuse, and the rise at short circuit.
