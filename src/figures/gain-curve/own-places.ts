/** Neighbours that stand side by side: how many, the first of them, and the middle that they want. */
interface Cluster {
  readonly members: readonly number[];
  readonly middle: number;
}

/**
 * Places on a line for words that want to stand at `wanted`: who has room stands there, and only neighbours that are too near to each other
 * move, by the least squares. All of them stay between `from` and `to` while there is room for all.
 */
export function inOwnPlaces(wanted: readonly number[], apart: number, from: number, to: number): readonly number[] {
  const order = wanted.map((place, index) => ({ place, index })).sort((one, other) => one.place - other.place || one.index - other.index);
  const clusters: Cluster[] = [];
  for (const { place, index } of order) {
    let next: Cluster = { members: [index], middle: place };
    for (
      let last = clusters.at(-1);
      last !== undefined && bottomOf(last, apart, from, to) + apart > topOf(next, apart, from, to);
      last = clusters.at(-1)
    ) {
      clusters.pop();
      next = together(last, next);
    }
    clusters.push(next);
  }
  const places = wanted.map(() => 0);
  for (const cluster of clusters) {
    const top = topOf(cluster, apart, from, to);
    for (const [at, index] of cluster.members.entries()) places[index] = top + at * apart;
  }
  return places;
}

function together(one: Cluster, other: Cluster): Cluster {
  const [first, second] = [one.members.length, other.members.length];
  return { members: [...one.members, ...other.members], middle: (one.middle * first + other.middle * second) / (first + second) };
}

function topOf({ members, middle }: Cluster, apart: number, from: number, to: number): number {
  const height = (members.length - 1) * apart;
  return Math.max(from, Math.min(to - height, middle - height / 2));
}

function bottomOf(cluster: Cluster, apart: number, from: number, to: number): number {
  return topOf(cluster, apart, from, to) + (cluster.members.length - 1) * apart;
}
