import type { PowerNeed } from '../usb-pd/supplies.ts';
import { DEVICE_KINDS, MOST_DEVICES, needInWords, type Device } from './device-need.ts';

/** Devices read from an address, and the words in it that name none. */
export interface AddressedDevices {
  readonly devices: readonly Device[];
  readonly refused: readonly string[];
}

/** No port of any standard gives more: USB PD R3.2 V1.1 ends at 240 W. */
const MOST_WATTS = 240;
const MOST_VOLTS = 48;

/** Devices as one word for an address: "65W20V_27W9VPPS_5W". Reads back to the same needs. */
export function devicesToAddress(devices: readonly Pick<Device, 'need'>[]): string {
  return devices
    .map(({ need }) => `${need.watts}W${need.volts === null ? '' : `${need.volts}V`}${need.pps === true ? 'PPS' : ''}`)
    .join('_');
}

/** Devices out of an address. What cannot be read is given back as it stood, and so is a device beyond the sixth. */
export function devicesFromAddress(text: string): AddressedDevices {
  const words = text.split('_').filter((word) => word !== '');
  const read = words.map((word) => ({ word, need: needOf(word) }));
  const devices = read.flatMap(({ need }) => (need === null ? [] : [deviceOf(need)]));
  const beyond = devices.slice(MOST_DEVICES).map(({ need }) => devicesToAddress([{ need }]));
  return {
    devices: devices.slice(0, MOST_DEVICES),
    refused: [...read.flatMap(({ word, need }) => (need === null ? [word] : [])), ...beyond],
  };
}

/** The device of a need, under the name of its kind where there is one. */
export function deviceOf(need: PowerNeed): Device {
  const kind = DEVICE_KINDS.find((candidate) => sameNeed(candidate.need, need));
  return { name: kind?.name ?? `Device, ${needInWords(need)}`, need };
}

/** Whether two devices ask for the same. */
export function sameNeed(one: PowerNeed, other: PowerNeed): boolean {
  return one.watts === other.watts && one.volts === other.volts && (one.pps ?? false) === (other.pps ?? false);
}

function needOf(word: string): PowerNeed | null {
  const match = /^(?<watts>\d{1,3}(?:\.\d{1,2})?)W(?:(?<volts>\d{1,2}(?:\.\d{1,2})?)V)?(?<pps>PPS)?$/iu.exec(word);
  const watts = Number(match?.groups?.['watts']);
  const volts = match?.groups?.['volts'] === undefined ? null : Number(match.groups['volts']);
  if (match === null || !(watts > 0 && watts <= MOST_WATTS) || (volts !== null && !(volts >= 3.3 && volts <= MOST_VOLTS))) return null;
  return { watts, volts, ...(match.groups?.['pps'] === undefined ? {} : { pps: true }) };
}
