import { regulationRows, type RegulationRow } from '../derived/voltage-quality/regulation-rows.ts';
import { lineRegulation } from '../formulas/measurement/line-regulation.ts';
import { loadRegulation } from '../formulas/measurement/load-regulation.ts';
import { isMissing, type Known } from '../values/value.ts';
import { counted, detailColumn, numberColumn, plainGroup, rowId, textColumn, valueCell, words } from './cells.ts';
import type { Cell, Row, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';

const ID = 'regulation';
const TITLE = 'Load and line regulation';

export const regulation: TableDeclaration = { id: ID, title: TITLE, build, hasFigure: true };

function build({ entry }: TableInput): Table | null {
  const rows = regulationRows(entry);
  if (rows.length === 0) return null;
  const hasLine = rows.some(({ what }) => what === 'line');
  return {
    id: ID,
    title: TITLE,
    caption: `${counted(rows.length, 'figure')}: how far the voltage falls from the lowest to the highest load${hasLine ? ', and from the higher to the lower line' : ''} that was measured.`,
    columns: [
      textColumn('what', 'What'),
      detailColumn(textColumn('from', 'From')),
      detailColumn(textColumn('to', 'To')),
      numberColumn('regulation', 'Falls by', null),
      detailColumn(textColumn('working', 'Working')),
    ],
    groups: [plainGroup(rows.map(rowOf))],
    notes: [
      `${loadRegulation.title} is the fall of the voltage over what it is at the lowest load (${loadRegulation.source.title}, ${loadRegulation.source.section}); a negative one rises. A reading without an instrument counts as good to half of its last digit.`,
      'No limit is published for it; the data sheet of a 65 W reference design states 0.2 % to 0.8 %, 1 % at most (Texas Instruments TIDA-01622, table 1).',
    ],
  };
}

function rowOf(row: RegulationRow, index: number): Row {
  const { what, port, set, place, at, first, second, regulation: known } = row;
  const name = [port, isMissing(set) ? null : `${String(set.nominal)} V`].filter((each) => each !== null).join(' at ');
  const about = [`${name === '' ? '' : `${name}, `}${what}`, at, place].filter((each) => each !== null).join(', ');
  return {
    id: `${rowId(`${name} ${what}`)}-${index + 1}`,
    cells: [
      words(about.charAt(0).toUpperCase() + about.slice(1)),
      readingCell(first),
      readingCell(second),
      valueCell(known, '%'),
      workingCell(row),
    ],
  };
}

function readingWords({ words: load, value }: RegulationRow['first']): string {
  return `${written(value)} (${load})`;
}

/** A reading with its load, which leads to what measured it. */
function readingCell(reading: RegulationRow['first']): Cell {
  const { value } = reading;
  const anchor = isMissing(value) || value.origin.evidence !== 'measured' ? undefined : (value.origin.instrument ?? value.origin.method);
  return { kind: 'text', text: readingWords(reading), ...(anchor === undefined ? {} : { link: `/bench/#${anchor}` }) };
}

function written(value: Known): string {
  return isMissing(value)
    ? value.reason
    : value.origin.evidence === 'computed' || value.origin.evidence === 'assumed'
      ? ''
      : value.origin.written;
}

function workingCell({ what, first, second }: RegulationRow): Cell {
  const [from, to] = [written(first.value), written(second.value)];
  const formula = what === 'load' ? loadRegulation : lineRegulation;
  return { kind: 'text', text: `(${from} − ${to}) / ${from}`, link: `/methods/${formula.id}/` };
}
