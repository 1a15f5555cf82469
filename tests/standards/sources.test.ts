import { describe, expect, it } from 'vitest';
import { CAPACITOR_VOLTAGES } from '../../src/standards/capacitor-voltages.ts';
import { CUSTOMARY, ELECTROLYTIC_TOLERANCE } from '../../src/standards/customary-values.ts';
import { DERATING_POLICIES } from '../../src/standards/derating/index.ts';
import { PREFERRED_SERIES } from '../../src/standards/preferred-values.ts';
import { SAFETY_CAPACITOR_CLASSES } from '../../src/standards/safety-capacitors.ts';
import { SAFE_VOLTAGE, STORED_ENERGY_LINES } from '../../src/standards/stored-energy-cautions.ts';
import { TOUCH_CURRENT_LIMITS } from '../../src/standards/touch-current.ts';
import { DISCHARGE_RULES, ES1_CAPACITOR_VOLTAGES } from '../../src/standards/x-capacitor-discharge.ts';
import { BC12, CABLE_CURRENT, CABLE_DROP, EPR_CABLE, SOURCE_VOLTAGE, TYPE_C_CURRENTS } from '../../src/standards/usb-output-limits.ts';
import {
  EPR_AVS,
  LEAST_PPS_AMPS,
  OLDER_PPS_RANGES,
  PPS_CURRENTS,
  PPS_RANGES,
  SPR_AVS,
} from '../../src/standards/usb-pd-adjustable-supplies.ts';
import { FIXED_ROUNDING, FIXED_SUPPLIES, OPTIONAL_VOLTS } from '../../src/standards/usb-pd-fixed-supplies.ts';
import {
  EPR_CAPABLE_BIT,
  FIRST_OBJECT_FLAGS,
  NO_TWINS,
  OBJECT_COUNTS,
  OBJECT_ORDER,
  RATED_POWER_STEPS,
  VARIABLE_RANGE,
} from '../../src/standards/usb-pd-message.ts';
import type { Source } from '../../src/values/value.ts';

const SOURCES: readonly Source[] = [
  CAPACITOR_VOLTAGES,
  ...Object.values(CUSTOMARY),
  ELECTROLYTIC_TOLERANCE,
  ...DERATING_POLICIES.flatMap((policy) => policy.rules),
  ...PREFERRED_SERIES,
  ...SAFETY_CAPACITOR_CLASSES,
  SAFE_VOLTAGE,
  ...STORED_ENERGY_LINES,
  ...TOUCH_CURRENT_LIMITS,
  ...DISCHARGE_RULES,
  ES1_CAPACITOR_VOLTAGES,
  ...[BC12, CABLE_CURRENT, CABLE_DROP, EPR_CABLE, SOURCE_VOLTAGE, TYPE_C_CURRENTS],
  ...[EPR_AVS, LEAST_PPS_AMPS, OLDER_PPS_RANGES, PPS_CURRENTS, PPS_RANGES, SPR_AVS],
  ...[FIXED_ROUNDING, FIXED_SUPPLIES, OPTIONAL_VOLTS],
  ...[EPR_CAPABLE_BIT, FIRST_OBJECT_FLAGS, NO_TWINS, OBJECT_COUNTS, OBJECT_ORDER, RATED_POWER_STEPS, VARIABLE_RANGE],
].map((row) => row.source);

describe('every tabled value', () => {
  it('names its source and where in it', () => {
    for (const source of SOURCES) {
      expect(source.title.trim()).not.toBe('');
      expect(source.section.trim(), source.title).not.toBe('');
    }
  });

  it('that says it is from memory in words says so in its standing too, or was seen elsewhere', () => {
    for (const source of SOURCES) {
      if (/^from memory/u.test(source.section)) expect(source.standing).toBe('memory');
    }
  });

  it('that is assumed gives a reason and stays in order', () => {
    for (const value of Object.values(CUSTOMARY)) {
      expect(value.reason.length).toBeGreaterThan(20);
      expect(value.low).toBeLessThanOrEqual(value.nominal);
      expect(value.nominal).toBeLessThanOrEqual(value.high);
    }
  });

  it('that is assumed is the habit of the trade, but for what is named here', () => {
    const others = Object.entries(CUSTOMARY)
      .filter(([, value]) => value.source.standing !== 'common practice')
      .map(([name, value]) => `${name}: ${value.source.standing}`);
    expect(others).toEqual(['suppressedLoadDump: memory', 'jumpStart: memory', 'coldSuperjunction: read', 'coldLowVoltage: read']);
  });
});
