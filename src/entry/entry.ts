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
  readonly evidence: EntryEvidence;
  readonly path: DataPath;
}

/** Evidence that an entry can give; a computed value never stands in one. */
export type EntryEvidence = Exclude<Evidence, 'computed'>;

/** Highest output power from an input voltage upwards. */
export interface PowerAtInput {
  readonly from: Quantity<'voltage'>;
  readonly power: Quantity<'power'>;
}

/** Capacity as a power bank prints it: charge at a voltage, energy, or both. */
export interface PrintedCapacity {
  readonly charge: Fact<'charge'> | null;
  readonly voltage: Fact<'voltage'> | null;
  readonly energy: Fact<'energy'> | null;
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
  /** The first input line; null where none is given or none can be read. */
  readonly input: SupplyInput | null;
  /** Every input line that can be read. */
  readonly inputs: readonly SupplyInput[];
  /** Printed output lines, as written. */
  readonly output: readonly string[];
  /** Total output power, where the nameplate prints one. */
  readonly total: Fact<'power'> | null;
  /** Peak output power, where it is printed beside the continuous one. */
  readonly peak: Fact<'power'> | null;
  /** Total output power where it depends on the input voltage. */
  readonly totalAtInput: readonly PowerAtInput[];
  /** Printed capacity of a power bank's cells. */
  readonly capacity: PrintedCapacity | null;
  /** Rated capacity at a power bank's output. */
  readonly outputCapacity: PrintedCapacity | null;
  /** Protection class, symbols, approval words, as written. */
  readonly marks: readonly string[];
  /** How its lines are known: printed, unless the author says otherwise. */
  readonly evidence: EntryEvidence;
  readonly note: string | null;
}

/** What a size or a volume includes. */
export type SizeBasis = 'cased' | 'board';
export type ProngState = 'folded' | 'removed' | 'included' | 'none';

export interface Body {
  readonly size: { readonly size: Size; readonly evidence: EntryEvidence; readonly path: DataPath } | null;
  /** Measured by displacement, where given; it wins over edges multiplied. */
  readonly volume: Fact<'volume'> | null;
  readonly mass: Fact<'mass'> | null;
  readonly basis: SizeBasis;
  readonly prongs: ProngState | null;
  readonly cable: 'fixed' | 'none' | null;
  readonly inlet: string | null;
  readonly plug: string | null;
  readonly material: string | null;
  /** Other sizes that a document states for the same thing, as written. */
  readonly alsoStated: readonly string[];
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
  readonly evidence: EntryEvidence;
  readonly order: readonly string[] | null;
  /** What the devices asked for and what the ports advertised, where that differs from what was granted. */
  readonly asked: readonly Share[] | null;
  readonly advertised: readonly Share[] | null;
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

export interface Stage {
  /** The author's name for it: "main", "out C1". */
  readonly id: string;
  readonly kind: StageKind;
  /** Mode words: "critical conduction", "quasi-resonant". */
  readonly mode: string | null;
  readonly parameters: Readonly<Record<string, Fact>>;
  /** Turns of the windings, primary first, where given. */
  readonly turns: readonly number[];
  /** Cells of a battery pack: 4S2P is 4 in series, 2 in parallel. */
  readonly cells: { readonly series: number; readonly parallel: number } | null;
  /** Ports or stages it feeds; empty means the next stage. */
  readonly feeds: readonly string[];
  readonly alsoStated: readonly string[];
  readonly note: string | null;
  readonly path: DataPath;
}

export type Fitting = 'fitted' | 'not fitted' | 'absent' | 'unknown';

/** One identified part, or several equal ones named in one key. */
export interface Part {
  /** All references of the key: ["Q2", "Q3"]. */
  readonly references: readonly string[];
  readonly role: RoleId;
  /** Stage under which it stands, or "case" and "elsewhere" for parts of no stage. */
  readonly stage: string;
  readonly alsoIn: readonly string[];
  readonly maker: string | null;
  readonly number: string | null;
  readonly marking: string | null;
  readonly package: string | null;
  readonly technology: string | null;
  readonly rating: Rating | null;
  readonly evidence: EntryEvidence;
  /** Pieces per reference: the count of the rating, or the count field. */
  readonly count: number;
  readonly arrangement: 'single' | 'parallel' | 'series';
  readonly fitting: Fitting;
  /** What the part itself measured, beside what is marked on it. */
  readonly measured: Rating | null;
  readonly alsoStated: readonly string[];
  readonly datasheet: string | null;
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
  readonly thickness: Fact<'length'> | null;
  readonly sheet: boolean | null;
  readonly workingVoltage: Fact<'voltage'> | null;
  readonly withstand: Fact<'voltage'> | null;
  readonly materialGroup: 'I' | 'II' | 'IIIa' | 'IIIb' | null;
  readonly pollutionDegree: 1 | 2 | 3 | null;
  readonly altitude: Fact<'length'> | null;
  readonly method: string | null;
  readonly alsoStated: readonly string[];
  readonly note: string | null;
  readonly path: DataPath;
}

/** One measured point of efficiency, as people have it. */
export interface EfficiencyPoint {
  /** A single load point, or the stated average or highest figure of a run. */
  readonly statistic: 'point' | 'average' | 'peak';
  /** Stage it belongs to; null for the whole device. */
  readonly of: string | null;
  readonly port: string | null;
  readonly line: Fact<'voltage'> | null;
  /** Voltage that was set. */
  readonly output: Fact<'voltage'> | null;
  /** Voltage that was measured under load. */
  readonly measuredOutput: Fact<'voltage'> | null;
  readonly current: Fact<'current'> | null;
  readonly load: Fact<'ratio'> | Fact<'power'> | Fact<'resistance'> | null;
  readonly input: Fact<'power'> | null;
  readonly efficiency: Fact<'ratio'> | null;
  readonly place: 'board' | 'connector' | 'cable end' | null;
  readonly method: string | null;
  readonly instrument: string | null;
  readonly ambient: Fact<'temperature'> | null;
  readonly after: Fact<'time'> | null;
  readonly note: string | null;
  readonly path: DataPath;
}

export type MeasuredSubject =
  | 'standby'
  | 'ripple'
  | 'thermal'
  | 'touch current'
  | 'inrush'
  | 'hold-up'
  | 'pin voltage'
  | 'stress'
  | 'frequency'
  | 'regulation'
  | 'sustained power'
  | 'delivered energy';

/** A measured figure with its conditions, for standby, ripple and temperature rows. */
export interface MeasuredPoint {
  readonly subject: MeasuredSubject;
  readonly value: Fact;
  readonly place: string | null;
  /** Conditions as written, by the word of the format: line, port, output, load, ambient, after, emissivity, bandwidth, at. */
  readonly conditions: Readonly<Record<string, string>>;
  readonly method: string | null;
  readonly note: string | null;
  readonly instrument: string | null;
  readonly path: DataPath;
}

export interface LogFile {
  readonly id: string;
  readonly file: string;
  readonly columns: Readonly<Record<string, string>>;
  readonly decimal: 'point' | 'comma';
  readonly port: string | null;
  readonly line: string | null;
  readonly ambient: string | null;
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

/** A result that the maker or a document states; `quantity` is null where it is words only. */
export interface Claim {
  readonly of: string;
  readonly written: string;
  readonly quantity: Quantity | null;
  readonly basis: SizeBasis | null;
  readonly line: string | null;
  readonly output: string | null;
  readonly load: string | null;
  readonly port: string | null;
  readonly where: string | null;
  readonly note: string | null;
  readonly path: DataPath;
}

/** How the stored charge was taken out before hands went in. */
export interface Discharged {
  readonly method: string;
  readonly voltage: Fact<'voltage'> | null;
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
  /** Instruments by their short name. */
  readonly instruments: Readonly<Record<string, string>>;
  readonly claims: readonly Claim[];
  readonly logs: readonly LogFile[];
  readonly photos: readonly Photo[];
  readonly answers: readonly Answer[];
  readonly corrections: readonly Correction[];
  readonly formerAddresses: readonly string[];
  readonly recall: Recall | null;
  readonly sources: readonly CitedSource[];
  /** Derating policy that the author chose; null for that of the site. */
  readonly derating: string | null;
  readonly discharged: Discharged | null;
  /** null: not said; `by` is set only where it was powered with its case open. */
  readonly poweredOpen: { readonly done: boolean; readonly by: string | null } | null;
  readonly cellsOpened: { readonly done: boolean; readonly chargeState: string | null } | null;
}
