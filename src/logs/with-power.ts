import { seriesOf, type LogRows, type LogSeries } from './log-rows.ts';

/** The columns of a log, with volts times amperes as the power where the file has no column for it. */
export function withPower(rows: LogRows): readonly LogSeries[] {
  return [
    ...rows.series,
    ...product(rows, 'power', 'voltage', 'current'),
    ...product(rows, 'input power', 'input voltage', 'input current'),
  ];
}

function product(rows: LogRows, quantity: string, volts: string, amps: string): readonly LogSeries[] {
  const [voltage, current] = [seriesOf(rows, volts), seriesOf(rows, amps)];
  if (seriesOf(rows, quantity) !== null || voltage === null || current === null) return [];
  const values = voltage.values.map((value, row) => value * (current.values[row] ?? Number.NaN));
  return [{ quantity, dimension: 'power', head: null, values, resolution: productResolution(voltage, current) }];
}

/** A product is known to the coarser of what either digit does to it at its largest. */
function productResolution(voltage: LogSeries, current: LogSeries): number {
  const largest = ({ values }: LogSeries): number => values.reduce((most, value) => (Math.abs(value) > most ? Math.abs(value) : most), 0);
  return Math.max(voltage.resolution * largest(current), current.resolution * largest(voltage));
}
