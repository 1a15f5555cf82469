import { sameNeed } from '../../sharing/device-address.ts';
import { DEVICE_KINDS } from '../../sharing/device-need.ts';
import type { PowerNeed } from '../../usb-pd/supplies.ts';

interface RowFields {
  readonly kind: HTMLSelectElement;
  readonly watts: HTMLInputElement;
  readonly volts: HTMLSelectElement;
  readonly pps: HTMLInputElement;
}

function fieldsOf(row: Element): RowFields | null {
  const kind = row.querySelector<HTMLSelectElement>('[data-kind]');
  const watts = row.querySelector<HTMLInputElement>('[data-watts]');
  const volts = row.querySelector<HTMLSelectElement>('[data-volts]');
  const pps = row.querySelector<HTMLInputElement>('[data-pps]');
  return kind && watts && volts && pps ? { kind, watts, volts, pps } : null;
}

/** Puts a need into the fields of a row. */
export function fillRow(row: Element, need: PowerNeed): void {
  const fields = fieldsOf(row);
  if (fields === null) return;
  const volts = need.volts === null ? '' : String(need.volts);
  if (![...fields.volts.options].some((option) => option.value === volts)) fields.volts.append(new Option(`${volts} V`, volts));
  fields.watts.value = String(need.watts);
  fields.volts.value = volts;
  fields.pps.checked = need.pps === true;
  nameKind(row);
}

/** A picked kind brings its watts and its voltage. */
export function takeKind(row: Element, id: string): void {
  const kind = DEVICE_KINDS.find((candidate) => candidate.id === id);
  if (kind !== undefined) fillRow(row, kind.need);
}

/** A changed need may be another kind's, or nobody's. */
export function nameKind(row: Element): void {
  const fields = fieldsOf(row);
  const need = needOfRow(row);
  if (fields !== null) fields.kind.value = DEVICE_KINDS.find((kind) => need !== null && sameNeed(kind.need, need))?.id ?? 'other';
}

/** What a row of the form asks for; null while its watts are no power. */
export function needOfRow(row: Element): PowerNeed | null {
  const fields = fieldsOf(row);
  const watts = Number(fields?.watts.value);
  const isPower = fields !== null && watts > 0 && watts <= 240;
  fields?.watts.setAttribute('aria-invalid', String(!isPower));
  if (!isPower) return null;
  return { watts, volts: fields.volts.value === '' ? null : Number(fields.volts.value), ...(fields.pps.checked ? { pps: true } : {}) };
}
