/** What a cable may carry. A cable without an electronic mark carries 3 A; more, and more than 20 V, needs a mark that says so. */
export interface CableLimit {
  /** As a reader would ask for it in a shop. */
  readonly name: string;
  readonly amps: number;
  readonly volts: number;
}

/**
 * The three classes of USB-C cable. Sources: 3 A and 60 W for every cable, 5 A with an electronic mark (chromium.org cable tips; USB PD
 * R3.2 V1.1, 10.2.2: a 5 A cable above 3 A); 50 V and 5 A for EPR (USB Type-C 2.1, 3.11, as quoted by cnx-software.com, 2021-05-27).
 */
export const CABLES = {
  unmarked: { name: 'any USB-C cable', amps: 3, volts: 20 },
  marked: { name: 'a cable marked 5 A', amps: 5, volts: 20 },
  epr: { name: 'a cable marked 240 W', amps: 5, volts: 48 },
} as const satisfies Readonly<Record<string, CableLimit>>;

/** The least cable for a voltage and a current. */
export function cableFor(volts: number, amps: number): CableLimit {
  if (volts > CABLES.marked.volts) return CABLES.epr;
  return amps > CABLES.unmarked.amps ? CABLES.marked : CABLES.unmarked;
}
