import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { TouchVoltage } from '../../src/derived/mains/mains-figures.ts';
import { isMissing, type Known } from '../../src/values/value.ts';
import { mainsSide } from '../../src/tables/mains-side.ts';
import { checkText, type CheckedText } from '../checks/read-example.ts';
import { published } from '../published/published.ts';

function sheet(measurements: string, parts = 'CY1: { role: Y capacitor, rating: 2.2 nF Y1 400 VAC }'): CheckedText {
  return checkText(
    'lm-s30',
    `---
title: Invented
device: { maker: Larkmoor, model: LM-S30, kind: wall charger }
nameplate: { input: 100-240 V~ 50/60 Hz 0.8 A, total: 30 W, marks: [class II symbol] }
stages: { input: input filter, main: flyback }
parts: { main: { ${parts} } }
measurements: { ${measurements} }
---

Text.
`,
  );
}

function reading(measurements: string, parts?: string): TouchVoltage {
  const { entry, reading: found } = sheet(measurements, parts);
  const [first] = entry === null ? [] : (derive(entry).mains?.touchVoltages ?? []);
  if (first === undefined) throw new Error(JSON.stringify(found));
  return first;
}

function said(measurements: string, parts?: string): readonly string[] {
  return sheet(measurements, parts)
    .diagnostics.filter(({ rule }) => rule === 'touch-voltage-open-meter')
    .map(({ severity, message }) => `${severity} ${message}`);
}

function agrees(known: Known, printed: string): boolean {
  return !isMissing(known) && published(known.nominal, printed, known.dimension).agrees;
}

describe('80 V between the output of a two-pin supply and earth', () => {
  it('are 8 µA into a meter of 10 MΩ, and nothing that the capacitor of 2.2 nF could not put there', () => {
    const { through, divider, passed } = reading('touch voltage: { 230 V: 80 V }');
    expect(agrees(through, '8.0 µA')).toBe(true);
    // Worked with Python: 230 V through 2.2 nF at 60 Hz into 10 MΩ, and 2π·60·2.2 nF·230 V.
    expect(agrees(divider, '228.3 V')).toBe(true);
    expect(agrees(passed, '0.191 mA')).toBe(true);
  });

  it('are told as a voltage into an open meter, not touch current, with the current that counts', () => {
    const [note] = said('touch voltage: { 230 V: 80 V }');
    expect(note).toMatch(/^note 80 V at 230 V is a voltage into an open meter, not touch current: 10 MΩ let 8 µA through\./u);
    expect(note).toContain('at most 0.191 mA');
    expect(note).toContain('0.25 mA (IEC 60950-1, equipment without earth)');
    expect(note).not.toMatch(/\b(?:safe|complies|passes the)\b/iu);
  });

  it('say no more where a touch current was measured too', () => {
    expect(said('touch voltage: { 230 V: 80 V }, touch current: { 230 V: 0.12 mA }')).toEqual([]);
  });

  it('on a meter of another resistance are another current', () => {
    const { through } = reading('touch voltage: [{ value: 80 V, line: 230 V 50 Hz, load: 1 MΩ }]');
    expect(agrees(through, '80 µA')).toBe(true);
  });

  it('without a Y capacitor among the parts leave the current open', () => {
    expect(isMissing(reading('touch voltage: { 230 V: 80 V }', 'T1: transformer').passed)).toBe(true);
    expect(said('touch voltage: { 230 V: 80 V }', 'T1: transformer')[0]).toContain('With the Y capacitor among the parts');
  });

  it('stand in the table of the mains side with their caution', () => {
    const { entry } = sheet('touch voltage: { 230 V: 80 V }');
    if (entry === null) throw new Error('not read');
    const notes = mainsSide.build({ entry, derived: derive(entry) })?.notes.join(' ') ?? '';
    expect(notes).toContain('a meter of 10 MΩ showed 80 V at 230 V and let 8.0 µA through');
    expect(notes).toContain('with the case closed and by qualified people; it is no touch-current test');
  });

  it('are a voltage: a current under that word is refused', () => {
    expect(sheet('touch voltage: { 230 V: 0.2 mA }').reading.length).toBeGreaterThan(0);
  });
});
