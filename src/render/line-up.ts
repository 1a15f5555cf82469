import { figure } from '../figures/markup.ts';
import { lineUp, type FrontEdges, type LineUpDevice } from '../figures/silhouette.ts';
import type { SheetSummary } from '../corpus/prepared.ts';
import { counted } from '../units/counted.ts';

/** Sheets in a line-up. */
const LINE_UP = 14;

/** Front edges; a car adapter lies on its side, as it does in a drawer and on a bench. */
export function frontOf(sheet: SheetSummary, [length, , height]: readonly [number, number, number]): FrontEdges {
  return sheet.kind === 'car charger' && height > length ? { length: height, height: length } : { length, height };
}

/** The latest sheets as a figure: fronts at one scale in the order of rated power; empty with fewer than two. */
export function lineUpFigure(sheets: readonly SheetSummary[]): string {
  const recent = sheets.slice(0, LINE_UP);
  const devices = recent.flatMap((sheet, index): readonly LineUpDevice[] =>
    sheet.outline === null || sheet.ratedWatts === null
      ? []
      : [
          {
            label: sheet.name,
            watts: sheet.ratedWatts,
            front: frontOf(sheet, sheet.outline),
            ports: sheet.ports,
            newest: index === 0,
          },
        ],
  );
  if (devices.length < 2) return '';
  const ordered = [...devices].sort((one, other) => one.watts - other.watts);
  const { body, height } = lineUp(ordered, 1146);
  const description = ordered.map((device) => `${device.label} ${device.watts} W`).join(', ');
  const svg = figure({
    id: 'line-up',
    className: 'fig lineup',
    width: 1146,
    height,
    title: 'Fronts at one scale in the order of rated power',
    description,
    body,
  });
  return `${svg}<p class="note">${counted(ordered.length, 'sheet')}, fronts at one scale, in the order of rated power, W. Shaded: the newest.</p>`;
}
