import { describe, expect, it } from 'vitest';
import { bulkCapacitancePerWatt } from '../../src/formulas/bulk/bulk-capacitance-per-watt.ts';
import { storedEnergy } from '../../src/formulas/bulk/stored-energy.ts';
import { yCapacitorCurrent } from '../../src/formulas/capacitor/y-capacitor-current.ts';
import { electricPower } from '../../src/formulas/energy/electric-power.ts';
import { powerDensity } from '../../src/formulas/energy/power-density.ts';
import { reflectedVoltage } from '../../src/formulas/flyback/reflected-voltage.ts';
import { switchOffStateVoltage } from '../../src/formulas/flyback/switch-off-state-voltage.ts';
import { boxVolume } from '../../src/formulas/geometry/box-volume.ts';
import { mainsPeak } from '../../src/formulas/mains/mains-peak.ts';
import { rectifierReverseVoltage } from '../../src/formulas/rectifier/rectifier-reverse-voltage.ts';
import { voltageStressRatio } from '../../src/formulas/stress/voltage-stress-ratio.ts';
import type { Dimension } from '../../src/units/dimension.ts';
import { published, quantityOf } from './published.ts';

function si(text: string, dimension: Dimension): number {
  return quantityOf(text, dimension).nominal;
}

function volume(first: string, second: string, third: string): number {
  return boxVolume.compute({ length: si(first, 'length'), width: si(second, 'length'), height: si(third, 'length') });
}

function expectPublished(computed: number, printed: string, dimension: Dimension): void {
  const comparison = published(computed, printed, dimension);
  expect(comparison.agrees, comparison.says).toBe(true);
}

/**
 * Texas Instruments TIDA-01622, TIDUDW2 (February 2018): sizes of the front page and of table 1, 65 W, 85–265 V, 82 µF,
 * turns 6 (text) and 22:4 (schematic), 650 V switches, 150 V rectifier, 2.2 nF Y capacitor. The document prints the inputs and
 * "30 W/in³"; the figures below are worked from its inputs with Python.
 */
describe('65 W active-clamp adapter board', () => {
  const front = volume('62 mm', '26.8 mm', '20 mm');
  const peak = mainsPeak.compute({ rms: 265 });

  it('has 33.232 cm³, which is 32.05 W/in³ or 1.956 W/cm³', () => {
    expectPublished(front, '33.232 cm³', 'volume');
    expectPublished(powerDensity.compute({ power: 65, volume: front }), '32.05 W/in³', 'power density');
    expectPublished(powerDensity.compute({ power: 65, volume: front }), '1.956 W/cm³', 'power density');
  });

  it('has 34.320 cm³ by its own table 1, which contradicts the front page', () => {
    const table = volume('60 mm', '28.6 mm', '20 mm');
    expectPublished(table, '34.320 cm³', 'volume');
    expectPublished(powerDensity.compute({ power: 65, volume: table }), '31.04 W/in³', 'power density');
    expect(published(table, '33.232 cm³', 'volume').agrees).toBe(false);
  });

  it('is denser than the 30 W/in³ of its title by either size', () => {
    expect(powerDensity.compute({ power: 65, volume: front })).toBeGreaterThan(si('30 W/in³', 'power density'));
  });

  it('charges its bulk capacitor to 374.8 V and 5.76 J', () => {
    expectPublished(peak, '374.8 V', 'voltage');
    expectPublished(storedEnergy.compute({ capacitance: 82e-6, voltage: peak }), '5.76 J', 'energy');
  });

  it.each([
    ['22:4', 5.5, '484.8 V', '74.6 %', '88.1 V', '58.8 %'],
    ['6:1', 6, '494.8 V', '76.1 %', '82.5 V', '55.0 %'],
  ])('with turns %s its switch sees %s', (_, ratio, switchVolts, switchShare, rectifierVolts, rectifierShare) => {
    const off = switchOffStateVoltage.compute({ input: peak, reflected: reflectedVoltage.compute({ turnsRatio: ratio, output: 20 }) });
    expectPublished(off, switchVolts, 'voltage');
    expectPublished(voltageStressRatio.compute({ stress: off, rating: 650 }), switchShare, 'ratio');
    const reverse = rectifierReverseVoltage.compute({ input: peak, turnsRatio: ratio, output: 20 });
    expectPublished(reverse, rectifierVolts, 'voltage');
    expectPublished(voltageStressRatio.compute({ stress: reverse, rating: 150 }), rectifierShare, 'ratio');
  });

  it('holds 1.26 µF for each watt', () => {
    expectPublished(bulkCapacitancePerWatt.compute({ capacitance: 82e-6, power: 65 }), '1.26 µF/W', 'capacitance per power');
  });

  it('passes 159 µA at 230 V 50 Hz and 219 µA at 264 V 60 Hz through its Y capacitor', () => {
    expectPublished(yCapacitorCurrent.compute({ frequency: 50, capacitance: 2.2e-9, voltage: 230 }), '159 µA', 'current');
    expectPublished(yCapacitorCurrent.compute({ frequency: 60, capacitance: 2.2e-9, voltage: 264 }), '219 µA', 'current');
  });

  it('loads its 25 V capacitors to 80 % at 20 V', () => {
    expectPublished(voltageStressRatio.compute({ stress: 20, rating: 25 }), '80.0 %', 'ratio');
  });
});

/** Silanna Semiconductor RD-29, document 11100 version 1.0, opening page: 33.9 × 30.4 × 34.5 mm, 2.17 in³, 35.5 cm³, > 29.8 W/in³. */
describe('65 W uncased flyback with active clamp', () => {
  const box = volume('33.9 mm', '30.4 mm', '34.5 mm');

  it('has the printed 2.17 in³; the printed 35.5 cm³ is cut off, not rounded', () => {
    expectPublished(box, '2.17 in³', 'volume');
    expect(published(box, '35.5 cm³', 'volume').agrees).toBe(false);
    expect(Math.floor(box * 1e7) / 10).toBe(35.5);
  });

  it('has 1.828 W/cm³ and more than the printed 29.8 W/in³', () => {
    const density = powerDensity.compute({ power: 65, volume: box });
    expectPublished(density, '1.828 W/cm³', 'power density');
    expect(density).toBeGreaterThan(si('29.8 W/in³', 'power density'));
  });
});

describe('Power Integrations design examples', () => {
  // DER-937 (2021) and DER-600 (2020), opening pages.
  it.each([
    ['DER-937, 100 W without enclosure', '100 W', ['3.30 in', '2.17 in', '0.93 in'], '15.0 W/in³'],
    ['DER-600, 45 W in its enclosure', '45 W', ['1.5 in', '1.38 in', '1.61 in'], '13.50 W/in³'],
    ['DER-600, 45 W as a board', '45 W', ['1.2875 in', '1.08 in', '1.266 in'], '25.56 W/in³'],
  ] as const)('%s', (_, power, [first, second, third], printed) => {
    expectPublished(powerDensity.compute({ power: si(power, 'power'), volume: volume(first, second, third) }), printed, 'power density');
  });

  // DER-820 (2019): 9 V 2.23 A sold as 20 W.
  it('offer a little more than the label in DER-820', () => {
    expectPublished(electricPower.compute({ voltage: 9, current: 2.23 }), '20.07 W', 'power');
  });
});

/** STMicroelectronics STEVAL-ISC002V1: 132 × 52 × 22 mm, 19 V 4.74 A; density worked from them with Python. */
describe('90 W notebook adapter', () => {
  it('has 151.008 cm³ and 9.77 W/in³', () => {
    const box = volume('132 mm', '52 mm', '22 mm');
    expectPublished(box, '151.008 cm³', 'volume');
    expectPublished(powerDensity.compute({ power: 90, volume: box }), '9.77 W/in³', 'power density');
    expectPublished(electricPower.compute({ voltage: 19, current: 4.74 }), '90.06 W', 'power');
  });
});
