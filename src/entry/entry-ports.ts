import type { DataPath } from '../diagnostics/finding.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Offer } from '../usb-pd/offer.ts';
import type { EntryEvidence, Fact, MadeBy, PowerAtInput } from './entry-facts.ts';

export type Connector = 'USB-C' | 'USB-A' | 'barrel' | 'captive cable' | 'wireless';

export interface Port {
  /** C1, C2, A1 … */
  readonly id: string;
  readonly connector: Connector;
  readonly direction: 'output' | 'input' | 'both';
  /** The port's own limit, as printed or measured. */
  readonly power: Fact<'power'> | null;
  readonly peak: Fact<'power'> | null;
  /** Its limit where that depends on the input voltage. */
  readonly powerAtInput: readonly PowerAtInput[];
  readonly offers: readonly Offer[];
  /** What an input or two-way port takes. */
  readonly accepts: readonly Offer[];
  /** Revision of USB PD that the source claims: "3.1". */
  readonly revision: string | null;
  /** Cable used when the offers were read. */
  readonly readThrough: 'unmarked cable' | 'marked cable' | 'EPR cable' | 'captive cable' | null;
  /** Makers' own protocols, free text, shown with no watts. */
  readonly protocols: readonly string[];
  /** How its offers are known. */
  readonly evidence: EntryEvidence;
  /** What read its offers, where they were measured. */
  readonly madeBy?: MadeBy;
  readonly note: string | null;
  readonly path: DataPath;
}

/** Power of one port, or of several ports that draw on one pool, in one set. */
export interface Share {
  readonly ports: readonly string[];
  readonly power: Quantity<'power'>;
  /** How this power is known, where the author says so beside it: "65 W measured + 30 W printed". The row's evidence where left out. */
  readonly evidence?: EntryEvidence;
}

/** The shares of one set of ports in use. `order` is the order of plugging, only where the author says it matters. */
export interface Allocation {
  readonly ports: readonly string[];
  readonly shares: readonly Share[];
  readonly evidence: EntryEvidence;
  readonly order: readonly string[] | null;
  /** What the devices asked for and what the ports advertised, where that differs from what was granted. */
  readonly asked: readonly Share[] | null;
  readonly advertised: readonly Share[] | null;
  /** What measured its shares. */
  readonly madeBy?: MadeBy;
  readonly note: string | null;
  readonly path: DataPath;
}

export type OnNewPlug = 'keeps' | 'dips' | 'drops' | 'not tested';

export interface Sharing {
  readonly total: Fact<'power'> | null;
  /** Whether every port keeps its maximum at once, or they share. */
  readonly policy: 'assured' | 'shared' | null;
  /** Groups of ports that behave alike. */
  readonly alike: readonly (readonly string[])[];
  /** Power that a port keeps whatever the others do. */
  readonly minimum: Readonly<Record<string, Quantity<'power'>>>;
  readonly allocations: readonly Allocation[];
  /** "Steps known, combinations unknown": power levels that a port was seen to take. */
  readonly steps: Readonly<Record<string, readonly Quantity<'power'>[]>>;
  readonly onNewPlug: OnNewPlug | null;
  /** The same by port, where the ports differ. */
  readonly onNewPlugAt: Readonly<Record<string, OnNewPlug>>;
  /** Which port wins: "first plugged". */
  readonly priority: string | null;
  readonly note: string | null;
  readonly path: DataPath;
}
