import type { Entry } from '../entry/entry.ts';
import { escapeText } from '../figures/markup.ts';
import { miniFront } from '../figures/mini-front.ts';
import { fold } from './fold.ts';
import { devicesToAddress } from '../sharing/device-address.ts';
import type { Device } from '../sharing/device-need.ts';
import { otherWays, planLines, planningNotes, planSentence } from '../sharing/plan-words.ts';
import { planDevices } from '../sharing/planner.ts';
import { portLayout, type PortLayout } from '../sharing/port-layout.ts';
import type { ShareMatrix } from '../sharing/share-matrix.ts';
import { USUAL_SETS } from '../sharing/usual-sets.ts';
import { sentence } from './words.ts';

/** Usual devices and where each goes, folded, with the way to the planner for others; empty where too little is known to plan with. */
export function usualDevices(entry: Entry, matrix: ShareMatrix): string {
  const layout = portLayout(entry, matrix);
  if (layout === null) return '';
  const sets = USUAL_SETS.filter((devices) => devices.length <= layout.ports.length);
  const list = `<ul class="usual">${sets.map((devices) => usualSet(layout, devices, entry.slug)).join('')}</ul>`;
  const other = `<p class="note under">Other devices, other needs: <a href="${escapeText(plannerAddress(entry.slug))}">open the planner</a>.</p>`;
  return (
    fold(
      `${String(sets.length)} usual sets of devices, planned`,
      `${list}<p class="note">Powers and voltages of the devices are common practice.</p>`,
      'usual-sets',
    ) + other
  );
}

/** Address of the planner with a sheet chosen, and devices where they are given. */
function plannerAddress(slug: string, devices: readonly Device[] = []): string {
  return `/planner/?sheet=${slug}${devices.length === 0 ? '' : `&devices=${devicesToAddress(devices)}`}`;
}

function usualSet(layout: PortLayout, devices: readonly Device[], slug: string): string {
  const planning = planDevices(layout, devices);
  const [plan] = planning.best;
  const names = devices.map(({ name }) => sentence(name)).join(' · ');
  const link = `<a href="${escapeText(plannerAddress(slug, devices))}">${names}</a>`;
  const notes = planningNotes(planning, devices)
    .map((note) => `<p class="remark">${sentence(note)}</p>`)
    .join('');
  if (plan === undefined) return `<li><h3>${link}</h3><div class="usual-plan">${notes}</div></li>`;
  const lines = planLines(plan, devices).map(
    ({ device, port, power, isMet, need, remark }) =>
      `<li><b class="mono">${escapeText(port)}</b><span>${sentence(device)}</span><span class="q">${escapeText(power)}</span><span class="remark">${isMet ? '' : `<b>not met</b>, of ${sentence(need)}. `}${sentence(remark)}</span></li>`,
  );
  const others = otherWays(planning.best);
  const equal =
    others.length === 0
      ? ''
      : `<p class="remark">Equal: ${escapeText(others.slice(0, 3).join('; '))}${others.length > 3 ? ` and ${others.length - 3} more` : ''}.</p>`;
  return (
    `<li><h3>${link}</h3><span class="front">${miniFront(layout.ports, plan.row.ports)}</span>` +
    `<div class="usual-plan"><ul class="plan-lines">${lines.join('')}</ul><p class="note">${sentence(planSentence(plan))}</p>${equal}${notes}</div></li>`
  );
}
