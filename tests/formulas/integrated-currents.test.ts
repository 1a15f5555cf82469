import { describe, expect, it } from 'vitest';
import { buckHighSideRms } from '../../src/formulas/buck/buck-high-side-rms.ts';
import { buckInputCapacitorRms } from '../../src/formulas/buck/buck-input-capacitor-rms.ts';
import { buckLowSideRms } from '../../src/formulas/buck/buck-low-side-rms.ts';
import { buckOutputRipple } from '../../src/formulas/buck/buck-output-ripple.ts';
import { rippleCarryingRms } from '../../src/formulas/buck/ripple-carrying-rms.ts';
import { alternatingPart } from '../../src/formulas/flyback/alternating-part.ts';
import { flybackBoundaryPeak } from '../../src/formulas/flyback/flyback-boundary-peak.ts';
import { flybackDcmOutputRipple } from '../../src/formulas/flyback/flyback-dcm-output-ripple.ts';
import { flybackDcmSecondaryRms } from '../../src/formulas/flyback/flyback-dcm-secondary-rms.ts';
import { flybackPeakCurrent } from '../../src/formulas/flyback/flyback-peak-current.ts';
import { trapezoidRms } from '../../src/formulas/flyback/trapezoid-rms.ts';
import { triangleMean } from '../../src/formulas/flyback/triangle-mean.ts';
import { triangleRms } from '../../src/formulas/flyback/triangle-rms.ts';
import { halfBridgeSwitchRms } from '../../src/formulas/llc/half-bridge-switch-rms.ts';
import { llcCentreTapRms } from '../../src/formulas/llc/llc-centre-tap-rms.ts';
import { llcMagnetisingCurrentTriangle } from '../../src/formulas/llc/llc-magnetising-current-triangle.ts';
import { llcMagnetisingCurrent } from '../../src/formulas/llc/llc-magnetising-current.ts';
import { llcOutputRippleCurrent } from '../../src/formulas/llc/llc-output-ripple-current.ts';
import { llcRectifierMean } from '../../src/formulas/llc/llc-rectifier-mean.ts';
import { llcSecondaryCurrent } from '../../src/formulas/llc/llc-secondary-current.ts';
import { bridgeMeanCurrent } from '../../src/formulas/pfc/bridge-mean-current.ts';
import { busRippleCurrentAtLine } from '../../src/formulas/pfc/bus-ripple-current-at-line.ts';
import { busRippleCurrent } from '../../src/formulas/pfc/bus-ripple-current.ts';
import { busRipple } from '../../src/formulas/pfc/bus-ripple.ts';
import { pfcCcmDiodeRms } from '../../src/formulas/pfc/pfc-ccm-diode-rms.ts';
import { pfcCcmSwitchRms } from '../../src/formulas/pfc/pfc-ccm-switch-rms.ts';
import { pfcCrmDiodeRms } from '../../src/formulas/pfc/pfc-crm-diode-rms.ts';
import { pfcCrmInductorRms } from '../../src/formulas/pfc/pfc-crm-inductor-rms.ts';
import { pfcCrmPeakCurrent } from '../../src/formulas/pfc/pfc-crm-peak-current.ts';
import { pfcCrmSwitchRms } from '../../src/formulas/pfc/pfc-crm-switch-rms.ts';
import { pfcDiodeMean } from '../../src/formulas/pfc/pfc-diode-mean.ts';
import { totemPoleLegRms } from '../../src/formulas/pfc/totem-pole-leg-rms.ts';
import { meanOver, rmsOver } from './integral.ts';

/** Room for the midpoint rule with 20 000 steps. */
const INTEGRATION = 1e-6;

function expectEqual(closed: number, integrated: number, room = INTEGRATION): void {
  expect(Math.abs(closed / integrated - 1), `closed ${String(closed)}, integrated ${String(integrated)}`).toBeLessThan(room);
}

/** Mains half cycle of 90 V on a 390 V bus, 300 W: duty of the switch and crest of the line at an angle. */
const RMS = 90;
const BUS = 390;
const POWER = 300;
const dutyAt = (angle: number): number => 1 - (Math.SQRT2 * RMS * Math.sin(angle)) / BUS;
const lineAt = (angle: number): number => ((Math.SQRT2 * POWER) / RMS) * Math.sin(angle);

describe('a boost PFC in continuous conduction, integrated over the half cycle', () => {
  it('switch', () => {
    expectEqual(
      pfcCcmSwitchRms.compute({ power: POWER, rms: RMS, bus: BUS }),
      Math.sqrt(meanOver(0, Math.PI, (angle) => lineAt(angle) ** 2 * dutyAt(angle))),
    );
  });

  it('diode, rms and mean', () => {
    expectEqual(
      pfcCcmDiodeRms.compute({ power: POWER, rms: RMS, bus: BUS }),
      Math.sqrt(meanOver(0, Math.PI, (angle) => lineAt(angle) ** 2 * (1 - dutyAt(angle)))),
    );
    expectEqual(
      pfcDiodeMean.compute({ power: POWER, bus: BUS }),
      meanOver(0, Math.PI, (angle) => lineAt(angle) * (1 - dutyAt(angle))),
    );
  });

  it('bridge mean', () => {
    expectEqual(bridgeMeanCurrent.compute({ power: POWER, rms: RMS }), meanOver(0, Math.PI, lineAt));
  });

  it('bus capacitor, all of its current and the part at twice the line frequency', () => {
    const mean = POWER / BUS;
    // Within each switching period the diode current is there for 1 − D; the load draws its mean all the time.
    const squared = meanOver(0, Math.PI, (angle) => {
      const off = 1 - dutyAt(angle);
      return off * (lineAt(angle) - mean) ** 2 + (1 - off) * mean ** 2;
    });
    expectEqual(busRippleCurrent.compute({ power: POWER, rms: RMS, bus: BUS }), Math.sqrt(squared));
    const averaged = rmsOver(0, Math.PI, (angle) => lineAt(angle) * (1 - dutyAt(angle)) - mean);
    expectEqual(busRippleCurrentAtLine.compute({ power: POWER, bus: BUS }), averaged);
  });

  it('ripple of the bus, from the energy that flows in and out', () => {
    const [frequency, capacitance] = [47, 200e-6];
    const steps = 20_000;
    const step = 1 / (2 * frequency) / steps;
    let volts = BUS;
    let [low, high] = [volts, volts];
    for (let index = 0; index < steps; index += 1) {
      const surplus = POWER * (1 - 2 * Math.cos(2 * Math.PI * frequency * (index + 0.5) * step) ** 2);
      volts = Math.sqrt(volts ** 2 + (2 * surplus * step) / capacitance);
      [low, high] = [Math.min(low, volts), Math.max(high, volts)];
    }
    // The closed form takes the ripple as small against the bus; 13 V of 390 V shifts it by a few parts in ten thousand.
    expectEqual(busRipple.compute({ power: POWER, frequency, capacitance, bus: BUS }), high - low, 2e-3);
  });
});

describe('a totem-pole PFC, integrated over the whole cycle', () => {
  it('has the line current over the root of two in each device of either leg', () => {
    const fast = Math.sqrt(
      0.5 * meanOver(0, Math.PI, (angle) => lineAt(angle) ** 2 * dutyAt(angle)) +
        0.5 * meanOver(0, Math.PI, (angle) => lineAt(angle) ** 2 * (1 - dutyAt(angle))),
    );
    const slow = Math.sqrt(0.5 * meanOver(0, Math.PI, (angle) => lineAt(angle) ** 2));
    const closed = totemPoleLegRms.compute({ power: POWER, rms: RMS });
    expectEqual(closed, fast);
    expectEqual(closed, slow);
  });
});

describe('a boost PFC in critical conduction, integrated over the half cycle', () => {
  const peak = pfcCrmPeakCurrent.compute({ power: POWER, rms: RMS });
  const peakAt = (angle: number): number => peak * Math.sin(angle);

  it('draws its power: the mean of each triangle is the line current', () => {
    expectEqual(
      POWER,
      meanOver(0, Math.PI, (angle) => Math.SQRT2 * RMS * Math.sin(angle) * (peakAt(angle) / 2)),
    );
  });

  it('inductor, switch and diode', () => {
    // A triangle from zero has a mean square of a third of its peak squared, for its share of the period.
    const meanSquare = (share: (angle: number) => number): number =>
      Math.sqrt(meanOver(0, Math.PI, (angle) => (share(angle) * peakAt(angle) ** 2) / 3));
    expectEqual(
      pfcCrmInductorRms.compute({ peak }),
      meanSquare(() => 1),
    );
    expectEqual(pfcCrmSwitchRms.compute({ peak, rms: RMS, bus: BUS }), meanSquare(dutyAt));
    expectEqual(
      pfcCrmDiodeRms.compute({ peak, rms: RMS, bus: BUS }),
      meanSquare((angle) => 1 - dutyAt(angle)),
    );
  });
});

describe('windings of a flyback, integrated over one period', () => {
  it('trapezoid', () => {
    const ramp = (at: number): number => (at < 0.4 ? 2 + (at / 0.4 - 0.5) * 0.8 : 0);
    expectEqual(trapezoidRms.compute({ duty: 0.4, middle: 2, rise: 0.8 }), rmsOver(0, 1, ramp), 1e-4);
  });

  it('triangle: rms, mean, and what is left for the output capacitor', () => {
    const ramp = (at: number): number => (at < 0.3 ? 9 * (1 - at / 0.3) : 0);
    const mean = triangleMean.compute({ peak: 9, duty: 0.3 });
    const rms = triangleRms.compute({ peak: 9, duty: 0.3 });
    expectEqual(mean, meanOver(0, 1, ramp), 1e-4);
    expectEqual(rms, rmsOver(0, 1, ramp), 1e-4);
    expectEqual(flybackDcmSecondaryRms.compute({ current: mean, peak: 9 }), rms);
    expectEqual(
      alternatingPart.compute({ total: rms, part: mean }),
      rmsOver(0, 1, (at) => ramp(at) - mean),
      1e-4,
    );
  });

  it('ripple of the output capacitor in discontinuous conduction, from its charge', () => {
    const [peak, share, frequency, capacitance] = [9, 0.3, 100e3, 470e-6];
    const current = (peak * share) / 2;
    const steps = 20_000;
    let [volts, low, high] = [0, 0, 0];
    for (let index = 0; index < steps; index += 1) {
      const at = (index + 0.5) / steps;
      const into = (at < share ? peak * (1 - at / share) : 0) - current;
      volts += into / (frequency * capacitance * steps);
      [low, high] = [Math.min(low, volts), Math.max(high, volts)];
    }
    expectEqual(flybackDcmOutputRipple.compute({ current, frequency, capacitance, peak }), high - low, 1e-4);
  });

  it('at the boundary the power comes out of the triangle', () => {
    const [power, input, reflected] = [65, 110, 100];
    const peak = flybackBoundaryPeak.compute({ power, input, reflected });
    const duty = reflected / (input + reflected);
    expectEqual(power, input * meanOver(0, 1, (at) => (at < duty ? (peak * at) / duty : 0)), 1e-4);
    // There the formula for continuous conduction gives the same peak.
    const inductance = (input * duty) / (peak * 100e3);
    expectEqual(flybackPeakCurrent.compute({ power, input, duty, inductance, frequency: 100e3 }), peak);
  });
});

describe('an LLC at resonance, integrated over one period', () => {
  const current = 8;
  const peak = (Math.PI / 2) * current;

  it('rectifiers and their capacitor', () => {
    expectEqual(
      current,
      meanOver(0, 2 * Math.PI, (angle) => Math.abs(peak * Math.sin(angle))),
    );
    const one = (angle: number): number => Math.max(0, peak * Math.sin(angle));
    expectEqual(llcRectifierMean.compute({ current }), meanOver(0, 2 * Math.PI, one));
    expectEqual(llcCentreTapRms.compute({ current }), rmsOver(0, 2 * Math.PI, one));
    expectEqual(
      llcSecondaryCurrent.compute({ current }),
      rmsOver(0, 2 * Math.PI, (angle) => peak * Math.sin(angle)),
    );
    expectEqual(
      llcOutputRippleCurrent.compute({ current }),
      rmsOver(0, 2 * Math.PI, (angle) => Math.abs(peak * Math.sin(angle)) - current),
    );
  });

  it('each switch of the half bridge has half of the mean square', () => {
    const tank = 1.32;
    const half = rmsOver(0, 2 * Math.PI, (angle) => (angle < Math.PI ? Math.SQRT2 * tank * Math.sin(angle) : 0));
    expectEqual(halfBridgeSwitchRms.compute({ current: tank }), half, 1e-4);
  });

  it('magnetising current: the triangle exactly, its fundamental 0.7 % below', () => {
    const given = { turnsRatio: 9, output: 24.9, frequency: 99e3, inductance: 568e-6 };
    const rise = (given.turnsRatio * given.output) / (2 * given.frequency * given.inductance);
    const triangle = (at: number): number => (at < 0.5 ? rise * (2 * at - 0.5) : rise * (1.5 - 2 * at));
    expectEqual(llcMagnetisingCurrentTriangle.compute(given), rmsOver(0, 1, triangle));
    const sine = 2 * meanOver(0, 1, (at) => triangle(at) * Math.cos(2 * Math.PI * at));
    expectEqual(llcMagnetisingCurrent.compute(given), Math.abs(sine) / Math.SQRT2);
  });
});

describe('a buck, integrated over one period', () => {
  const [duty, current, ripple] = [1.8 / 14, 10, 2.6];
  const inductor = (at: number): number =>
    at < duty ? current + ripple * (at / duty - 0.5) : current + ripple * (0.5 - (at - duty) / (1 - duty));

  it('inductor and both switches', () => {
    const rms = rippleCarryingRms.compute({ current, ripple });
    expectEqual(rms, rmsOver(0, 1, inductor));
    expectEqual(
      buckHighSideRms.compute({ current: rms, duty }),
      rmsOver(0, 1, (at) => (at < duty ? inductor(at) : 0)),
      1e-3,
    );
    expectEqual(
      buckLowSideRms.compute({ current: rms, duty }),
      rmsOver(0, 1, (at) => (at < duty ? 0 : inductor(at))),
      1e-3,
    );
  });

  it('input capacitor: 3.36 A where a data sheet prints 2.37 A', () => {
    const input = duty * current;
    expectEqual(
      buckInputCapacitorRms.compute({ duty, current, ripple }),
      rmsOver(0, 1, (at) => (at < duty ? inductor(at) : 0) - input),
      1e-3,
    );
  });

  it('output capacitor: an eighth of the ripple over frequency and capacitance', () => {
    const [frequency, capacitance, steps] = [600e3, 178e-6, 20_000];
    let [volts, low, high] = [0, 0, 0];
    for (let index = 0; index < steps; index += 1) {
      volts += (inductor((index + 0.5) / steps) - current) / (frequency * capacitance * steps);
      [low, high] = [Math.min(low, volts), Math.max(high, volts)];
    }
    expectEqual(buckOutputRipple.compute({ ripple, resistance: 0, frequency, capacitance }), high - low, 1e-4);
  });
});
