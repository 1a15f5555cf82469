import { describe, expect, it } from 'vitest';
import type { TurnsRatio } from '../../src/entry/entry.ts';
import { reading } from './reading.ts';

function flyback(fields: string): ReturnType<typeof reading> {
  return reading(`stages: { main: { is: flyback, ${fields} } }`);
}

function ratioOf(text: string): TurnsRatio | null {
  return flyback(`turns ratio: "${text}"`).entry.stages[0]?.turnsRatio ?? null;
}

/** Number and digits of a stated ratio; half of the last printed digit is what the number must keep to. */
function numberOf(text: string): readonly [nominal: string, digits: number] | null {
  const ratio = ratioOf(text);
  return ratio?.by !== 'ratio' ? null : [ratio.ratio.quantity.nominal.toPrecision(4), ratio.ratio.quantity.significant];
}

describe('a turns ratio as people note it', () => {
  it.each([
    ['5.67', '5.670', 3],
    ['n = 5.67', '5.670', 3],
    ['5.67 : 1', '5.670', 3],
    ['5.67:1', '5.670', 3],
    ['5.67 to 1', '5.670', 3],
    ['Np/Ns = 5.67', '5.670', 3],
    ['primary to secondary 5.67', '5.670', 3],
    ['1 : 5.67', '0.1764', 3],
    ['Ns/Np = 0.176', '5.682', 3],
    ['Ns:Np = 1:5.67', '5.670', 3],
    ['secondary:primary 6:34', '5.667', 15],
    ['34:6', '5.667', 15],
    ['34/6', '5.667', 15],
    ['6:1', '6.000', 1],
  ])('"%s" is %s to 1, good to %i digits', (text, nominal, digits) => {
    expect(numberOf(text)).toEqual([nominal, digits]);
  });

  it('two winding voltages under test stay what they are, with their evidence', () => {
    const ratio = ratioOf('12.0 V : 2.12 V datasheet');
    expect(ratio).toMatchObject({
      by: 'winding voltages',
      primary: { quantity: { nominal: 12 }, evidence: 'datasheet' },
      secondary: { quantity: { nominal: 2.12 } },
    });
  });

  it.each(['a:b', '1:5:6', '12 V : 5', '567 %', '< 5', '1/0', '-5.67', '0'])('"%s" is none, and said so with the place', (text) => {
    const { entry, findings } = flyback(`turns ratio: "${text}"`);
    expect(entry.stages[0]?.turnsRatio).toBeNull();
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatch(/^unreadable-value 1:45 .*is no turns ratio/u);
  });

  it('one number where turns are wanted is sent to the field for a ratio', () => {
    expect(flyback('turns: n = 5.67').findings).toEqual(['unreadable-value 1:39 "n = 5.67" is no set of turns.']);
  });

  it('turns say how they are known', () => {
    expect(flyback('turns: 34:6 datasheet').entry.stages[0]).toMatchObject({ turns: [34, 6], turnsEvidence: 'datasheet' });
    expect(flyback('turns: 34:6').entry.stages[0]).toMatchObject({ turnsEvidence: 'measured' });
  });

  it('a buck has neither turns nor a ratio of them', () => {
    const { entry, findings } = reading('stages: { out: { is: buck, turns: 34:6, turns ratio: "5.67", reset: RCD } }');
    expect(entry.stages[0]).toMatchObject({ turns: [], turnsRatio: null, reset: null });
    expect(findings.map((one) => one.replace(/ \d+:\d+/u, ''))).toEqual([
      'parameter-out-of-place "turns" is no parameter of buck.',
      'parameter-out-of-place "turns ratio" is no parameter of buck.',
      'parameter-out-of-place "reset" is no parameter of buck.',
    ]);
  });
});

describe('what resets the core of a forward', () => {
  function resetOf(text: string): unknown {
    return reading(`stages: { main: { is: forward, reset: "${text}" } }`).entry.stages[0]?.reset ?? null;
  }

  it.each([
    ['34 turns', { by: 'winding', turns: 34, ratio: null }],
    ['reset winding of 34 turns', { by: 'winding', turns: 34 }],
    ['winding', { by: 'winding', turns: null, ratio: null }],
    ['1:1', { by: 'winding', turns: null, ratio: [1, 1] }],
    ['RCD reset', { by: 'RCD' }],
    ['active clamp', { by: 'active clamp' }],
    ['two-switch', { by: 'two switches' }],
    ['resonant', { by: 'resonance' }],
  ])('"%s"', (text, reset) => {
    expect(resetOf(text)).toMatchObject(reset);
  });

  it.each(['magic', '0 turns', '1:0'])('"%s" says nothing of it', (text) => {
    const { entry, findings } = reading(`stages: { main: { is: forward, reset: "${text}" } }`);
    expect(entry.stages[0]?.reset).toBeNull();
    expect(findings[0]).toContain('does not say how the core is reset');
  });

  it('a flyback needs no reset', () => {
    expect(flyback('reset: RCD').findings[0]).toContain('"reset" is no parameter of flyback.');
  });
});
