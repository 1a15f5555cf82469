import type { PowerNeed } from '../usb-pd/supplies.ts';

/** A device that somebody wants to plug in. */
export interface Device {
  /** As the reader knows it: "Laptop, 65 W at 20 V". */
  readonly name: string;
  readonly need: PowerNeed;
}

/** A kind of device to pick. What such devices ask for: common practice, except where the voltage is the standard's own. */
export interface DeviceKind {
  readonly id: string;
  readonly name: string;
  readonly need: PowerNeed;
}

/**
 * Kinds to pick from. Powers and voltages as such devices are sold: common practice. 5, 9, 15 and 20 V are the fixed voltages of
 * USB PD R3.2 V1.1, Table 10.2, and 28 V is the first of extended power.
 */
export const DEVICE_KINDS: readonly DeviceKind[] = [
  { id: 'laptop-140', name: 'Laptop, 140 W', need: { watts: 140, volts: 28 } },
  { id: 'laptop-100', name: 'Laptop, 100 W', need: { watts: 100, volts: 20 } },
  { id: 'laptop-65', name: 'Laptop, 65 W', need: { watts: 65, volts: 20 } },
  { id: 'laptop-45', name: 'Laptop, 45 W', need: { watts: 45, volts: 20 } },
  { id: 'tablet-30', name: 'Tablet, 30 W', need: { watts: 30, volts: 15 } },
  { id: 'phone-27', name: 'Phone, 27 W', need: { watts: 27, volts: 9 } },
  { id: 'phone-pps-27', name: 'Phone, 27 W with PPS', need: { watts: 27, volts: 9, pps: true } },
  { id: 'phone-pps-45', name: 'Phone, 45 W with PPS', need: { watts: 45, volts: 10, pps: true } },
  { id: 'phone-18', name: 'Phone, 18 W', need: { watts: 18, volts: 9 } },
  { id: 'board-15', name: 'Router or board, 15 W', need: { watts: 15, volts: 5 } },
  { id: 'watch-5', name: 'Watch, 5 W', need: { watts: 5, volts: 5 } },
];

/** Most devices that the planner takes at once. */
export const MOST_DEVICES = 6;

/** "65 W at 20 V", "27 W at 9 V with PPS", "18 W". */
export function needInWords({ watts, volts, pps }: PowerNeed): string {
  return `${watts} W${volts === null ? '' : ` at ${volts} V`}${pps === true ? ' with PPS' : ''}`;
}
