import type { BitField } from './bit-field.ts';

function bits(high: number, low: number, step = 1): BitField {
  return { high, low, step };
}

function flag(place: number): BitField {
  return { high: place, low: place, step: 1 };
}

/**
 * Bits of every object kind of a source. USB Power Delivery Specification R3.2 V1.1, 6.4.1.2 and 6.4.1.3; the layouts of Linux
 * `include/linux/usb/pd.h`, ChromeOS EC `usb_pd.h` and Zephyr agree where they know a kind.
 */
export const LAYOUTS = {
  fixed: {
    voltage_mV: bits(19, 10, 50),
    current_mA: bits(9, 0, 10),
    peak: bits(21, 20),
    reserved22: flag(22),
    eprCapable: flag(23),
    unchunked: flag(24),
    dualRoleData: flag(25),
    usbComm: flag(26),
    unconstrained: flag(27),
    usbSuspend: flag(28),
    dualRolePower: flag(29),
  },
  battery: { max_mV: bits(29, 20, 50), min_mV: bits(19, 10, 50), power_mW: bits(9, 0, 250) },
  variable: { max_mV: bits(29, 20, 50), min_mV: bits(19, 10, 50), current_mA: bits(9, 0, 10) },
  pps: {
    powerLimited: flag(27),
    reserved26_25: bits(26, 25),
    max_mV: bits(24, 17, 100),
    reserved16: flag(16),
    min_mV: bits(15, 8, 100),
    reserved7: flag(7),
    current_mA: bits(6, 0, 50),
  },
  eprAvs: { peak: bits(27, 26), max_mV: bits(25, 17, 100), reserved16: flag(16), min_mV: bits(15, 8, 100), pdp_W: bits(7, 0) },
  sprAvs: { peak: bits(27, 26), reserved25_20: bits(25, 20), current15V_mA: bits(19, 10, 10), current20V_mA: bits(9, 0, 10) },
  reserved: { bits: bits(27, 0) },
} as const satisfies Readonly<Record<string, Readonly<Record<string, BitField>>>>;

export type ObjectKind = keyof typeof LAYOUTS;
