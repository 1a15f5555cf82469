import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../../src/diagnostics/finding.ts';
import { checkText } from './read-example.ts';

function findings(part: string): readonly Diagnostic[] {
  const text = `---\ntitle: Invented\ndevice: { maker: Larkmoor, model: LM-T65, kind: wall charger }\nstages: { main: flyback }\nparts: { main: { C1: { role: output capacitor, ${part} } } }\n---\n\nNothing.\n`;
  return checkText('lm-t65', text).diagnostics.filter(({ rule }) => rule === 'marked-against-measured');
}

describe('a capacitor as marked and as measured', () => {
  // Reported publicly (1000uf.com, fake capacitors; kenarah.wordpress.com, 2012): a can printed 6800 µF 50 V held a 2200 µF 35 V part.
  test('6800 µF printed and 2200 µF measured: −67.6 %, outside 20 % tolerance', () => {
    const [found] = findings('rating: 6800 µF 50 V, measured: 2200 µF');
    expect(found).toMatchObject({ severity: 'warning', subject: 'C1' });
    expect(found?.message).toBe('C1: marked 6800 µF, measured 2200 µF, −67.6 %, outside 20 % tolerance (none is marked).');
  });

  test('marked and not measured has no verdict', () => {
    expect(findings('rating: 6800 µF 50 V')).toEqual([]);
  });

  test('a tolerance may be lopsided: −20 and +50 %', () => {
    expect(findings('rating: 470 µF -20/+50 % 25 V, measured: 650 µF')).toEqual([]);
    expect(findings('rating: 470 µF -20/+50 % 25 V, measured: 360 µF')[0]?.message).toContain('outside 20 % tolerance.');
  });

  test('what the meter leaves open and reaches into the tolerance is undecided', () => {
    expect(findings('rating: 100 µF ±20 % 25 V, measured: 79 µF ± 2 µF')).toEqual([]);
    expect(findings('rating: 100 µF ±20 % 25 V, measured: 77 µF ± 2 µF')).toHaveLength(1);
  });

  test('a class 2 ceramic under direct voltage is only noted, with the reason and its source', () => {
    const [found] = findings('rating: 22 µF ±20 % 25 V X5R, measured: 9.6 µF 20 V');
    expect(found?.severity).toBe('note');
    expect(found?.message).toBe(
      'C1: marked 22 µF ±20 %, measured 9.6 µF with 20 V on it, −56.4 %, outside 20 % tolerance. X5R is a class 2 ceramic: the tolerance is meant without direct voltage, and what a voltage takes is the part’s nature and no fault of it; age takes up to 8 %.',
    );
    expect(found?.source).toContain('KEMET');
  });

  test('without direct voltage it is told how such a part is measured; what age takes is noted', () => {
    const far = findings('rating: 22 µF ±10 % 25 V X7R, measured: 14 µF')[0];
    expect(far).toMatchObject({ severity: 'warning' });
    expect(far?.message).toContain('new, at 25 °C, without direct voltage');
    expect(findings('rating: 22 µF ±10 % 25 V X7R, measured: 18.9 µF')[0]).toMatchObject({ severity: 'note' });
  });

  test('more than marked is no matter of voltage or age', () => {
    expect(findings('rating: 22 µF ±10 % 25 V X7R, measured: 28 µF')[0]).toMatchObject({ severity: 'warning' });
  });

  test('a class 1 ceramic keeps its value: nothing is excused', () => {
    expect(findings('rating: 10 nF ±5 % 50 V C0G, measured: 9.2 nF')[0]).toMatchObject({ severity: 'warning' });
  });
});
