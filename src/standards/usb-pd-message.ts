import { usbPd } from './usb-pd.ts';

/** Objects in a message: seven without EPR, eleven with; those of EPR from the eighth place on. */
export const OBJECT_COUNTS = { spr: 7, epr: 4, all: 11, source: usbPd('6.4.1.4; 6.5.15.1') } as const;

/** Order of kinds in the SPR part: fixed, battery, variable, SPR AVS, PPS; then fixed and AVS of EPR. */
export const OBJECT_ORDER = { source: usbPd('6.4.1.4; 6.5.15.1') } as const;

/** No two objects of a kind at one voltage. */
export const NO_TWINS = { source: usbPd('6.4.1.5') } as const;

/** Bits 29 to 23 belong to the first object. */
export const FIRST_OBJECT_FLAGS = { source: usbPd('6.4.1.2.1') } as const;

/** The EPR capable bit is set when the source is made for more than 100 W. */
export const EPR_CAPABLE_BIT = { above: 100, source: usbPd('6.4.1.2.1.7') } as const;

/** A rated power is declared in whole watts from 10 W on, in half watts below. */
export const RATED_POWER_STEPS = { wholeFrom: 10, below: 0.5, source: usbPd('10.1') } as const;

/** Lowest voltage of a variable supply as a fraction of its highest. */
export const VARIABLE_RANGE = { least: 0.8, source: usbPd('6.4.1.2.2') } as const;
