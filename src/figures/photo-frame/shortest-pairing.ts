/**
 * Which column each row takes, so that the sum of the costs is the least: the successive shortest paths of Kuhn and Munkres
 * (Burkard, Dell'Amico, Martello, "Assignment Problems", section 4.4; from memory). As many columns as rows, or more.
 *
 * @param cost of row and column
 */
export function shortestPairing(rows: number, columns: number, cost: (row: number, column: number) => number): readonly number[] {
  const costs = new Float64Array(rows * columns);
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1) costs[row * columns + column] = cost(row, column);
  // Row and column 0 are a start that stands for "none yet"; potentials keep all reduced costs at 0 or above.
  const [ofRow, ofColumn] = [new Float64Array(rows + 1), new Float64Array(columns + 1)];
  const rowAt = new Int32Array(columns + 1);
  const before = new Int32Array(columns + 1);
  for (let row = 1; row <= rows; row += 1) {
    rowAt[0] = row;
    const least = new Float64Array(columns + 1).fill(Infinity);
    const done = new Uint8Array(columns + 1);
    let column = 0;
    do {
      done[column] = 1;
      const here = rowAt[column] ?? 0;
      let [step, next] = [Infinity, 0];
      const paid = ofRow[here] ?? 0;
      const first = (here - 1) * columns - 1;
      for (let each = 1; each <= columns; each += 1) {
        if (done[each] === 1) continue;
        const reduced = (costs[first + each] ?? 0) - paid - (ofColumn[each] ?? 0);
        if (reduced < (least[each] ?? 0)) {
          least[each] = reduced;
          before[each] = column;
        }
        if ((least[each] ?? 0) < step) [step, next] = [least[each] ?? 0, each];
      }
      for (let each = 0; each <= columns; each += 1) {
        if (done[each] === 1) {
          const of = rowAt[each] ?? 0;
          ofRow[of] = (ofRow[of] ?? 0) + step;
          ofColumn[each] = (ofColumn[each] ?? 0) - step;
        } else least[each] = (least[each] ?? 0) - step;
      }
      column = next;
    } while (rowAt[column] !== 0);
    while (column !== 0) {
      const from = before[column] ?? 0;
      rowAt[column] = rowAt[from] ?? 0;
      column = from;
    }
  }
  const taken = new Array<number>(rows).fill(0);
  for (let each = 1; each <= columns; each += 1) if ((rowAt[each] ?? 0) > 0) taken[(rowAt[each] ?? 0) - 1] = each - 1;
  return taken;
}
