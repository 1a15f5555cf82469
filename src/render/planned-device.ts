import type { Entry } from '../entry/entry.ts';
import { portLayout, type PortLayout } from '../sharing/port-layout.ts';
import type { ShareMatrix } from '../sharing/share-matrix.ts';
import { deviceName } from './device-name.ts';

/** One device as the planner fetches it. */
export interface PlannedDevice {
  readonly slug: string;
  readonly name: string;
  /** Null where too little is known of its port shares to plan with. */
  readonly layout: PortLayout | null;
}

/** What the planner needs of one device. */
export function plannedDevice(entry: Entry, shares: ShareMatrix | null): PlannedDevice {
  return { slug: entry.slug, name: deviceName(entry), layout: shares === null ? null : portLayout(entry, shares) };
}
