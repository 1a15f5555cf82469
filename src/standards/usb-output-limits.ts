import type { Source } from '../values/value.ts';
import { usbPd } from './usb-pd.ts';

/** Current that a port may signal without USB PD, in amperes at 5 V. */
export const TYPE_C_CURRENTS = {
  amps: [0.5, 0.9, 1.5, 3],
  source: { title: 'Texas Instruments SLYY228', section: 'Type-C current levels', standing: 'read' },
} as const satisfies { readonly amps: readonly number[]; readonly source: Source };

/** Most that a BC 1.2 charging port is defined for. */
export const BC12 = {
  amps: 1.5,
  source: { title: 'ST UM2191 Rev 2, table 4', section: 'BC 1.2 up to 1.5 A, 7.5 W', standing: 'read' },
} as const satisfies { readonly amps: number; readonly source: Source };

/** A fixed, PPS or AVS voltage at the source's receptacle stays within ±5 % of what is set. */
export const SOURCE_VOLTAGE = { tolerance: 0.05, source: usbPd('Table 7.23') } as const;

/** Drop that a cable may add: 0.5 V there and 0.25 V back. The split is from memory, the sum was read. */
export const CABLE_DROP = {
  volts: 0.75,
  source: { title: 'USB Type-C, cable voltage drop 750 mV in all', section: 'as derived in a public source file', standing: 'secondary' },
} as const satisfies { readonly volts: number; readonly source: Source };

/** Without an electronic mark a cable carries this much. */
export const CABLE_CURRENT = {
  amps: 3,
  source: { title: 'chromium.org cable tips; USB PD R3.2 V1.1', section: '10.2.2: a 5 A cable above 3 A', standing: 'read' },
} as const satisfies { readonly amps: number; readonly source: Source };

/** More than 20 V needs a cable marked for EPR. */
export const EPR_CABLE = {
  above: 20,
  source: { title: 'USB Type-C 2.1', section: '3.11, as quoted by cnx-software.com, 2021-05-27', standing: 'secondary' },
} as const satisfies { readonly above: number; readonly source: Source };
