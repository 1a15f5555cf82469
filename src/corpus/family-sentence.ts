import { blocksOfId, type TopologyFamily } from './topology-families.ts';

/**
 * What a family's name stands for: the first sentence of what each block that makes the family says of itself. The whole of it
 * stands with the blocks.
 */
export function familySentence(family: TopologyFamily): string {
  return blocksOfId(family.id, family.chain)
    .flatMap((block) => (block.meaning === null ? [] : [firstSentence(block.meaning)]))
    .join(' ');
}

function firstSentence(text: string): string {
  return /^.*?[.](?=\s|$)/su.exec(text)?.[0] ?? text;
}

/** What feeds the chain: the mains, a direct-current supply such as a vehicle's, the device's own cells, or what is not known. */
export function familySupply(family: TopologyFamily): 'mains' | 'DC supply' | 'cells' | null {
  if (family.chain.length === 0) return null;
  if (family.chain.some((block) => block.side === 'primary' || block.side === 'barrier')) return 'mains';
  return family.chain[0]?.kind === 'battery-pack' ? 'cells' : 'DC supply';
}
