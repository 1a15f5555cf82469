/** Most output ports for which every set is listed: 2^8 − 1 = 255 rows. */
export const MOST_PORTS = 8;

/** Name of a set of ports, in the order given: "C1 + C3". */
export function setKey(ports: readonly string[]): string {
  return ports.join(' + ');
}

/** The ports of `set` in the order of `ports`, each once; ports that `ports` does not hold are left out. */
export function inEntryOrder(set: readonly string[], ports: readonly string[]): string[] {
  const members = new Set(set);
  return ports.filter((port) => members.has(port));
}

/** All 2^n − 1 sets of the ports, by count and then in the order of `ports`. */
export function allSets(ports: readonly string[]): string[][] {
  const bySize: string[][][] = Array.from({ length: ports.length + 1 }, () => []);
  for (const [index, port] of ports.entries()) {
    for (let size = index; size >= 0; size -= 1) {
      for (const smaller of bySize[size] ?? []) bySize[size + 1]?.push([...smaller, port]);
    }
    bySize[1]?.push([port]);
  }
  return bySize.flat().sort((one, other) => bySizeThenPlace(one, other, ports));
}

/** Orders sets by count of ports, then as a dictionary would with the ports as its alphabet. */
export function bySizeThenPlace(one: readonly string[], other: readonly string[], ports: readonly string[]): number {
  if (one.length !== other.length) return one.length - other.length;
  for (const [place, port] of one.entries()) {
    const difference = ports.indexOf(port) - ports.indexOf(other[place] ?? port);
    if (difference !== 0) return difference;
  }
  return 0;
}
