import { describe, expect, it } from 'vitest';
import { dielectricRange, canonicalDielectric } from '../../src/units/dielectric-code.ts';
import { readCapacitorCode } from '../../src/units/digit-code.ts';
import { valueOfEia96Code } from '../../src/units/eia-96-code.ts';
import { valueOfResistorCode } from '../../src/units/resistor-code.ts';
import { readRkmCode } from '../../src/units/rkm-code.ts';
import { inSiUnit } from '../../src/units/unit.ts';
import { voltsOfCode } from '../../src/units/voltage-code.ts';

describe('letter codes of IEC 60062 on resistors', () => {
  // https://en.wikipedia.org/wiki/IEC/EN_60062 (published values, ohm); R100, 2K55 and 1L5 from memory of the standard.
  it.each([
    ['470R', 470],
    ['4K7', 4700],
    ['47K', 47_000],
    ['47K3', 47_300],
    ['470K', 470_000],
    ['R47', 0.47],
    ['4M7', 4_700_000],
    ['R100', 0.1],
    ['2K55', 2550],
    ['1L5', 0.0015],
  ])('%s is %d Ω', (code, ohms) => {
    expect(valueOfResistorCode(code)).toBe(ohms);
  });
});

describe('letter codes of IEC 60062 on capacitors, from memory of the standard', () => {
  it.each([
    ['4n7', 4.7e-9],
    ['2u2', 2.2e-6],
    ['6p8', 6.8e-12],
    ['p47', 0.47e-12],
  ])('%s is %d F', (code, farads) => {
    const read = readRkmCode(code, 0, 'capacitance');
    expect(read === null ? null : inSiUnit(read.digits, 0, read.unit)).toBe(farads);
  });
});

describe('digit markings of chip resistors', () => {
  // EIA rule as shown by sharps.lv, GW Instek component tester manual and devutl.com.
  it.each([
    ['103', 10_000],
    ['220', 22],
    ['4R7', 4.7],
    ['R22', 0.22],
    ['000', 0],
    ['12R0', 12],
    ['R010', 0.01],
    ['4990', 499],
    ['1002', 10_000],
    ['1004', 1_000_000],
  ])('%s is %d Ω', (code, ohms) => {
    expect(valueOfResistorCode(code)).toBe(ohms);
  });

  it.each(['', '1', '12345', 'abc', '4R7x', '1e3'])('“%s” is no marking', (code) => {
    expect(valueOfResistorCode(code)).toBeNull();
  });
});

describe('EIA-96 markings', () => {
  // https://1001ferramentas.com/en/tools/eia-96-resistor-format-validator and devutl.com; 24B, 48A and 96C by the E96 series of IEC 60063.
  it.each([
    ['01A', 100],
    ['39D', 249_000],
    ['68X', 49.9],
    ['12C', 13_000],
    ['24B', 1740],
    ['48A', 309],
    ['96C', 97_600],
    ['01Y', 1],
    ['01R', 1],
    ['30C', 20_000],
  ])('%s is %d Ω', (code, ohms) => {
    expect(valueOfEia96Code(code)).toBe(ohms);
  });

  it.each(['00A', '97A', '01G', '1A', '001A'])('%s is none', (code) => {
    expect(valueOfEia96Code(code)).toBeNull();
  });
});

describe('capacitor markings', () => {
  // Sources as for the digit markings; tolerance letters https://www.3bmdesign.com/Responsive/Capacitor.html
  it.each([
    ['104K', 100e-9, 0.1, 0.1],
    ['106M', 10e-6, 0.2, 0.2],
    ['472J', 4.7e-9, 0.05, 0.05],
    ['225Z', 2.2e-6, 0.2, 0.8],
  ])('%s is %d F', (code, farads, below, above) => {
    expect(readCapacitorCode(code)).toMatchObject({ farads, tolerance: { kind: 'fraction', below, above } });
  });

  it('takes the letter as picofarads below 10 pF', () => {
    // 3bmdesign.com, same table: C is ±0.25 pF below 10 pF.
    expect(readCapacitorCode('479C')).toMatchObject({ farads: 4.7e-12, tolerance: { kind: 'absolute', below: 0.25 } });
  });

  it('refuses a letter that is no tolerance', () => {
    expect(readCapacitorCode('104X')).toBeNull();
  });
});

describe('voltage codes of capacitors, from memory of the EIA code', () => {
  it.each([
    ['0J', 6.3],
    ['1C', 16],
    ['1E', 25],
    ['1V', 35],
    ['1H', 50],
    ['1J', 63],
    ['2A', 100],
    ['2D', 200],
    ['2G', 400],
    ['2W', 450],
    ['3A', 1000],
  ])('%s is %d V', (code, volts) => {
    expect(voltsOfCode(code)).toBe(volts);
  });
});

describe('dielectric codes of EIA-198', () => {
  // Letters: TI SLAA701B, Holy Stone application page.
  it.each([
    ['X7R', -55, 125, -0.15, 0.15],
    ['X6S', -55, 105, -0.22, 0.22],
    ['X7S', -55, 125, -0.22, 0.22],
    ['X7T', -55, 125, -0.33, 0.22],
    ['X8R', -55, 150, -0.15, 0.15],
    ['X5P', -55, 85, -0.1, 0.1],
  ])('%s runs from %d to %d °C', (code, minimumCelsius, maximumCelsius, lowest, highest) => {
    expect(dielectricRange(code)).toEqual({ minimumCelsius, maximumCelsius, lowest, highest });
  });

  it.each([
    ['NP0', 'C0G'],
    ['NPO', 'C0G'],
    ['COG', 'C0G'],
    ['x7r', 'X7R'],
    ['X2', null],
    ['abc', null],
  ])('%s is written %s', (word, code) => {
    expect(canonicalDielectric(word)).toBe(code);
  });
});
