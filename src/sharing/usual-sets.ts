import { deviceOf } from './device-address.ts';
import type { Device } from './device-need.ts';

/** Devices that people carry together, for a reader who does not ask for others. Common practice. */
export const USUAL_SETS: readonly (readonly Device[])[] = [
  [{ watts: 100, volts: 20 }],
  [{ watts: 65, volts: 20 }],
  [
    { watts: 65, volts: 20 },
    { watts: 27, volts: 9, pps: true },
  ],
  [
    { watts: 65, volts: 20 },
    { watts: 65, volts: 20 },
  ],
  [
    { watts: 45, volts: 20 },
    { watts: 30, volts: 15 },
    { watts: 18, volts: 9 },
  ],
  [
    { watts: 27, volts: 9 },
    { watts: 18, volts: 9 },
    { watts: 5, volts: 5 },
  ],
  [
    { watts: 65, volts: 20 },
    { watts: 30, volts: 15 },
    { watts: 27, volts: 9 },
    { watts: 5, volts: 5 },
  ],
].map((needs) => needs.map(deviceOf));
