import { cableFor } from '../usb-pd/cable.ts';
import type { Device } from './device-need.ts';
import type { Plan, PlannedDevice, Planning } from './planner.ts';
import { wattsInWords } from './watts-in-words.ts';
import { sentenceCase } from '../units/sentence-case.ts';

/** One device of a plan as a page says it. */
export interface PlanLine {
  readonly device: string;
  /** "C1", or "left out". */
  readonly port: string;
  /** "45 W", "–" where it gets nothing. */
  readonly power: string;
  readonly isMet: boolean;
  /** What it needs: "65 W". */
  readonly need: string;
  /** What to know about it; empty where there is nothing to say. */
  readonly remark: string;
}

/** A plan as lines, one a device. */
export function planLines(plan: Plan, devices: readonly Device[]): PlanLine[] {
  return plan.devices.map((planned, index) => {
    const device = devices[index];
    const name = device?.name ?? '';
    const need = device === undefined ? '' : wattsInWords(device.need.watts);
    const { port, watts, isMet } = planned;
    if (port === null) return { device: name, port: 'left out', power: '–', isMet: false, need, remark: '' };
    return {
      device: name,
      port,
      power: watts > 0 ? wattsInWords(watts) : '–',
      isMet,
      need,
      remark: device === undefined ? '' : remarkOn(planned, device, plan),
    };
  });
}

function remarkOn({ port, watts, supply }: PlannedDevice, { need }: Device, plan: Plan): string {
  const pool = plan.row.shares.find(({ ports }) => ports.length > 1 && port !== null && ports.includes(port));
  const shared = pool === undefined ? '' : `${pool.ports.join(' and ')} share ${wattsInWords(pool.watts)}; this is the best division.`;
  const voltage = supply === null ? (need.volts === null ? '' : 'Voltages of this port are not listed.') : lackOf(supply);
  const volts = supply?.volts ?? null;
  const cable = volts === null || watts <= 0 ? null : cableFor(volts, watts / volts);
  const through = cable === null || cable.amps <= 3 ? '' : `Through ${cable.name}.`;
  return [voltage, shared, through]
    .filter((words) => words !== '')
    .join(' ')
    .replace(/(\d) (?=[AVW]\b)/gu, '$1\u00a0');
}

/** "No 20 V, falls to 15 V 45 W", where the offers and not the share are what is short. */
function lackOf({ isMet, reason }: { readonly isMet: boolean; readonly reason: string }): string {
  return isMet ? '' : `${sentenceCase(reason)} by its offers.`;
}

/** The plan in one sentence, the number first: "2 of 3 needs met, 83 W in all; the worst-off device gets 60 % of its need." */
export function planSentence({ score, devices, row }: Plan): string {
  const met = `${score.met} of ${devices.length} ${devices.length === 1 ? 'need' : 'needs'} met, ${wattsInWords(score.total)} in all`;
  const left = devices.length - score.powered;
  const worst = score.worst >= 1 - 1e-9 ? '' : `; the worst-off device gets ${Math.round(score.worst * 100)}\u202f% of its need`;
  const out = left === 0 ? '' : `; ${left} ${left === 1 ? 'device gets' : 'devices get'} nothing`;
  const order = row.order === null ? '' : ` Plug in this order: ${row.order.join(', then ')}.`;
  return `${met}${worst}${out}.${order}`;
}

/** Equal plans beside the first, each as "C1, C3" in the order of the devices. */
export function otherWays(plans: readonly Plan[]): string[] {
  return plans.slice(1).map((plan) => {
    const ports = plan.devices.map(({ port }) => port ?? 'left out').join(', ');
    return plan.row.order === null ? ports : `${ports}, plugged ${plan.row.order.join(' then ')}`;
  });
}

/** What to say of devices that no port can serve in full and of sets that nobody has measured. */
export function planningNotes({ hindrances, unknown, best }: Planning, devices: readonly Device[]): string[] {
  const lacking = hindrances.flatMap((hindrance, index) =>
    hindrance === null ? [] : [`${devices[index]?.name ?? ''}: no port meets it in full. At most: ${hindrance}.`],
  );
  const sets = unknown.map((ports) => ports.join(' + '));
  const some = sets.slice(0, 6).join(', ') + (sets.length > 6 ? ` and ${sets.length - 6} more` : '');
  const open = sets.length === 0 ? [] : [`Not known, left out here: ${some}. A better plan may lie there.`];
  return [
    ...(best.length === 0 && devices.length > 0 ? ['No known set of ports gives any of these devices power.'] : []),
    ...lacking,
    ...open,
  ];
}
