import type { Connector } from '../entry/entry.ts';

const CONNECTORS: readonly Connector[] = ['USB-C', 'USB-A', 'barrel', 'captive cable', 'wireless'];

/** Tells whether a word of the manifest is a connector that can be drawn. */
export function isConnector(word: string): word is Connector {
  return CONNECTORS.some((connector) => connector === word);
}
