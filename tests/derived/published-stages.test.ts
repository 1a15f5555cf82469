import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { Entry } from '../../src/entry/entry.ts';
import { isMissing } from '../../src/values/value.ts';
import { published, type Allowance } from '../published/published.ts';
import { operatingValue, roleRms } from '../reference-designs/modelled.ts';
import { anEntry, fact, part, portWith, stage, supply } from './an-entry.ts';

/** Whole stages of published design notes: what the models give from the inputs that the notes print. */

function nominal(entry: Entry, stageId: string, name: string): number {
  return operatingValue(derive(entry), stageId, name).nominal;
}

function stress(
  entry: Entry,
  reference: string,
  quantity: string,
): { readonly low: number; readonly nominal: number; readonly high: number } {
  const row = derive(entry).stress.find((one) => one.references.includes(reference) && one.quantity === quantity);
  if (row === undefined || isMissing(row.stress)) throw new Error(`${reference}: ${quantity}`);
  return row.stress;
}

type Printed = readonly [text: string, dimension: 'voltage' | 'current' | 'ratio' | 'time'];

function expectPrinted(computed: number, [text, dimension]: Printed, allowance: Allowance | null = null): void {
  const { agrees, says } = published(computed, text, dimension, allowance);
  expect(agrees, says).toBe(true);
}

describe('Fairchild AN-4137 rev. 1.3.0, appendix: 46.9 W in continuous conduction, 85 to 265 V, 150 µF', () => {
  const note = anEntry(supply('AC', '85-265 V', '60 Hz'), [portWith('OUT', [12, 46.9 / 12])], {
    stages: [
      stage(
        'main',
        'flyback',
        {
          reflected: fact('85 V', 'voltage', 'r'),
          Lm: fact('671 µH', 'inductance', 'l'),
          leakage: fact('4.5 µH', 'inductance', 'k'),
          frequency: fact('66 kHz', 'frequency', 'f'),
          efficiency: fact('70 %', 'ratio', 'e'),
        },
        { feeds: ['OUT'], mode: 'continuous conduction' },
      ),
    ],
    parts: [
      part('C1', 'bulk-capacitor', 'main', '150 µF ±0 % 400 V'),
      part('Q1', 'primary-switch', 'main', '650 V 5 A'),
      part('R1', 'clamp-resistor', 'main', '33.1 kΩ'),
    ],
  });
  // The note takes a charging share of 0.2 for its valley; the exact discharge ends 3 % higher.
  const valley: Allowance = { fraction: 0.035, reason: 'a charging share of 0.2 instead of the exact end of the discharge' };

  it('has its valley at 92 V (step 2)', () => {
    expectPrinted(nominal(note, 'main', 'lowest bulk voltage at the lowest line'), ['92 V', 'voltage'], valley);
  });

  it('asks for a duty of 0.48 and peaks at 2.01 A (steps 3 and 4)', () => {
    expectPrinted(nominal(note, 'main', 'largest duty'), ['0.48', 'ratio'], valley);
    expectPrinted(nominal(note, 'main', 'peak primary current'), ['2.01 A', 'current'], valley);
    expectPrinted(roleRms(note, 'main', 'primary-switch').nominal, ['1.07 A', 'current'], valley);
  });

  it('sees 502 to 587 V by four methods, of which its own 547 V are one (step 11)', () => {
    const crest: Allowance = { fraction: 0.001, reason: 'the note rounds 374.8 V to 375 V' };
    const { low, high } = stress(note, 'Q1', 'off-state voltage with spike');
    expectPrinted(low, ['502 V', 'voltage'], crest);
    expectPrinted(high, ['587 V', 'voltage'], crest);
    expect(low < 547 && 547 < high).toBe(true);
  });
});

describe('Texas Instruments SLUS223F, 9.2.2: 48 W in continuous conduction at a valley of 75 V', () => {
  const note = (drop: string): Entry =>
    anEntry(supply('AC', '85-265 V', '47 Hz'), [portWith('OUT', [12, 4])], {
      stages: [
        stage(
          'main',
          'flyback',
          {
            bus: fact('75 V', 'voltage', 'b'),
            Lm: fact('1.5 mH', 'inductance', 'l'),
            frequency: fact('110 kHz', 'frequency', 'f'),
            efficiency: fact('85 %', 'ratio', 'e'),
            'diode drop': fact(drop, 'voltage', 'd'),
          },
          { turns: [10, 1], feeds: ['OUT'], mode: 'continuous conduction' },
        ),
      ],
      parts: [part('Q1', 'primary-switch', 'main', '650 V'), part('D1', 'rectifier-diode', 'main', '100 V 10 A')],
    });

  it('needs a duty of 0.627 with the 0.6 V of its diode (eq. 16)', () => {
    expectPrinted(nominal(note('0.6 V'), 'main', 'largest duty'), ['0.627', 'ratio']);
  });

  it('peaks at 1.36 A by the duty of eq. 18, which leaves the diode out, and carries 0.97 A rms', () => {
    expectPrinted(nominal(note('0 V'), 'main', 'peak primary current'), ['1.36 A', 'current']);
    const mixed: Allowance = {
      fraction: 0.004,
      reason: 'eq. 19 takes the peak at a duty of 0.615 and the duty of 0.627 in one expression',
    };
    expectPrinted(roleRms(note('0 V'), 'main', 'primary-switch').nominal, ['0.97 A', 'current'], mixed);
  });

  it('puts 49.5 V on its diode (eq. 14)', () => {
    expectPrinted(stress(note('0.6 V'), 'D1', 'reverse voltage').nominal, ['49.5 V', 'voltage']);
  });
});

describe('Texas Instruments SLUSCM5A, 8.2.2.1: synchronous rectifier of a 20 V flyback on 265 V', () => {
  it('sees 127 V of its 150 V, 85 %: more than the customary line, on a board of its maker', () => {
    const entry = anEntry(supply('AC', '85-265 V'), [portWith('C1', [20, 3.25])], {
      stages: [stage('main', 'flyback', {}, { turns: [7, 2], feeds: ['C1'] })],
      parts: [part('Q2', 'synchronous-rectifier', 'main', '150 V')],
    });
    expectPrinted(stress(entry, 'Q2', 'reverse voltage').nominal, ['127 V', 'voltage']);
    const [row] = derive(entry).stress;
    if (row === undefined || isMissing(row.ratio)) throw new Error('no ratio');
    expectPrinted(row.ratio.nominal, ['0.85', 'ratio']);
    expect(row.verdict).toBe('over');
  });
});

describe('Infineon DN 2013-01: 1200 W in continuous conduction, 85 V, 400 V, 100 kHz, an efficiency of 1 taken', () => {
  const pfc = (parameters: Parameters<typeof stage>[2]): Entry =>
    anEntry(supply('AC', '85-265 V', '60 Hz'), [portWith('OUT', [48, 25])], {
      stages: [
        stage('bridge', 'rectifier', { efficiency: fact('100 %', 'ratio', 'e') }),
        stage(
          'pfc',
          'boost-pfc',
          { bus: fact('400 V', 'voltage', 'b'), efficiency: fact('100 %', 'ratio', 'e'), ...parameters },
          { mode: 'continuous conduction' },
        ),
      ],
      parts: [
        part('Q1', 'pfc-switch', 'pfc', '650 V 40 A'),
        part('D1', 'pfc-diode', 'pfc', '650 V 16 A'),
        part('L1', 'pfc-inductor', 'pfc', '168.5 µH 30 A'),
      ],
    });
  const known = pfc({ L: fact('168.5 µH', 'inductance', 'l'), frequency: fact('100 kHz', 'frequency', 'f') });

  it('peaks at 22.5 A from its 168.5 µH (eq. 3), inside of what is assumed without them', () => {
    expectPrinted(nominal(known, 'pfc', 'peak current of the PFC inductor'), ['22.5 A', 'current']);
    const { low, high } = operatingValue(derive(pfc({})), 'pfc', 'peak current of the PFC inductor');
    expect(low < 22.5 && 22.5 < high).toBe(true);
  });

  it('its switch carries 12.2 A rms, its diode 3 A and its bridge 12.71 A in the mean (eq. 14, 16 and 26)', () => {
    expectPrinted(roleRms(known, 'pfc', 'pfc-switch').nominal, ['12.2 A', 'current']);
    expectPrinted(stress(known, 'D1', 'mean current').nominal, ['3.0 A', 'current']);
    expectPrinted(nominal(known, 'bridge', 'mean current of the bridge'), ['12.71 A', 'current']);
  });
});
