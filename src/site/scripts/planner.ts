import { deviceOf, devicesFromAddress, devicesToAddress, sameNeed } from '../../sharing/device-address.ts';
import { DEVICE_KINDS, MOST_DEVICES, type Device } from '../../sharing/device-need.ts';
import { otherWays, planLines, planningNotes, planSentence } from '../../sharing/plan-words.ts';
import { planDevices, type Plan, type Planning } from '../../sharing/planner.ts';
import type { PortLayout } from '../../sharing/port-layout.ts';
import type { PlannedDevice } from '../../render/planned-device.ts';
import type { PowerNeed } from '../../usb-pd/supplies.ts';

/** What the form stands on before anybody names a device. */
const AT_FIRST = '65W20V_27W9VPPS';

/** The name of the devices in the page's address. */
const IN_ADDRESS = 'devices';

/** The name of the sheet in the page's address. */
const SHEET = 'sheet';

/** Finds the planner in the page, fills its form from the address and answers every change. */
export async function startPlanner(): Promise<void> {
  const box = document.querySelector<HTMLElement>('#planner');
  const form = box?.querySelector('form');
  const list = box?.querySelector<HTMLElement>('.devices');
  const template = box?.querySelector('template');
  const answer = box?.querySelector<HTMLElement>('[data-answer]');
  const status = box?.querySelector<HTMLElement>('[data-status]');
  const add = box?.querySelector<HTMLButtonElement>('[data-add]');
  const sheet = box?.querySelector<HTMLSelectElement>('[data-sheet]');
  if (!box || !form || !list || !template || !answer || !status || !add || !sheet) return;
  let layout: PortLayout | null = null;
  let noPlan = '';

  const addRow = (device: Device): HTMLElement | null => {
    const row = template.content.firstElementChild?.cloneNode(true);
    if (!(row instanceof HTMLElement)) return null;
    list.append(row);
    fillRow(row, device.need);
    return row;
  };
  const renew = (refused: readonly string[] = []): void => {
    const rows = [...list.querySelectorAll('li')];
    for (const [index, row] of rows.entries()) row.querySelector('[data-remove]')?.setAttribute('aria-label', `Remove device ${index + 1}`);
    add.disabled = rows.length >= MOST_DEVICES;
    const read = rows.map(needOfRow);
    const devices = read.filter((need) => need !== null).map(deviceOf);
    const missing = layout === null ? noPlan : devices.length === 0 ? 'Add a device.' : null;
    const said =
      missing ??
      (layout === null ? '' : showPlanning(answer, planDevices(layout, devices), devices, refused, read.length - devices.length));
    answer.hidden = false;
    if (missing !== null) answer.replaceChildren(text('p', missing));
    status.textContent = said;
  };
  const remember = (): void => {
    const devices = [...list.querySelectorAll('li')].map(needOfRow).flatMap((need) => (need === null ? [] : [{ need }]));
    const address = new URL(location.href);
    address.searchParams.set(SHEET, sheet.value);
    address.searchParams.set(IN_ADDRESS, devicesToAddress(devices));
    history.replaceState(null, '', address);
  };

  const choose = async (slug: string): Promise<void> => {
    const device = await fetchDevice(box.dataset['sheets'] ?? '', slug);
    layout = device?.layout ?? null;
    noPlan =
      device === null
        ? `No published sheet has the address “${slug}”.`
        : `Too little is known of the port shares of the ${device.name} to plan with.`;
    if (device !== null) showChoice(sheet, device, box.dataset['teardowns'] ?? '');
  };
  const parameters = new URL(location.href).searchParams;
  await choose(parameters.get(SHEET) ?? sheet.value);
  const asked = parameters.get(IN_ADDRESS);
  const { devices, refused } = devicesFromAddress(asked ?? AT_FIRST);
  for (const device of devices) addRow(device);
  form.hidden = false;
  box.querySelector('.no-form')?.remove();
  renew(refused);

  form.addEventListener('submit', (event) => {
    event.preventDefault();
  });
  sheet.addEventListener('change', () => {
    void choose(sheet.value).then(() => {
      renew();
      remember();
    });
  });
  form.addEventListener('input', (event) => {
    const field = event.target;
    if (field === sheet) return;
    const row = field instanceof Element ? field.closest('li') : null;
    if (row !== null && field instanceof HTMLSelectElement && 'kind' in field.dataset) takeKind(row, field.value);
    else if (row !== null) nameKind(row);
    renew();
    remember();
  });
  add.addEventListener('click', () => {
    const [first] = DEVICE_KINDS.filter((kind) => kind.id === 'phone-27');
    const row = first === undefined ? null : addRow(first);
    renew();
    remember();
    row?.querySelector<HTMLElement>('[data-kind]')?.focus();
  });
  list.addEventListener('click', (event) => {
    const button = event.target instanceof Element ? event.target.closest('[data-remove]') : null;
    const row = button?.closest('li');
    if (!row) return;
    const next = row.nextElementSibling ?? row.previousElementSibling;
    row.remove();
    renew();
    remember();
    (next?.querySelector<HTMLElement>('[data-remove]') ?? add).focus();
  });
}

/** Ports of a sheet; null where no published sheet has this address. */
async function fetchDevice(folder: string, slug: string): Promise<PlannedDevice | null> {
  if (!/^[a-z0-9-]+$/.test(slug)) return null;
  try {
    const response = await fetch(`${folder}${slug}.json`);
    // Written by the build that this script belongs to.
    return response.ok ? ((await response.json()) as PlannedDevice) : null;
  } catch {
    return null;
  }
}

/** Names the chosen sheet in the list, where an older one does not stand yet, and leads to its page. */
function showChoice(list: HTMLSelectElement, { slug, name }: PlannedDevice, teardowns: string): void {
  if (![...list.options].some((option) => option.value === slug)) list.append(new Option(name, slug));
  list.value = slug;
  const place = document.querySelector('[data-sheet-link]');
  if (place === null) return;
  const link = document.createElement('a');
  link.href = `${teardowns}${slug}/`;
  link.textContent = `The sheet of the ${name}`;
  place.replaceChildren(link);
}

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

function fillRow(row: Element, need: PowerNeed): void {
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
function takeKind(row: Element, id: string): void {
  const kind = DEVICE_KINDS.find((candidate) => candidate.id === id);
  if (kind !== undefined) fillRow(row, kind.need);
}

/** A changed need may be another kind's, or nobody's. */
function nameKind(row: Element): void {
  const fields = fieldsOf(row);
  const need = needOfRow(row);
  if (fields !== null) fields.kind.value = DEVICE_KINDS.find((kind) => need !== null && sameNeed(kind.need, need))?.id ?? 'other';
}

/** What a row of the form asks for; null while its watts are no power. */
function needOfRow(row: Element): PowerNeed | null {
  const fields = fieldsOf(row);
  const watts = Number(fields?.watts.value);
  const isPower = fields !== null && watts > 0 && watts <= 240;
  fields?.watts.setAttribute('aria-invalid', String(!isPower));
  if (!isPower) return null;
  return { watts, volts: fields.volts.value === '' ? null : Number(fields.volts.value), ...(fields.pps.checked ? { pps: true } : {}) };
}

function showPlanning(
  box: HTMLElement,
  planning: Planning,
  devices: readonly Device[],
  refused: readonly string[],
  unread: number,
): string {
  const [plan] = planning.best;
  const notes = [
    ...planningNotes(planning, devices),
    ...(refused.length === 0 ? [] : [`In the address but no device: ${refused.join(', ')}.`]),
    ...(unread === 0
      ? []
      : [
          `${unread === 1 ? 'One device has' : `${unread} devices have`} no power between 1 and 240 W and ${unread === 1 ? 'is' : 'are'} left out.`,
        ]),
  ];
  const said = plan === undefined ? 'No plan.' : planSentence(plan);
  box.replaceChildren(
    ...(plan === undefined ? [text('p', said)] : [planTable(plan, devices, 'Plug them so'), text('p', said), ...equalPlans(planning.best)]),
    ...(planning.allPlugged?.[0] === undefined
      ? []
      : [planTable(planning.allPlugged[0], devices, 'With more of them plugged in'), text('p', planSentence(planning.allPlugged[0]))]),
    ...notes.map((note) => text('p', note)),
  );
  return [said, ...notes].join(' ');
}

function equalPlans(plans: readonly Plan[]): HTMLElement[] {
  const ways = otherWays(plans);
  if (ways.length === 0) return [];
  return [
    text(
      'p',
      `Equal, in the order of the devices: ${ways.slice(0, 5).join('; ')}${ways.length > 5 ? ` and ${ways.length - 5} more` : ''}.`,
    ),
  ];
}

function planTable(plan: Plan, devices: readonly Device[], title: string): HTMLElement {
  const table = document.createElement('table');
  table.append(text('caption', title));
  const head = table.createTHead().insertRow();
  for (const word of ['Port', 'Device', 'Gets', 'Of']) head.append(scoped(text('th', word), 'col'));
  const body = table.createTBody();
  for (const line of planLines(plan, devices)) {
    const row = body.insertRow();
    const device = text('td', line.device);
    if (line.remark !== '') device.append(text('span', line.remark));
    const of = text('td', `${line.need}, ${line.isMet ? 'met' : 'not met'}`);
    row.append(scoped(text('th', line.port), 'row'), device, text('td', line.power), of);
  }
  return table;
}

function text(name: string, words: string): HTMLElement {
  const element = document.createElement(name);
  element.textContent = words;
  return element;
}

function scoped(cell: HTMLElement, scope: 'col' | 'row'): HTMLElement {
  cell.setAttribute('scope', scope);
  return cell;
}
