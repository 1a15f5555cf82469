import { cursorOn, hasErrors, refusalOf } from './cursor.ts';
import type { Dimension } from './dimension.ts';
import type { Quantity, Reading, ReadingRemark, SupplyInput } from './quantity.ts';
import type { RatingItems } from './rating-found.ts';
import { readRatingItems } from './rating-items.ts';

/** Above this a direct-current input of a portable supply is not usual, so an unmarked voltage is taken as mains. Common practice. */
const HIGHEST_USUAL_DC = 60;

const EXPECTED_WORDS: ReadonlySet<string> = new Set([
  'input',
  'rated',
  'mains',
  'supply',
  'phase',
  'single-phase',
  'universal',
  'i',
  'ii',
  'iii',
]);
const EXPECTED_DIMENSIONS: ReadonlySet<Dimension> = new Set(['voltage', 'frequency', 'current', 'power', 'apparent power'] as const);

/** Reads a supply input as a nameplate prints it: "100-240 V~ 50/60 Hz 1.8 A", "DC 12-24V 10A", "90/120/220 VAC". Never throws. */
export function readSupplyInput(text: string): Reading<SupplyInput> {
  const refusal = refusalOf(text, 'a supply input');
  if (refusal !== null) return { ok: false, remarks: [refusal] };
  const cursor = cursorOn(text);
  const items = readRatingItems(cursor, null);
  const remarks: ReadingRemark[] = [...cursor.remarks, ...unexpected(items)];
  if (hasErrors(cursor.remarks)) return { ok: false, remarks };
  const voltages = items.quantities.filter((quantity) => isOf(quantity, 'voltage'));
  const voltage = joined(voltages, remarks, text);
  if (voltage === null) {
    const message = 'a supply input needs its voltage, such as 100-240 V~ or 12-24 V⎓';
    return { ok: false, remarks: [...remarks, { severity: 'error', message, suggestion: null, span: { start: 0, end: text.length } }] };
  }
  const frequencies = items.quantities.flatMap(frequenciesOf);
  const kind = kindOf(voltages, frequencies, voltage, remarks);
  return {
    ok: true,
    value: { kind, voltage, frequencies, current: currentOf(items, remarks), power: powerOf(items), written: text },
    remarks,
  };
}

function isOf<D extends Dimension>(quantity: Quantity, dimension: D): quantity is Quantity<D> {
  return quantity.dimension === dimension;
}

/** What a nameplate's input line does not hold is said, not dropped in silence. */
function unexpected(items: RatingItems): ReadingRemark[] {
  const words = items.marks.filter((mark) => !(mark.kind === 'word' && EXPECTED_WORDS.has(mark.text.toLowerCase())));
  const strays = items.quantities.filter((quantity) => !EXPECTED_DIMENSIONS.has(quantity.dimension));
  return [
    ...words.map((mark) => ({
      severity: 'warning' as const,
      message: `“${mark.text}” is no part of a supply input`,
      suggestion: null,
      span: mark.span,
    })),
    ...strays.map((stray) => ({
      severity: 'warning' as const,
      message: `“${stray.written}” is no part of a supply input`,
      suggestion: null,
      span: stray.span,
    })),
  ];
}

/** One voltage from all that are printed: from the lowest to the highest. */
function joined(voltages: readonly Quantity<'voltage'>[], remarks: ReadingRemark[], text: string): Quantity<'voltage'> | null {
  const [first, ...others] = voltages;
  if (first === undefined || others.length === 0) return first ?? null;
  const lows = voltages.map((voltage) => voltage.low ?? voltage.nominal);
  const highs = voltages.map((voltage) => voltage.high ?? voltage.nominal);
  const [low, high] = [Math.min(...lows), Math.max(...highs)];
  const span = {
    start: Math.min(...voltages.map((voltage) => voltage.span.start)),
    end: Math.max(...voltages.map((voltage) => voltage.span.end)),
  };
  remarks.push({ severity: 'note', message: `several voltages are printed; taken from ${low} to ${high} V`, suggestion: null, span });
  const waveform = voltages.find((voltage) => voltage.waveform !== null)?.waveform ?? null;
  const nominal = Number(((low + high) / 2).toPrecision(15));
  return { ...first, low, nominal, high, bound: 'range', waveform, written: text.slice(span.start, span.end), span };
}

/** Each printed frequency by itself: the ends of "50-60 Hz", the three of "47/50/63 Hz". */
function frequenciesOf(quantity: Quantity): Quantity<'frequency'>[] {
  if (!isOf(quantity, 'frequency')) return [];
  if (quantity.bound !== 'range' || quantity.low === null || quantity.high === null) return [quantity];
  const middle = (quantity.low + quantity.high) / 2;
  const isTriple = Math.abs(quantity.nominal - middle) > 1e-9 * middle;
  const values = isTriple ? [quantity.low, quantity.nominal, quantity.high] : [quantity.low, quantity.high];
  return values.map((value) => ({ ...quantity, low: value, nominal: value, high: value, bound: 'value' }));
}

function kindOf(
  voltages: readonly Quantity<'voltage'>[],
  frequencies: readonly Quantity<'frequency'>[],
  voltage: Quantity<'voltage'>,
  remarks: ReadingRemark[],
): 'AC' | 'DC' {
  const said = voltages.find((one) => one.waveform !== null)?.waveform ?? null;
  if (said === 'DC' && frequencies.length > 0) {
    const message = 'a direct-current input has no frequency';
    remarks.push({ severity: 'warning', message, suggestion: null, span: frequencies[0]?.span ?? voltage.span });
  }
  if (said !== null) return said;
  if (frequencies.length > 0) return 'AC';
  const kind = (voltage.high ?? voltage.nominal) > HIGHEST_USUAL_DC ? 'AC' : 'DC';
  const message = `${kind} assumed: neither ~ nor ⎓ stands behind the voltage`;
  remarks.push({
    severity: 'note',
    message,
    suggestion: kind === 'AC' ? `${voltage.written}~` : `${voltage.written}⎓`,
    span: voltage.span,
  });
  return kind;
}

/** The largest printed current. */
function currentOf(items: RatingItems, remarks: ReadingRemark[]): Quantity<'current'> | null {
  const currents = items.quantities.filter((quantity) => isOf(quantity, 'current'));
  const [first, ...others] = currents;
  if (first === undefined) return null;
  const largest = others.reduce((best, current) => (current.nominal > best.nominal ? current : best), first);
  if (others.length > 0)
    remarks.push({
      severity: 'note',
      message: `several currents are printed; the largest is taken: ${largest.written}`,
      suggestion: null,
      span: largest.span,
    });
  return largest;
}

function powerOf(items: RatingItems): SupplyInput['power'] {
  return (
    items.quantities.find((quantity) => isOf(quantity, 'power')) ??
    items.quantities.find((quantity) => isOf(quantity, 'apparent power')) ??
    null
  );
}
