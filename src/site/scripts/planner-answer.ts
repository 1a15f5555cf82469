import type { Device } from '../../sharing/device-need.ts';
import { otherWays, planLines, planningNotes, planSentence } from '../../sharing/plan-words.ts';
import type { Plan, Planning } from '../../sharing/planner.ts';

/** Shows the best plan as a table with its words; returns what was said, for those who listen. */
export function showPlanning(
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

/** An element with words in it. */
export function text(name: string, words: string): HTMLElement {
  const element = document.createElement(name);
  element.textContent = words;
  return element;
}

function scoped(cell: HTMLElement, scope: 'col' | 'row'): HTMLElement {
  cell.setAttribute('scope', scope);
  return cell;
}
