import type { Allocation, Entry, Port } from '../entry/entry.ts';
import { formatQuantity } from '../units/format.ts';
import type { Quantity } from '../units/quantity.ts';
import { stageOf } from '../stages/index.ts';
import { compareText } from './compare-text.ts';

/** Stages that feed ports, each with the connectors it feeds: "buck: USB-C", "buck: USB-C + USB-A". */
export function fanOut(entry: Entry): readonly string[] {
  const connectors = new Map(entry.ports.map((port) => [port.id, port.connector]));
  return entry.stages.flatMap((stage) => {
    const fed = stage.feeds.map((id) => connectors.get(id)).filter((connector) => connector !== undefined);
    return fed.length === 0 ? [] : [`${stageOf(stage.kind)?.name ?? stage.kind}: ${fed.join(' + ')}`];
  });
}

/** Output ports with their limits, the strongest first; names of ports say nothing about a design. */
export function portTraits(entry: Entry): readonly string[] {
  return [...outputs(entry)]
    .sort((one, other) => watts(other) - watts(one) || compareText(one.connector, other.connector))
    .map((port) => (port.power === null ? port.connector : `${port.connector} ${powerWords(port.power.quantity)}`));
}

/** Total, policy and the shares of each set, by connectors in place of the names of the ports. */
export function sharingTraits(entry: Entry): readonly string[] {
  const { sharing } = entry;
  if (sharing === null) return [];
  const connectors = new Map(entry.ports.map((port) => [port.id, port.connector]));
  const rows = sharing.allocations.filter((row) => row.ports.length > 1).map((row) => allocationWords(row, connectors));
  return [
    ...(sharing.total === null ? [] : [`total ${powerWords(sharing.total.quantity)}`]),
    ...(sharing.policy === null ? [] : [sharing.policy]),
    ...new Set(rows),
  ];
}

function allocationWords({ ports, shares }: Allocation, connectors: ReadonlyMap<string, string>): string {
  const words = [...shares]
    .map((share) => ({ watts: share.power.nominal, words: `${powerWords(share.power)}${share.ports.length > 1 ? ' shared' : ''}` }))
    .sort((one, other) => other.watts - one.watts || compareText(one.words, other.words));
  const kinds = ports.map((id) => connectors.get(id) ?? id).sort(compareText);
  return `${kinds.join(' + ')}: ${words.map((share) => share.words).join(' + ')}`;
}

function outputs(entry: Entry): readonly Port[] {
  return entry.ports.filter((port) => port.direction !== 'input');
}

function watts(port: Port): number {
  return port.power?.quantity.nominal ?? 0;
}

/** One spelling for equal powers, whatever digits and ranges they were written with: "65 W". */
function powerWords(power: Quantity): string {
  return power.dimension === 'power' ? `${String(Number(power.nominal.toPrecision(6)))} W` : formatQuantity(power).text;
}
