/** Rows of numbers that come one after the other, of whatever count; eight bytes a number, and none is moved until the end. */
export interface GrowingRows {
  /** Puts a number into a column of the row that is being taken. */
  readonly put: (column: number, value: number) => void;
  /** Ends the row; without this it is overwritten by the next one. */
  readonly keep: () => void;
  readonly count: () => number;
  /** One column in one piece. */
  readonly column: (column: number) => Float64Array;
}

const CHUNK_ROWS = 16_384;

/** Makes an empty store for rows of this many numbers. */
export function growingRows(columns: number): GrowingRows {
  const full: Float64Array[] = [];
  const size = CHUNK_ROWS * columns;
  let current = new Float64Array(size);
  let start = 0;
  return {
    put(column, value) {
      current[start + column] = value;
    },
    keep() {
      start += columns;
      if (start < size) return;
      full.push(current);
      current = new Float64Array(size);
      start = 0;
    },
    count: () => full.length * CHUNK_ROWS + start / columns,
    column(column) {
      const all = new Float64Array(full.length * CHUNK_ROWS + start / columns);
      let row = 0;
      for (const chunk of [...full, current.subarray(0, start)])
        for (let at = column; at < chunk.length; at += columns) {
          all[row] = chunk[at] ?? Number.NaN;
          row += 1;
        }
      return all;
    },
  };
}
