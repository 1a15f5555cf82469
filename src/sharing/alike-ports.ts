import { allSets, inEntryOrder, setKey } from './port-sets.ts';

/** A way to read one set as another: each port of the first set stands for one of the second. */
export interface Exchange {
  readonly ports: readonly string[];
  readonly standsFor: ReadonlyMap<string, string>;
}

/**
 * The groups that count: ports of the device only, groups that share a port joined into one (alike is transitive),
 * and groups of one left out.
 */
export function joinedGroups(alike: readonly (readonly string[])[], ports: readonly string[]): string[][] {
  let groups: string[][] = [];
  for (const declared of alike) {
    const group = inEntryOrder(declared, ports);
    const touching = groups.filter((other) => other.some((port) => group.includes(port)));
    groups = [...groups.filter((other) => !touching.includes(other)), inEntryOrder([...group, ...touching.flat()], ports)];
  }
  return groups.filter((group) => group.length > 1);
}

/**
 * Every set that equals `set` but for which of the alike ports are taken, `set` itself left out. Among alike ports the first
 * in the entry's order stands for the first, so that the result does not depend on how the groups were written.
 */
export function exchangesOf(set: readonly string[], groups: readonly (readonly string[])[], ports: readonly string[]): Exchange[] {
  let partial: Map<string, string>[] = [
    new Map(set.filter((port) => !groups.some((group) => group.includes(port))).map((port) => [port, port])),
  ];
  for (const group of groups) {
    const used = inEntryOrder(set, group);
    if (used.length === 0) continue;
    const choices = allSets(group).filter((choice) => choice.length === used.length);
    partial = partial.flatMap((sofar) => choices.map((choice) => extended(sofar, used, choice)));
  }
  const own = setKey(inEntryOrder(set, ports));
  return partial
    .map((standsFor) => ({ ports: inEntryOrder([...standsFor.values()], ports), standsFor }))
    .filter((exchange) => setKey(exchange.ports) !== own);
}

function extended(sofar: ReadonlyMap<string, string>, used: readonly string[], choice: readonly string[]): Map<string, string> {
  const longer = new Map(sofar);
  for (const [place, port] of used.entries()) longer.set(port, choice[place] ?? port);
  return longer;
}

/**
 * Every way to read a set as itself with its alike ports changed about, the way in which each stays itself left out. Only of
 * use where the order of plugging matters: "C1 then C2" then says what "C2 then C1" does.
 */
export function swapsWithin(set: readonly string[], groups: readonly (readonly string[])[], ports: readonly string[]): Exchange[] {
  let partial: Map<string, string>[] = [new Map(set.map((port) => [port, port]))];
  for (const group of groups) {
    const used = inEntryOrder(set, group);
    partial = partial.flatMap((sofar) => arrangements(used).map((choice) => extended(sofar, used, choice)));
  }
  const own = inEntryOrder(set, ports);
  return partial.filter((standsFor) => own.some((port) => standsFor.get(port) !== port)).map((standsFor) => ({ ports: own, standsFor }));
}

function arrangements(items: readonly string[]): string[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((first) => arrangements(items.filter((item) => item !== first)).map((rest) => [first, ...rest]));
}
