import type { Derived, StageGainCurve } from '../derived/derived.ts';
import type { GainPair } from '../stages/models/stage-model.ts';
import { isMissing, type Known } from '../values/value.ts';
import { mono, numberColumn, textColumn, words } from './cells.ts';
import type { Cell, Row, RowGroup, Table } from './table.ts';
import type { TableDeclaration, TableInput } from './table-declaration.ts';
import { sentenceCase } from '../units/sentence-case.ts';

const ID = 'gain-curve';
const TITLE = 'Gain of the resonant tank';

export const gainCurveTable: TableDeclaration = { id: ID, title: TITLE, hasFigure: true, build };

/** Of the places of a curve each one of so many stands in the table; the figure draws them all. */
const EACH = 6;
const NONE: Cell = { kind: 'none' };

function build({ derived }: TableInput): Table | null {
  const { gainCurves } = derived;
  if (gainCurves.length === 0) return null;
  return {
    id: ID,
    title: TITLE,
    caption: 'Gain over frequency by the first-harmonic approximation: where the tank has to work, and the curves themselves.',
    columns: [
      textColumn('where', 'Where'),
      textColumn('load', 'Load'),
      numberColumn('gain', 'Gain', '1'),
      numberColumn('ratio', 'Over resonance', '1'),
      numberColumn('frequency', 'Frequency', 'kHz'),
    ],
    groups: gainCurves.flatMap((curve, index) => groupsOf(curve, `${String(index + 1)}-`, titleOf(curve, gainCurves))),
    notes: ['Good near resonance; below it the true gain is higher than this approximation says.'],
  };
}

/** Names the stage where there is more than one. */
function titleOf({ stage }: StageGainCurve, all: Derived['gainCurves']): string {
  return all.length > 1 ? `${stage}, ` : '';
}

function groupsOf(curve: StageGainCurve, id: string, name: string): readonly RowGroup[] {
  const title = (text: string): string => (name === '' ? sentenceCase(text) : name + text);
  const group = (key: string, text: string, rows: readonly Row[]): RowGroup => ({ id: id + key, title: title(text), glyph: null, rows });
  return [
    group('work', 'where it works', workingRows(curve, id)),
    group('curves', 'the curves', [
      ...curve.loaded.flatMap(({ name: output, pairs, peak }, index) => [
        curveRow(`${id}peak-${String(index)}`, `largest, ${output}`, 'full load', peak, curve),
        ...sampled(pairs).map((pair, at) => curveRow(`${id}load-${String(index)}-${String(at)}`, output, 'full load', pair, curve)),
      ]),
      ...sampled(curve.noLoad).map((pair, at) => curveRow(`${id}no-load-${String(at)}`, 'without load', 'no load', pair, curve)),
    ]),
  ].filter(({ rows }) => rows.length > 0);
}

function workingRows({ resonance, loaded, points, asked, running }: StageGainCurve, id: string): readonly Row[] {
  const known = new Set(points.map(({ gain }) => gainKey(gain)));
  const between = asked.filter(({ gain }) => !known.has(gainKey(gain)));
  return [
    { id: `${id}resonance`, cells: [words('resonance'), words('any'), mono(atResonance(loaded)), mono('1'), frequencyCell(resonance)] },
    ...(running === null ? [] : givenRows(running, id)),
    ...points.map(({ name, load, gain, frequencyRatio, frequency }, index) => ({
      id: `${id}corner-${String(index)}`,
      cells: [words(name), words(load), ratioCell(gain), reached(ratioCell(frequencyRatio)), reached(frequencyCell(frequency))],
    })),
    ...between.map(({ name, gain }, index) => ({
      id: `${id}asked-${String(index)}`,
      cells: [words(`${name}, highest bus`), NONE, ratioCell(gain), NONE, NONE],
    })),
  ];
}

function givenRows({ frequency, ratio }: NonNullable<StageGainCurve['running']>, id: string): readonly Row[] {
  const isOne = !isMissing(ratio.lowest) && !isMissing(ratio.highest) && ratio.lowest.nominal === ratio.highest.nominal;
  const row = (end: 'lowest' | 'highest', name: string): Row => ({
    id: `${id}given-${end}`,
    cells: [words(name), NONE, NONE, ratioCell(ratio[end]), frequencyCell(frequency[end])],
  });
  return isOne ? [row('highest', 'as given')] : [row('lowest', 'lowest, as given'), row('highest', 'highest, as given')];
}

/** Where all that is needed is known and the formula has no result, the tank does not have this gain on its inductive side. */
function reached(cell: Cell): Cell {
  if (cell.kind !== 'value' || !isMissing(cell.value) || cell.value.needs.length > 0) return cell;
  return { kind: 'missing', reason: 'not reached' };
}

function sampled(pairs: readonly GainPair[]): readonly GainPair[] {
  return pairs.filter((_, index) => index % EACH === 0 || index === pairs.length - 1);
}

function curveRow(id: string, where: string, load: string, [ratio, gain]: GainPair, { resonance }: StageGainCurve): Row {
  const hertz = isMissing(resonance) ? null : ratio * resonance.nominal;
  const kilohertz = hertz === null ? null : (hertz / 1000).toFixed(decimalsOf(hertz));
  return { id, cells: [words(where), words(load), mono(gain.toFixed(2)), mono(ratio.toFixed(2)), mono(kilohertz, 'resonance not known')] };
}

/** Ratios with two decimals. */
function ratioCell(value: Known<'ratio'>): Cell {
  return { kind: 'value', value, decimals: 2 };
}

/** Whole kilohertz, tenths below a hundred: with two digits a resonance of 124 kHz would stand on the wrong side of 121. */
function frequencyCell(value: Known<'frequency'>): Cell {
  return { kind: 'value', value, decimals: isMissing(value) ? 0 : decimalsOf(value.nominal) };
}

function decimalsOf(hertz: number): number {
  return hertz < 1e5 ? 1 : 0;
}

function gainKey(gain: StageGainCurve['asked'][number]['gain']): string {
  return isMissing(gain) ? gain.reason : String(gain.nominal);
}

/** The gain that does not depend on the load: 1 behind a choke of its own, more where the leakage of the transformer resonates. */
function atResonance(loaded: StageGainCurve['loaded']): string {
  const gain = loaded[0]?.pairs.find(([ratio]) => ratio === 1)?.[1] ?? 1;
  return Math.abs(gain - 1) < 1e-9 ? '1' : gain.toFixed(2);
}
