/**
 * Rows that keep the shape of a curve: largest-triangle-three-buckets. The first and last row are kept, the rows between are cut into
 * buckets of equal count, and of each bucket the row that makes the largest triangle with the row kept before it and the mean of the
 * bucket behind it.
 * Source: S. Steinarsson, Downsampling Time Series for Visual Representation, University of Iceland, 2013, section 4.2.
 *
 * @param time Rising times.
 * @param values As many numbers, none of them `NaN`.
 * @param count How many rows to keep, at least 3; all are kept where there are no more.
 */
export function largestTriangles(time: Float64Array, values: Float64Array, count: number): Uint32Array {
  const total = time.length;
  if (total <= count || count < 3) return Uint32Array.from({ length: total }, (_, row) => row);
  const kept = new Uint32Array(count);
  const width = (total - 2) / (count - 2);
  let before = 0;
  for (let bucket = 0; bucket < count - 2; bucket += 1) {
    const from = Math.floor(bucket * width) + 1;
    const to = Math.floor((bucket + 1) * width) + 1;
    const behind = meanPoint(time, values, to, Math.min(Math.floor((bucket + 2) * width) + 1, total));
    before = farthestRow(time, values, { from, to, before, behind });
    kept[bucket + 1] = before;
  }
  kept[count - 1] = total - 1;
  return kept;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

function meanPoint(time: Float64Array, values: Float64Array, from: number, to: number): Point {
  let [x, y] = [0, 0];
  for (let row = from; row < to; row += 1) {
    x += time[row] ?? 0;
    y += values[row] ?? 0;
  }
  const count = to - from;
  return { x: x / count, y: y / count };
}

interface Bucket {
  readonly from: number;
  readonly to: number;
  readonly before: number;
  readonly behind: Point;
}

function farthestRow(time: Float64Array, values: Float64Array, { from, to, before, behind }: Bucket): number {
  const x0 = time[before] ?? 0;
  const y0 = values[before] ?? 0;
  const dx = x0 - behind.x;
  const dy = behind.y - y0;
  let largest = -1;
  let farthest = from;
  for (let row = from; row < to; row += 1) {
    const area = Math.abs(dx * ((values[row] ?? 0) - y0) - (x0 - (time[row] ?? 0)) * dy);
    if (area > largest) {
      largest = area;
      farthest = row;
    }
  }
  return farthest;
}
