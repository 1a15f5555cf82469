import type { Quantity, ReadingRemark } from './quantity.ts';

/** Cells of hand-held supplies hold less; "37 Ah" beside a cell voltage is nearly always watt-hours. Common practice, no source. */
const LARGEST_USUAL_CHARGE = 30 * 3600;

/** Speaks up where ampere-hours stand and watt-hours are usual: "37 Ah 3.7 V" would be 136.9 Wh. */
export function chargeRemark(quantities: readonly Quantity[]): ReadingRemark | null {
  const charge = quantities.find((quantity) => quantity.dimension === 'charge' && quantity.unit === 'Ah');
  const voltage = quantities.find((quantity) => quantity.dimension === 'voltage');
  if (charge === undefined || voltage === undefined || charge.nominal < LARGEST_USUAL_CHARGE) return null;
  const wattHours = Number(((charge.nominal * voltage.nominal) / 3600).toPrecision(4));
  const message = `Ah where Wh is usual: ${charge.written} at ${voltage.written} is ${wattHours} Wh`;
  return { severity: 'warning', message, suggestion: `${charge.nominal / 3600} Wh`, span: charge.span };
}
