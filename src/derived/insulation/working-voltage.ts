import type { Entry, InsulationPlace } from '../../entry/entry.ts';
import { busAgainstNeutral } from '../../formulas/mains/bus-against-neutral.ts';
import { mainsPeak } from '../../formulas/mains/mains-peak.ts';
import { CREEPAGE } from '../../standards/insulation/creepage.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known, type Value } from '../../values/value.ts';
import type { BulkFigures, InputFigures } from '../derived.ts';
import { factValue } from '../fact-value.ts';
import { largest } from '../offered.ts';
import { hasPfc } from '../stage-kinds.ts';
import { supplyLines } from '../supply-lines.ts';

/** Working voltage across a place, and how it was found. */
export interface WorkingVoltage {
  readonly rms: Known<'voltage'>;
  readonly peak: Known<'voltage'>;
  /** Rated mains from line to neutral, V rms. */
  readonly mains: Known<'voltage'>;
  readonly note: string | null;
}

/**
 * What stands across a place: what the author gives; else, inside the primary, the bus; else, between primary and output, the rated
 * mains by its row of the table and a regulated bus against the neutral, whichever is more. The peak is that of the highest line.
 */
export function workingVoltage(
  entry: Entry,
  place: InsulationPlace,
  isInside: boolean,
  input: InputFigures,
  bulk: BulkFigures,
): WorkingVoltage {
  const mains = supplyLines(entry.nameplate)?.highest ?? missing('no input printed', ['nameplate.input']);
  const peak = largest([input.peak, bulk.voltage]) ?? missing('no voltage known on the primary side', ['input voltage']);
  const given = place.workingVoltage;
  if (given !== null) {
    const value = factValue(given, { bound: 'use' });
    const crest = given.quantity.waveform === 'AC' ? applyFormula(mainsPeak, { rms: value }) : value;
    return { rms: value, peak: crest, mains, note: null };
  }
  if (isInside) return { rms: peak, peak, mains, note: 'Inside the primary side: the bus counts as working voltage.' };
  const row = mainsRow(mains);
  const bus = hasPfc(entry) ? applyFormula(busAgainstNeutral, { bus: bulk.voltage, crest: applyFormula(mainsPeak, { rms: mains }) }) : row;
  const rms = largest([row, bus]) ?? row;
  return { rms, peak, mains, note: noteOf(rms, row) };
}

/** The mains by the next row of the table of creepage: 240 V counts as 250 V. */
function mainsRow(mains: Known<'voltage'>): Known<'voltage'> {
  if (isMissing(mains)) return mains;
  const volts = CREEPAGE.rows.find((row) => mains.nominal <= row.volts)?.volts;
  if (volts === undefined) return missing('mains voltage above the table of creepage');
  const source = { ...CREEPAGE.source, section: `${CREEPAGE.source.section}; mains by its next row` };
  const origin: Value['origin'] = { evidence: 'assumed', reason: 'a rated mains voltage counts as the next row of the table', source };
  return { dimension: 'voltage', low: volts, nominal: volts, high: volts, significant: 3, origin };
}

function noteOf(rms: Known<'voltage'>, row: Known<'voltage'>): string | null {
  if (isMissing(rms) || isMissing(row)) return null;
  if (rms === row) return `Working voltage: the mains, which counts as ${row.nominal} V. At the transformer a laboratory may find more.`;
  return `Working voltage: the bus against the neutral, ${rms.nominal.toFixed(0)} V rms. At the transformer a laboratory may find another.`;
}
