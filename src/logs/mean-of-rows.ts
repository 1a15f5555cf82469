/** Mean of the rows from `from` up to and without `to`, blank cells (`NaN`) left out; null where none of them has a number. */
export function meanOfRows(values: Float64Array, from: number, to: number): number | null {
  let [sum, count] = [0, 0];
  for (let row = from; row < to; row += 1) {
    const value = values[row] ?? Number.NaN;
    if (value !== value) continue;
    sum += value;
    count += 1;
  }
  return count === 0 ? null : sum / count;
}
