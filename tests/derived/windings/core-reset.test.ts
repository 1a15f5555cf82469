import { describe, expect, it } from 'vitest';
import { derive } from '../../../src/derived/derive.ts';
import type { Derived } from '../../../src/derived/derived.ts';
import { forwardLargestDuty } from '../../../src/formulas/forward/forward-largest-duty.ts';
import { isMissing, type Known } from '../../../src/values/value.ts';
import { checkText } from '../../checks/read-example.ts';
import { published } from '../../published/published.ts';

const PARTS = `parts:
  main:
    Q1: switch, 1000 V 8 A
    D1: clamp diode, 1000 V
    C9: clamp capacitor, 10 nF 630 V
    D3, D4: rectifier diode, 200 V`;

function sheet(stage: string, bus = '390 V'): { readonly derived: Derived; readonly said: readonly string[] } {
  const text = `---
title: Invented
device: { maker: Larkmoor, model: LM-D150, kind: desktop charger }
nameplate: { input: 200-240 V~ 50/60 Hz 1.2 A, total: 150 W }
ports: { OUT: { connector: barrel, power: 150 W, offers: [24 V 6.25 A] } }
stages: { pfc: { is: boost PFC, bus: 390 V measured }, main: { is: forward, feeds: [OUT], bus: ${bus} measured, ${stage} } }
${PARTS}
---

Text.
`;
  const { entry, reading, diagnostics } = checkText('lm-d150', text);
  if (entry === null) throw new Error(JSON.stringify(reading));
  const said = diagnostics.filter(({ rule }) => rule === 'core-reset-against-duty').map(({ message }) => message);
  return { derived: derive(entry), said };
}

function stressOf(stage: string, reference: string): Known {
  const row = sheet(stage).derived.stress.find(({ references }) => references.includes(reference));
  if (row === undefined) throw new Error(`no row for ${reference}`);
  return row.stress;
}

function agrees(known: Known, printed: string): boolean {
  return !isMissing(known) && published(known.nominal, printed, known.dimension).agrees;
}

function largestDuty(stage: string): Known | undefined {
  return sheet(stage).derived.operating.find(({ name }) => name.startsWith('largest duty'))?.value;
}

describe('what the switch of a forward stands, by what resets its core (bus 390 V, 24 V out, worked with bc)', () => {
  it.each([
    ['a winding of the same turns', 'turns: 40:5, reset: 40 turns', '780 V'],
    ['the same as a ratio', 'turns: 40:5, reset: "1:1"', '780 V'],
    ['a winding of fewer turns', 'turns: 40:5, reset: 30 turns', '910 V'],
    ['two switches', 'turns: 40:5, reset: two-switch', '390 V'],
    ['two switches, by the mode alone', 'turns: 40:5, mode: two-switch', '390 V'],
    ['an RCD clamp of known voltage', 'turns: 40:5, reset: RCD, clamp: 350 V', '740 V'],
    // A duty of 8 × 24 / 390 = 0.4923 leaves 390 / 0.5077.
    ['an active clamp', 'turns: 40:5, reset: active clamp', '768.2 V'],
    ['a winding, with a spike that was seen', 'turns: 40:5, reset: 40 turns, spike: 60 V', '840 V'],
  ])('%s', (_, stage, printed) => {
    expect(agrees(stressOf(stage, 'Q1'), printed)).toBe(true);
  });

  it('an active clamp is worst at whichever end of its input leaves more', () => {
    // At 250 V the duty is 0.768 and leaves 250 / 0.232, more than the 768.2 V at 390 V.
    const { derived } = sheet('turns: 40:5, reset: active clamp', '250-390 V');
    const row = derived.stress.find(({ references }) => references.includes('Q1'));
    expect(row !== undefined && agrees(row.stress, '1077.6 V')).toBe(true);
    expect(row?.corner).toBe('worse end of the input');
  });

  it.each([
    ['nothing said', 'turns: 40:5, mode: single-switch', 'reset of main'],
    ['an RCD clamp of unknown voltage', 'turns: 40:5, reset: RCD', 'clamp of main'],
    ['a resonant reset', 'turns: 40:5, reset: resonant', 'clamp of main'],
    ['a reset winding that nobody counted', 'turns: 40:5, reset: winding', 'turns of the reset winding of main'],
    ['reset turns without those of the primary', 'turns ratio: "8 : 1", reset: 40 turns', 'turns of main'],
  ])('%s: withheld, with what is wanted', (_, stage, need) => {
    const stress = stressOf(stage, 'Q1');
    expect(isMissing(stress) && stress.needs).toEqual([need]);
  });

  it('the reset diode blocks the bus and the bus as its winding shows it', () => {
    expect(agrees(stressOf('turns: 40:5, reset: 30 turns', 'D1'), '682.5 V')).toBe(true);
    expect(agrees(stressOf('turns: 40:5, reset: two-switch', 'D1'), '390 V')).toBe(true);
  });

  it('either rectifier is held to the larger of what the two block', () => {
    expect(agrees(stressOf('turns: 40:5, reset: 40 turns', 'D3'), '48.75 V')).toBe(true);
    expect(agrees(stressOf('turns: 40:5, reset: 30 turns', 'D3'), '65.0 V')).toBe(true);
  });

  it('the capacitor of an active clamp is not judged, since nobody says where it is tied', () => {
    expect(isMissing(stressOf('turns: 40:5, reset: active clamp', 'C9'))).toBe(true);
    expect(agrees(stressOf('turns: 40:5, reset: RCD, clamp: 350 V', 'C9'), '350 V')).toBe(true);
  });
});

describe('volt-seconds of the core', () => {
  it.each([
    ['turns: 40:5, reset: 40 turns', '0.500'],
    ['turns: 40:5, reset: 30 turns', '0.571'],
    ['turns: 40:5, reset: RCD, clamp: 350 V', '0.473'],
    ['turns: 40:5, mode: two-switch', '0.500'],
  ])('%s: reset up to a duty of %s', (stage, printed) => {
    const known = largestDuty(stage);
    expect(known !== undefined && agrees(known, printed)).toBe(true);
  });

  it('at the largest duty the flux of a cycle, added up step by step, ends where it began', () => {
    const steps = 100_000;
    for (const ratio of [0.5, 1, 1.5, 3]) {
      const duty = forwardLargestDuty.compute({ resetRatio: ratio });
      let flux = 0;
      for (let step = 0; step < steps; step += 1) flux += (step + 0.5 < duty * steps ? 390 : -390 * ratio) / steps;
      // One step more or less is what the sum can resolve.
      expect(Math.abs(flux)).toBeLessThanOrEqual((390 * (1 + ratio)) / steps);
    }
  });

  it('sets no limit of its own to an active clamp', () => {
    expect(isMissing(largestDuty('turns: 40:5, reset: active clamp') ?? { missing: true, reason: '', needs: [] })).toBe(true);
    expect(sheet('turns: 40:5, reset: active clamp, duty: 70 %').said).toEqual([]);
  });

  it('a duty that the output asks for within the limit draws nothing', () => {
    expect(sheet('turns: 40:6, reset: 40 turns').said).toEqual([]);
  });

  it('a reset winding of too many turns, a stated duty above the limit, a mode against the reset', () => {
    expect(sheet('turns: 40:5, reset: 56 turns').said).toEqual([
      'main: its highest output asks for a duty of 0.492 at the lowest bus, the largest duty at which the reset winding resets its core is 0.417.',
    ]);
    expect(sheet('turns: 40:6, reset: 40 turns, duty: 55 %').said).toEqual([
      'main: a duty of 0.55 is given, the largest duty at which the reset winding resets its core is 0.5.',
    ]);
    expect(sheet('turns: 40:6, mode: two-switch, reset: RCD, clamp: 400 V').said).toEqual([
      'main: the mode is two-switch, the reset RCD. Computed with the reset.',
    ]);
    expect(sheet('turns: 40:6, mode: single-switch, reset: two-switch').said).toHaveLength(1);
  });

  it('with two switches the block alone is marked', () => {
    expect(sheet('turns: 40:4, mode: two-switch').said[0]).toContain('the bus behind two switches resets its core is 0.5');
  });
});
