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
  const values = new Float64Array(voltage.values.length);
  let [mostVolts, mostAmps] = [0, 0];
  for (let row = 0; row < values.length; row += 1) {
    const value = voltage.values[row] ?? Number.NaN;
    const flow = current.values[row] ?? Number.NaN;
    values[row] = value * flow;
    if (Math.abs(value) > mostVolts) mostVolts = Math.abs(value);
    if (Math.abs(flow) > mostAmps) mostAmps = Math.abs(flow);
  }
  // A product is known to the coarser of what either last digit does to it at its largest.
  const resolution = Math.max(voltage.resolution * mostAmps, current.resolution * mostVolts);
  return [{ quantity, dimension: 'power', head: null, values, resolution }];
}
