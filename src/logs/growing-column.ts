/** Numbers that come one after the other, of whatever count; eight bytes each, and none is moved until the end. */
export interface GrowingColumn {
  readonly push: (value: number) => void;
  /** All numbers in one piece; the column is empty afterwards. */
  readonly take: () => Float64Array;
}

const CHUNK = 65_536;

/** Makes an empty column. */
export function growingColumn(): GrowingColumn {
  let full: Float64Array[] = [];
  let current = new Float64Array(CHUNK);
  let used = 0;
  return {
    push(value) {
      if (used === CHUNK) {
        full.push(current);
        current = new Float64Array(CHUNK);
        used = 0;
      }
      current[used] = value;
      used += 1;
    },
    take() {
      const all = new Float64Array(full.length * CHUNK + used);
      full.forEach((chunk, index) => {
        all.set(chunk, index * CHUNK);
      });
      all.set(current.subarray(0, used), full.length * CHUNK);
      full = [];
      current = new Float64Array(0);
      used = 0;
      return all;
    },
  };
}
