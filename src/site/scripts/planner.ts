import { deviceOf, devicesFromAddress, devicesToAddress } from '../../sharing/device-address.ts';
import { DEVICE_KINDS, MOST_DEVICES, type Device } from '../../sharing/device-need.ts';
import { planDevices } from '../../sharing/planner.ts';
import type { PortLayout } from '../../sharing/port-layout.ts';
import { showPlanning, text } from './planner-answer.ts';
import { fetchDevice, showChoice } from './planner-sheet.ts';
import { fillRow, nameKind, needOfRow, takeKind } from './planner-rows.ts';

/** What the form stands on before anybody names a device. */
const AT_FIRST = '65W20V_27W9VPPS';

/** The name of the devices in the page's address. */
const IN_ADDRESS = 'devices';

/** The name of the sheet in the page's address. */
const SHEET = 'sheet';

/** The parts of the page that the planner works with. */
interface PlannerPage {
  readonly box: HTMLElement;
  /** Answered at every change, so that there is nothing to send. */
  readonly form: HTMLElement;
  readonly list: HTMLElement;
  readonly template: HTMLTemplateElement;
  readonly answer: HTMLElement;
  readonly status: HTMLElement;
  readonly add: HTMLButtonElement;
  readonly sheet: HTMLSelectElement;
}

/** What the form says now is answered and kept in the address. */
interface Planner {
  readonly addRow: (device: Device) => HTMLElement | null;
  readonly renew: (refused?: readonly string[]) => void;
  readonly remember: () => void;
  /** Plans with another sheet from now on; an answer that comes after that of a later choice is dropped. */
  readonly choose: (slug: string) => Promise<void>;
}

/** Finds the planner in the page, fills its form from the address and answers every change. */
export async function startPlanner(): Promise<void> {
  const page = plannerPage();
  if (page === null) return;
  const planner = plannerOn(page);
  const parameters = new URL(location.href).searchParams;
  await planner.choose(parameters.get(SHEET) ?? page.sheet.value);
  const { devices, refused } = devicesFromAddress(parameters.get(IN_ADDRESS) ?? AT_FIRST);
  for (const device of devices) planner.addRow(device);
  page.form.hidden = page.sheet.options.length === 0;
  page.box.querySelector('.no-form')?.remove();
  planner.renew(refused);
  bindForm(page, planner);
  bindRows(page, planner);
}

function plannerPage(): PlannerPage | null {
  const box = document.querySelector<HTMLElement>('#planner');
  const form = box?.querySelector<HTMLElement>('[data-form]');
  const list = box?.querySelector<HTMLElement>('.devices');
  const template = box?.querySelector('template');
  const answer = box?.querySelector<HTMLElement>('[data-answer]');
  const status = box?.querySelector<HTMLElement>('[data-status]');
  const add = box?.querySelector<HTMLButtonElement>('[data-add]');
  const sheet = box?.querySelector<HTMLSelectElement>('[data-sheet]');
  if (!box || !form || !list || !template || !answer || !status || !add || !sheet) return null;
  return { box, form, list, template, answer, status, add, sheet };
}

function plannerOn({ box, list, template, answer, status, add, sheet }: PlannerPage): Planner {
  let layout: PortLayout | null = null;
  let noPlan = '';
  let asked = 0;
  return {
    addRow(device) {
      const row = template.content.firstElementChild?.cloneNode(true);
      if (!(row instanceof HTMLElement)) return null;
      list.append(row);
      fillRow(row, device.need);
      return row;
    },
    renew(refused = []) {
      const rows = [...list.querySelectorAll('li')];
      for (const [index, row] of rows.entries())
        row.querySelector('[data-remove]')?.setAttribute('aria-label', `Remove device ${index + 1}`);
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
    },
    remember() {
      const devices = [...list.querySelectorAll('li')].map(needOfRow).flatMap((need) => (need === null ? [] : [{ need }]));
      const address = new URL(location.href);
      address.searchParams.set(SHEET, sheet.value);
      address.searchParams.set(IN_ADDRESS, devicesToAddress(devices));
      history.replaceState(null, '', address);
    },
    async choose(slug) {
      asked += 1;
      const mine = asked;
      const device = await fetchDevice(box.dataset['sheets'] ?? '', slug);
      if (mine !== asked) return;
      layout = device?.layout ?? null;
      noPlan =
        device === null
          ? slug === ''
            ? 'No teardown is published yet, so there is no charger to plan with.'
            : `No published sheet has the address “${slug}”.`
          : `Too little is known of the port shares of the ${device.name} to plan with.`;
      if (device !== null) showChoice(sheet, device, box.dataset['teardowns'] ?? '');
    },
  };
}

function bindForm({ form, sheet }: PlannerPage, { choose, renew, remember }: Planner): void {
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
}

/** Rows come and go; the focus goes where the next key belongs. */
function bindRows({ add, list }: PlannerPage, { addRow, renew, remember }: Planner): void {
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
