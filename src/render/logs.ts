import type { PreparedSheet } from '../corpus/prepared.ts';
import { escapeText } from '../figures/markup.ts';
import { logPlot } from '../figures/log-plot.ts';
import type { LogFile } from '../entry/entry.ts';
import type { LogSummary } from '../logs/log-summary.ts';
import { logAnchor } from '../tables/log-address.ts';
import { logSteps } from '../tables/log-steps.ts';
import { logs } from '../tables/logs.ts';
import type { Table } from '../tables/table.ts';
import { isMissing } from '../values/value.ts';
import { fold } from './fold.ts';
import { instrumentWords, methodWords } from './made-by.ts';
import { quantityWords } from './quantity.ts';
import type { SheetZone } from './sheet-zone.ts';
import { tableView } from './table-view.ts';
import { countWord, sentence } from './words.ts';
import { counted } from '../units/counted.ts';
import { sentenceCase } from '../units/sentence-case.ts';

/** Every log as a plot over time with its figures below; null where no log could be read. */
export function logsZone({ entry, derived, placed }: PreparedSheet): SheetZone | null {
  if (derived.logs.length === 0) return null;
  const figures = placed.includes(logs.id) ? null : logs.build({ entry, derived });
  const steps = placed.includes(logSteps.id) ? null : logSteps.build({ entry, derived });
  const matter = derived.logs.map((log, index) => {
    const own = (table: Table | null, title: string): Table | null => onlyOf(table, log, title);
    const file = entry.logs.find(({ id }) => id === log.id);
    const madeBy = file === undefined ? '' : madeByOf(file);
    return logView(log, { id: logAnchor(index), madeBy }, own(figures, 'Figures of the log'), own(steps, 'Steps in the log'));
  });
  return { title: 'Logs', layout: 'full', side: leadOf(derived.logs), matter: matter.join('') };
}

function leadOf(logged: readonly LogSummary[]): string {
  const rows = logged.reduce((sum, log) => sum + log.rows, 0);
  return `${counted(rows, 'row')} in ${countWord(logged.length)} ${logged.length === 1 ? 'log' : 'logs'}. The curves keep the shape of the rows; the open circles are the exact extremes.`;
}

interface LogHead {
  readonly id: string;
  /** What it was written by and how, with links; empty where it is not said. */
  readonly madeBy: string;
}

function logView(log: LogSummary, { id, madeBy }: LogHead, figures: Table | null, steps: Table | null): string {
  const changes = steps === null ? 0 : new Set(log.steps.map(({ at }) => at)).size;
  const folded = steps === null ? '' : fold(`<b>${counted(changes, 'step')}</b> of voltage, current or power`, tableView(steps));
  return (
    `<div class="log"><div class="log-head"><h3 id="${id}">${escapeText(log.id)}</h3><p>${sentence(aboutOf(log))}</p><p>${powerSentence(log)}</p>${madeBy}</div>` +
    `<div class="log-matter">${logPlot(log, id)}${figures === null ? '' : tableView(figures)}${folded}</div></div>`
  );
}

/** The rows of one log, without the heading that tells logs apart. */
function onlyOf(table: Table | null, log: LogSummary, title: string): Table | null {
  const group = table?.groups.find((each) => each.title === log.id);
  if (table === null || group === undefined) return null;
  return { ...table, title: `${title} ${log.id}`, groups: [{ ...group, title: null }] };
}

/** "C1, 230 V, in air of 38 °C; 1811 rows of c1-in-a-box.csv from 2026-02-03 18:20:00. Note." */
function aboutOf({ port, line, ambient, rows, file, start, note, gaps }: LogSummary): string {
  const where = [port, line, ambient === null ? null : `in air of ${ambient}`].filter((word) => word !== null).join(', ');
  const from = start === null ? '' : ` from ${start}`;
  const holes = gaps.length === 0 ? '' : `, ${counted(gaps.length, 'gap')}`;
  return `${where === '' ? '' : `${where}; `}${counted(rows, 'row')} of ${file}${from}${holes}.${note === null ? '' : ` ${sentenceCase(note)}.`}`;
}

/** "Written by bench-load, thermocouple. Full load." */
function madeByOf({ instrument, byInstrument, method, byMethod }: LogFile): string {
  const named = instrument === null || typeof instrument === 'string' ? instrument : [...new Set(Object.values(instrument))].join(', ');
  const by = named === null ? '' : `Written by ${instrumentWords(named, byInstrument)}`;
  const how = methodWords(method, byMethod);
  const said = [by, how].filter((piece) => piece !== '').join('; ');
  return said === '' ? '' : `<p class="soft">${said}.</p>`;
}

/** What the power did, with what had to be taken for granted. */
function powerSentence({ power }: LogSummary): string {
  const { peak, sustained, droppedAfter, underLoad } = power;
  if (isMissing(peak) || isMissing(underLoad)) return '';
  const shown = (known: typeof peak | typeof underLoad): string => `<span class="q">${escapeText(quantityWords(known))}</span>`;
  const held = isMissing(sustained)
    ? escapeText(`${sustained.reason}.`)
    : `${shown(sustained)} sustained over the last ten minutes of ${shown(underLoad)} under load.`;
  const fell = isMissing(droppedAfter)
    ? ''
    : ` It fell below 95 % of its peak after ${shown(droppedAfter)}; that the load asked for the same all the time is taken from the author.`;
  return `${shown(peak)} peak, ${held}${fell}`;
}
