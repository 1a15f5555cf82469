import { describe, expect, test } from 'vitest';
import type { GainPoint } from '../../src/stages/models/stage-model.ts';
import { gainCurveTable } from '../../src/tables/gain-curve.ts';
import { isMissing, type Value } from '../../src/values/value.ts';
import { design, known } from './designs.ts';
import { operatingValue, roleRms, stressRow } from './modelled.ts';
import { expectPrinted, roundsTo } from './prints-as.ts';

// Fairchild Semiconductor, AN-4151 rev. 1.0.2, 10/22/14, design example (192 W, 24 V 8 A, 400 V).
const sheet = design('an-4151-192w-llc');
const { entry, derived } = sheet;

function operating(name: string): Value {
  return operatingValue(derived, 'main', name);
}

function stressOf(reference: string, quantity: string): Value {
  const { stress } = stressRow(sheet, reference, quantity);
  if (isMissing(stress)) throw new Error(stress.reason);
  return stress;
}

/** Where the tank has to work at full load on a bus. */
function corner(bus: RegExp): GainPoint {
  const point = derived.gainCurves[0]?.points.find(({ name, load }) => bus.test(name) && load === 'full load');
  if (point === undefined) throw new Error(String(bus));
  return point;
}

describe('the 192 W resonant half bridge', () => {
  test('220 µF hold the bus up from 400 V to 349 V for 20 ms (step 1)', () => {
    expectPrinted(operating('hold-up time').nominal * 1e3, '20', 'p. 8, eq. 12');
  });

  test('it resonates at 99 kHz', () => {
    expectPrinted(operating('resonant frequency').nominal / 1e3, '99', 'p. 11, eq. 23');
  });

  test('its gain at resonance is 1.11, since its leakage is the resonant inductance (step 8)', () => {
    expectPrinted(operating('gain at resonance').nominal, '1.11', 'p. 11, eq. 23: 630 µH and 118 µH');
  });

  test('the table of its gain says so too, where a tank with a choke of its own has 1', () => {
    const rows = gainCurveTable.build({ entry, derived })?.groups.flatMap((group) => group.rows) ?? [];
    const row = rows.find(({ id }) => id.endsWith('resonance'));
    expect(JSON.stringify(row?.cells)).toContain('"1.11"');
  });

  test('its gain has to be 1.12 at 400 V and 1.28 at 349 V, the drop of the diode included (steps 2 and 3)', () => {
    expectPrinted(known(corner(/400.V$/u).gain), '1.12', 'p. 9, eq. 13 and 16');
    expectPrinted(known(corner(/349.V$/u).gain), '1.28', 'p. 9, eq. 14');
  });

  // Step 6 reads 77 or 78 kHz (it prints both) off a chart of peak gains; the controller stops at 72 kHz.
  test('on 349 V it runs at 74 kHz by its own parts, 5 % below what the chart of the note gives and above its lowest 72 kHz', () => {
    const frequency = known(corner(/349.V$/u).frequency);
    expect(frequency).toBeGreaterThan(72e3);
    expect(Math.abs(frequency / 78e3 - 1)).toBeLessThan(0.05);
    expect(known(corner(/400.V$/u).frequency)).toBeLessThan(operating('resonant frequency').nominal);
  });

  test('its quality factor is 0.372 by its own parts, where table 3 prints 0.36', () => {
    const quality = operating('quality factor at full load').nominal;
    expectPrinted(quality, '0.372', 'table 3: 118 µH, 22 nF and 197 Ω');
    expect(roundsTo(quality, '0.36')).toBe(false);
    expect(sheet.findings.some(({ message }) => message.startsWith('quality factor at full load: 0.36 stated (table 3), 0.372'))).toBe(
      true,
    );
  });

  test('its primary carries up to 1.32 A rms (step 8, upper end of three methods), and the exact two-port 6 % less', () => {
    const current = operating('rms current of the primary winding');
    // The resistive estimate at 349 V, 1.33 A, is the upper end: 208.7 W over the fundamental of 157 V.
    expectPrinted(current.high, '1.33', 'by the method of ICE2HS01G, p. 9');
    if (current.origin.evidence !== 'computed') throw new Error('not computed');
    expectPrinted(current.origin.inputs['withLoss']?.nominal ?? 0, '1.32', 'p. 11, eq. 23');
    expect(current.low / current.high).toBeGreaterThan(0.9);
  });

  test('its resonant capacitor sees 336 V (eq. 24); the 325 V that were measured lie within 1 % of the range of methods', () => {
    const { low, high } = stressOf('C2', 'peak voltage in normal operation');
    expect(low < 336 && 336 < high, `${String(low)} to ${String(high)}`).toBe(true);
    expect(325 > low * 0.99 && 325 < high, `${String(low)} to ${String(high)}`).toBe(true);
  });

  // The first harmonic leaves out that the current stops before the half period does below resonance, which makes its crest higher.
  test('the 1.93 A crest that was measured (p. 15) lies 3 % above the range of methods, and within what its eq. 23 misses it by', () => {
    const high = operating('rms current of the primary winding').high * Math.SQRT2;
    expect(1.93 / high).toBeLessThan(1.04);
    expect(1.93 / 1.86).toBeLessThan(1.04);
  });

  test('at the current limit it sees 501 V on 630 V (eq. 25, printed 502 V); the 419 V of page 15 are found out', () => {
    expectPrinted(stressOf('C2', 'peak voltage at the current limit').nominal, '501', 'p. 11, eq. 25: 3 A, 72 kHz, 22 nF');
    expectPrinted(known(stressRow(sheet, 'C2', 'peak voltage at the current limit').ratio), '0.80', 'p. 11: a part of 630 V was chosen');
    const said = sheet.findings.filter(({ message }) => message.includes('419 V')).map(({ rule }) => rule);
    expect(said).toContain('claims-differ');
    expect(said).toContain('claim-against-computed');
  });

  test('each diode blocks 49.8 V of its 100 V and carries 4 A in the mean, 6.28 A rms (step 9)', () => {
    expectPrinted(stressOf('D1', 'reverse voltage').nominal, '49.8', 'p. 11, eq. 26');
    expectPrinted(known(stressRow(sheet, 'D1', 'reverse voltage').ratio) * 100, '50', 'p. 11: a part of 100 V was chosen');
    expectPrinted(roleRms(entry, 'main', 'synchronous-rectifier').nominal, '6.28', 'p. 11, eq. 27');
  });

  test('its output capacitors carry 3.867 A, printed 3.857 A (eq. 28)', () => {
    const ripple = operating('ripple current of the output capacitors together').nominal;
    expectPrinted(ripple, '3.867', 'worked anew');
    expect(Math.abs(ripple / 3.857 - 1)).toBeLessThan(0.003);
  });
});
