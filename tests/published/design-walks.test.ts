import { describe, expect, it } from 'vitest';
import { buckDuty } from '../../src/formulas/buck/buck-duty.ts';
import { buckInputCapacitorRms } from '../../src/formulas/buck/buck-input-capacitor-rms.ts';
import { buckInductorRipple } from '../../src/formulas/buck/buck-inductor-ripple.ts';
import { buckOutputRipple } from '../../src/formulas/buck/buck-output-ripple.ts';
import { rippleCarryingRms } from '../../src/formulas/buck/ripple-carrying-rms.ts';
import { holdUpCapacitance } from '../../src/formulas/bulk/hold-up-capacitance.ts';
import { rectifiedCrest } from '../../src/formulas/bulk/rectified-crest.ts';
import { alternatingPart } from '../../src/formulas/flyback/alternating-part.ts';
import { clampVoltage } from '../../src/formulas/flyback/clamp-voltage.ts';
import { flybackInductance } from '../../src/formulas/flyback/flyback-inductance.ts';
import { flybackPeakCurrent } from '../../src/formulas/flyback/flyback-peak-current.ts';
import { llcCapacitorAcVoltage } from '../../src/formulas/llc/llc-capacitor-ac-voltage.ts';
import { llcPrimaryCurrentResistive } from '../../src/formulas/llc/llc-primary-current-resistive.ts';
import { llcQualityFactor } from '../../src/formulas/llc/llc-quality-factor.ts';
import { sinePeakCurrent } from '../../src/formulas/llc/sine-peak-current.ts';
import { conductionLoss } from '../../src/formulas/loss/conduction-loss.ts';
import { dutyConductionLoss } from '../../src/formulas/loss/duty-conduction-loss.ts';
import { energyPerCycleLoss } from '../../src/formulas/loss/energy-per-cycle-loss.ts';
import { forwardDropLoss } from '../../src/formulas/loss/forward-drop-loss.ts';
import { gateDriveLoss } from '../../src/formulas/loss/gate-drive-loss.ts';
import { overlapLoss } from '../../src/formulas/loss/overlap-loss.ts';
import { recoveryLoss } from '../../src/formulas/loss/recovery-loss.ts';
import { resistiveLoss } from '../../src/formulas/loss/resistive-loss.ts';
import { largestDischargeResistance } from '../../src/formulas/capacitor/largest-discharge-resistance.ts';
import { rcTimeConstant } from '../../src/formulas/capacitor/rc-time-constant.ts';
import { pfcCcmSwitchRms } from '../../src/formulas/pfc/pfc-ccm-switch-rms.ts';
import { temperatureWithLoss } from '../../src/formulas/thermal/temperature-with-loss.ts';
import { CUSTOMARY } from '../../src/standards/customary-values.ts';
import type { Dimension } from '../../src/units/dimension.ts';
import { published, type Allowance } from './published.ts';

function expectPublished(computed: number, printed: string, dimension: Dimension, allowance: Allowance | null = null): void {
  const comparison = published(computed, printed, dimension, allowance);
  expect(comparison.agrees, comparison.says).toBe(true);
}

function expectOtherThan(computed: number, printed: string, dimension: Dimension): void {
  const comparison = published(computed, printed, dimension);
  expect(comparison.agrees, comparison.says).toBe(false);
}

describe('printed results that need several formulas', () => {
  it('Infineon DN 2013-01, p. 12 and 13: the switch of a 1200 W PFC loses 19.2 W', () => {
    const current = pfcCcmSwitchRms.compute({ power: 1200, rms: 85, bus: 400 });
    const edge = (time: number): number => overlapLoss.compute({ voltage: 400, current: 12.71, time, frequency: 100e3 });
    const all =
      conductionLoss.compute({ current, factor: 1.8, resistance: 0.045 }) +
      edge(10e-9) +
      edge(13.25e-9) +
      energyPerCycleLoss.compute({ energy: 11.7e-6, frequency: 100e3 }) +
      gateDriveLoss.compute({ voltage: 12, charge: 93e-9, frequency: 100e3 });
    expectPublished(all, '19.2 W', 'power', { fraction: 0.004, reason: 'the source adds rows it has rounded to 0.1 W each' });
  });

  it('Infineon DN 2013-01, p. 15: its diode loses 4.96 W', () => {
    const all =
      forwardDropLoss.compute({ current: 3, drop: 1.5 }) + recoveryLoss.compute({ voltage: 400, charge: 23e-9, frequency: 100e3 });
    expectPublished(all, '4.96 W', 'power');
  });

  it('STMicroelectronics B5973D, p. 28: a 2 A regulator loses 0.93 W', () => {
    // Its overlap time counts both edges as one whole rectangle: twice the half of a straight edge.
    const all =
      dutyConductionLoss.compute({ duty: 0.3, current: 2, factor: 1, resistance: 0.4 }) +
      2 * overlapLoss.compute({ voltage: 12, current: 2, time: 70e-9, frequency: 250e3 }) +
      12 * 2.5e-3;
    expectPublished(all, '0.93 W', 'power');
  });

  it('Linear Technology LTC3780, p. 23: switch C loses 1.27 W, and by that runs at 120.6 °C, not at the printed 113 °C', () => {
    const conduction = dutyConductionLoss.compute({ duty: 1 - 5 / 12, current: 12, factor: 1.4, resistance: 9e-3 });
    // Its switching term has a constant of that maker: 2/A times the output voltage cubed, current, Crss and frequency over the input.
    const switching = (2 * 12 ** 3 * 5 * 150e-12 * 400e3) / 5;
    expectPublished(conduction + switching, '1.27 W', 'power');
    const celsius = temperatureWithLoss.compute({ ambient: 70, loss: conduction + switching, resistance: 40 });
    expectPublished(celsius, '120.6 °C', 'temperature');
    expectOtherThan(celsius, '113 °C', 'temperature');
  });

  it('Infineon ICE2HS01G, p. 9: current limit 20 % above the peak is 3.49 A; 35 % of 85 kHz is 30 kHz', () => {
    const rms = llcPrimaryCurrentResistive.compute({ power: 300 / 0.96, input: 337.2 });
    expectPublished(1.2 * 2.91, '3.49 A', 'current');
    expectPublished(sinePeakCurrent.compute({ rms }), '2.91 A', 'current');
    expectPublished(0.35 * 85e3, '30 kHz', 'frequency');
  });

  it('Jacob, example 9.1: 95 % of the crest of 37.6 V is 35.7 V', () => {
    expectPublished(0.95 * rectifiedCrest.compute({ rms: 28, drop: 2 }), '35.7 V', 'voltage');
  });

  it('Fairchild AN-4137, appendix step 11: from the rating of the clamp to 172 V at the highest line', () => {
    const duty = 85 / (375 + 85);
    const peak = flybackPeakCurrent.compute({ power: 67, input: 375, duty, inductance: 671e-6, frequency: 66e3 });
    const clamp = clampVoltage.compute({ reflected: 85, resistance: 33.1e3, leakage: 4.5e-6, frequency: 66e3, peak });
    expectPublished(clamp, '172 V', 'voltage');
  });
});

describe('printed results behind an input that the source does not print', () => {
  // The note is restated with 7 µH; its three printed losses fit 4.7 µH and lie 0.25 % above what 7 µH give.
  const ripple = buckInductorRipple.compute({ input: 12, output: 5, inductance: 7e-6, frequency: 1e6 });
  const current = rippleCarryingRms.compute({ current: 3, ripple });
  const restated = { fraction: 0.0025, reason: 'the restated inductance of 7 µH leaves a little less ripple than the printed losses hold' };

  it.each([
    ['high side', 5 / 12, 0.1, '376 mW'],
    ['low side', 7 / 12, 0.07, '369 mW'],
    ['inductor', 1, 0.08, '723 mW'],
  ])('ROHM 64AN035E, calculation example: the %s loses by conduction what is printed', (_, share, resistance, printed) => {
    expectPublished(share * resistiveLoss.compute({ current, resistance }), printed, 'power', restated);
  });

  it('Linear Technology LTC3780, p. 23: switch A loses 1.94 W, inside of what the hot factors of 1.2 to 1.6 leave', () => {
    const { low, high } = CUSTOMARY.coldLowVoltage;
    const loss = (factor: number): number => conductionLoss.compute({ current: (5 * 12) / 5, factor, resistance: 9e-3 });
    const celsius = (factor: number): number => temperatureWithLoss.compute({ ambient: 70, loss: loss(factor), resistance: 40 });
    expect([loss(low) < 1.94, loss(high) > 1.94, celsius(low) < 147.6, celsius(high) > 147.6]).toEqual([true, true, true, true]);
  });
});

describe('printed results that are wrong: the right value is used', () => {
  it('SLUS223F, 9.2.2.3: 75 V, a duty of 120/195, 56.47 W and a ripple of 10 % ask for 1.71 mH, printed 1.8 mH', () => {
    const inductance = flybackInductance.compute({ input: 75, duty: 120 / 195, power: 48 / 0.85, frequency: 110e3, ripple: 0.1 });
    expectPublished(inductance, '1.71 mH', 'inductance');
    expectOtherThan(inductance, '1.8 mH', 'inductance');
  });

  it('Infineon DN 2013-01, p. 15: 900.9 µF hold up for a cycle of 60 Hz, 16.667 ms, printed 16.6 ms', () => {
    const capacitance = (time: number): number => holdUpCapacitance.compute({ power: 1200, time, start: 400, end: 340 });
    expectPublished(capacitance(1 / 60), '900.9 µF', 'capacitance');
    expectOtherThan(capacitance(16.6e-3), '900.9 µF', 'capacitance');
  });

  it('ANP015 as restated: 256 kΩ start from 283 V; from the crest of its 253 V 2.52 µF ask for 222 kΩ', () => {
    const resistance = (start: number): number => largestDischargeResistance.compute({ time: 1, capacitance: 2.52e-6, start, end: 60 });
    expectPublished(resistance(253 * Math.SQRT2), '222 kΩ', 'resistance');
    expectPublished(resistance(200 * Math.SQRT2), '255.9 kΩ', 'resistance');
  });

  it('TPS40192, eq. 16: 2.37 A takes a mean from an rms; the input capacitor carries 3.36 A', () => {
    const [current, ripple] = [10, 2.6];
    const duty = buckDuty.compute({ output: 1.8, input: 14 });
    const asPrinted = (current + ripple / 12) * Math.sqrt(duty) - duty * current;
    expectPublished(asPrinted, '2.37 A', 'current', { fraction: 0.0015, reason: 'the source rounds the root of the duty' });
    expectPublished(buckInputCapacitorRms.compute({ duty, current, ripple }), '3.36 A', 'current');
  });

  it('TPS40192, eq. 11: 24.3 mV and 4.4 mΩ leave out the eighth; the capacitance alone gives 3.04 mV', () => {
    const [ripple, frequency, capacitance] = [2.6, 600e3, 178e-6];
    const asPrinted = ripple / (capacitance * frequency);
    expectPublished(asPrinted, '24.3 mV', 'voltage');
    expectPublished((36e-3 - asPrinted) / ripple, '4.4 mΩ', 'resistance', { fraction: 0.008, reason: 'the source cuts 4.48 off' });
    expectPublished(buckOutputRipple.compute({ ripple, resistance: 0, frequency, capacitance }), '3.04 mV', 'voltage');
  });

  it('U-165: the capacitor carries 10.0 A; the printed 14 A is the current of the winding', () => {
    const ripple = alternatingPart.compute({ total: 14.168, part: 10 });
    expectPublished(ripple, '10.04 A', 'current');
    expectOtherThan(ripple, '14 A', 'current');
  });

  it('SLUP263 as restated: 181.3 V on the resonant capacitor, not 187.9 V', () => {
    const volts = llcCapacitorAcVoltage.compute({ current: 2.51, frequency: 80.7e3, capacitance: 27.3e-9 });
    expectPublished(volts, '181.3 V', 'voltage');
    expectOtherThan(volts, '187.9 V', 'voltage');
  });

  it('AN-4151, table 3: quality factor 0.372, not 0.36', () => {
    // 118 µH is what its 22 nF and 99 kHz ask for.
    const quality = llcQualityFactor.compute({ inductance: 118e-6, capacitance: 22e-9, load: 197 });
    expectPublished(quality, '0.372', 'ratio');
    expectOtherThan(quality, '0.36', 'ratio');
  });

  it('Robertson, example 8.2: the time constant of 330 kΩ and 0.5 µF is 0.165 s, printed 0.16 s', () => {
    expectPublished(rcTimeConstant.compute({ resistance: 330e3, capacitance: 0.5e-6 }), '0.165 s', 'time');
  });
});
