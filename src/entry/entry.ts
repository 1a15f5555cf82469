import type { Quantity, Rating, Size, SupplyInput } from '../units/quantity.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Evidence } from '../values/value.ts';
import type { Offer } from '../usb-pd/offer.ts';
import type { DataPath } from '../diagnostics/finding.ts';
import type { RoleId } from '../roles/role.ts';
import type { StageKind } from '../stages/stage-kind.ts';

/** A quantity in an entry: what was written, with its evidence and its place. */
export interface Fact<D extends Dimension = Dimension> {
  readonly quantity: Quantity<D>;
  readonly evidence: Exclude<Evidence, 'computed'>;
  readonly path: DataPath;
}

export type DeviceKind = 'wall charger' | 'desktop charger' | 'car charger' | 'power bank' | 'open frame supply' | 'wireless charger';

export interface Device {
  readonly maker: string;
  /** The name it is sold under, without the maker. */
  readonly name: string;
  readonly model: string | null;
  readonly kind: DeviceKind;
  /** Year, or year and month, as written: "2026" or "2026-01". */
  readonly released: string | null;
  /** Price as written: "62 USD". */
  readonly price: { readonly amount: number; readonly currency: string } | null;
}

export interface Sample {
  readonly obtained: string | null;
  readonly lot: string | null;
  readonly serial: string | null;
  readonly firmware: string | null;
  readonly note: string | null;
}

/** What is printed on the device, as printed. */
export interface Nameplate {
  readonly input: SupplyInput | null;
  /** Printed output lines, as written. */
  readonly output: readonly string[];
  /** Total output power, where the nameplate prints one. */
  readonly total: Fact<'power'> | null;
  /** Printed capacity of a power bank. */
  readonly capacity: {
    readonly charge: Fact<'charge'> | null;
    readonly voltage: Fact<'voltage'> | null;
    readonly energy: Fact<'energy'> | null;
  } | null;
  /** Protection class, symbols, approval words, as written. */
  readonly marks: readonly string[];
}

/** What a size or a volume includes. */
export type SizeBasis = 'cased' | 'board';
export type ProngState = 'folded' | 'removed' | 'included' | 'none';

export interface Body {
  readonly size: { readonly size: Size; readonly evidence: Exclude<Evidence, 'computed'>; readonly path: DataPath } | null;
  /** Measured by displacement, where given; it wins over edges multiplied. */
  readonly volume: Fact<'volume'> | null;
  readonly mass: Fact<'mass'> | null;
  readonly basis: SizeBasis;
  readonly prongs: ProngState | null;
  readonly cable: 'fixed' | 'none' | null;
  readonly inlet: string | null;
  readonly material: string | null;
  readonly note: string | null;
}

export type Connector = 'USB-C' | 'USB-A' | 'barrel' | 'captive cable' | 'wireless';

export interface Port {
  /** C1, C2, A1 … */
  readonly id: string;
  readonly connector: Connector;
  readonly direction: 'output' | 'input' | 'both';
  /** The port's own limit, as printed or measured. */
  readonly power: Fact<'power'> | null;
  readonly offers: readonly Offer[];
  /** Revision of USB PD that the source claims: "3.1". */
  readonly revision: string | null;
  /** Cable used when the offers were read. */
  readonly readThrough: 'unmarked cable' | 'marked cable' | 'EPR cable' | 'captive cable' | null;
  /** Makers' own protocols, free text, shown with no watts. */
  readonly protocols: readonly string[];
  readonly note: string | null;
  readonly path: DataPath;
}

/** Power of one port, or of several ports that draw on one pool, in one set. */
export interface Share {
  readonly ports: readonly string[];
  readonly power: Quantity<'power'>;
}

/** The shares of one set of ports in use. `order` is the order of plugging, only where the author says it matters. */
export interface Allocation {
  readonly ports: readonly string[];
  readonly shares: readonly Share[];
  readonly evidence: Exclude<Evidence, 'computed'>;
  readonly order: readonly string[] | null;
  readonly path: DataPath;
}

export type OnNewPlug = 'keeps' | 'dips' | 'drops' | 'not tested';

export interface Sharing {
  readonly total: Fact<'power'> | null;
  /** Whether every port keeps its maximum at once, or they share. */
  readonly policy: 'assured' | 'shared' | null;
  /** Groups of ports that behave alike. */
  readonly alike: readonly (readonly string[])[];
  readonly allocations: readonly Allocation[];
  /** "Steps known, combinations unknown": power levels that a port was seen to take. */
  readonly steps: Readonly<Record<string, readonly Quantity<'power'>[]>>;
  readonly onNewPlug: OnNewPlug | null;
  readonly note: string | null;
  readonly path: DataPath;
}

export interface Stage {
  /** The author's name for it: "main", "out C1". */
  readonly id: string;
  readonly kind: StageKind;
  /** Mode words: "critical conduction", "quasi-resonant". */
  readonly mode: string | null;
  readonly parameters: Readonly<Record<string, Fact>>;
  /** Turns of the windings, primary first, where given. */
  readonly turns: readonly number[];
  /** Ports or stages it feeds; empty means the next stage. */
  readonly feeds: readonly string[];
  readonly note: string | null;
  readonly path: DataPath;
}

export type Fitting = 'fitted' | 'not fitted' | 'absent' | 'unknown';

/** One identified part, or several equal ones named in one key. */
export interface Part {
  /** All references of the key: ["Q2", "Q3"]. */
  readonly references: readonly string[];
  readonly role: RoleId;
  /** Stage under which it stands. */
  readonly stage: string;
  readonly alsoIn: readonly string[];
  readonly maker: string | null;
  readonly number: string | null;
  readonly marking: string | null;
  readonly package: string | null;
  readonly technology: string | null;
  readonly rating: Rating | null;
  readonly evidence: Exclude<Evidence, 'computed'>;
  /** Pieces per reference: the count of the rating, or the count field. */
  readonly count: number;
  readonly arrangement: 'single' | 'parallel' | 'series';
  readonly fitting: Fitting;
  readonly note: string | null;
  readonly path: DataPath;
}

export interface InsulationPlace {
  readonly id: string;
  readonly between: string | null;
  readonly kind: 'functional' | 'basic' | 'supplementary' | 'reinforced' | null;
  readonly clearance: Fact<'length'> | null;
  readonly creepage: Fact<'length'> | null;
  readonly slot: Fact<'length'> | null;
  readonly sheet: boolean | null;
  readonly materialGroup: 'I' | 'II' | 'IIIa' | 'IIIb' | null;
  readonly pollutionDegree: 1 | 2 | 3 | null;
  readonly altitude: Fact<'length'> | null;
  readonly note: string | null;
  readonly path: DataPath;
}

/** One measured point of efficiency, as people have it. */
export interface EfficiencyPoint {
  readonly port: string | null;
  readonly line: Fact<'voltage'> | null;
  readonly output: Fact<'voltage'> | null;
  readonly current: Fact<'current'> | null;
  readonly load: Fact<'ratio'> | Fact<'power'> | Fact<'resistance'> | null;
  readonly input: Fact<'power'> | null;
  readonly efficiency: Fact<'ratio'> | null;
  readonly place: 'board' | 'connector' | 'cable end' | null;
  readonly method: string | null;
  readonly path: DataPath;
}

/** A measured figure with its conditions, for standby, ripple and temperature rows. */
export interface MeasuredPoint {
  readonly subject: 'standby' | 'ripple' | 'thermal' | 'touch current' | 'inrush';
  readonly value: Fact;
  readonly place: string | null;
  readonly conditions: Readonly<Record<string, string>>;
  readonly instrument: string | null;
  readonly path: DataPath;
}

export interface LogFile {
  readonly id: string;
  readonly file: string;
  readonly columns: Readonly<Record<string, string>>;
  readonly decimal: 'point' | 'comma';
  readonly note: string | null;
  readonly path: DataPath;
}

export interface PhotoCallout {
  readonly part: string;
  /** Fractions of width and height, 0 to 1. */
  readonly x: number;
  readonly y: number;
}

export interface Photo {
  readonly file: string;
  readonly alt: string;
  readonly title: string | null;
  readonly credit: string | null;
  readonly callouts: readonly PhotoCallout[];
  readonly scale: {
    readonly from: readonly [number, number];
    readonly to: readonly [number, number];
    readonly length: Fact<'length'>;
  } | null;
  readonly note: string | null;
  readonly path: DataPath;
}

export interface Answer {
  readonly to: string;
  readonly at: string | null;
  readonly because: string;
  readonly path: DataPath;
}

export interface Correction {
  readonly date: string;
  readonly where: string;
  readonly was: string | null;
  readonly is: string | null;
  readonly why: string;
}

export interface Recall {
  readonly authority: string;
  readonly date: string;
  readonly url: string;
  readonly hazard: string;
}

export interface CitedSource {
  readonly title: string;
  readonly url: string | null;
  readonly note: string | null;
}

/** One teardown, read and parsed: everything the author said, nothing computed. Plain data, JSON-safe. */
export interface Entry {
  /** Folder name, which is its address: /teardowns/<slug>/. */
  readonly slug: string;
  /** Path from the content folder, with forward slashes: "teardowns/lm-q100/index.md". */
  readonly file: string;
  readonly number: string | null;
  readonly title: string;
  /** One or two sentences for lists and "In short". */
  readonly summary: string | null;
  readonly status: 'draft' | 'published';
  /** ISO date. */
  readonly published: string | null;
  readonly author: string | null;
  readonly device: Device;
  readonly sample: Sample;
  readonly nameplate: Nameplate;
  readonly body: Body;
  readonly ports: readonly Port[];
  readonly sharing: Sharing | null;
  readonly stages: readonly Stage[];
  readonly parts: readonly Part[];
  readonly insulation: readonly InsulationPlace[];
  readonly efficiency: readonly EfficiencyPoint[];
  readonly measurements: readonly MeasuredPoint[];
  readonly logs: readonly LogFile[];
  readonly photos: readonly Photo[];
  readonly answers: readonly Answer[];
  readonly corrections: readonly Correction[];
  readonly formerAddresses: readonly string[];
  readonly recall: Recall | null;
  readonly sources: readonly CitedSource[];
}
