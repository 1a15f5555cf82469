/** What kind of evidence a token is. */
export type TokenKind = 'topology' | 'fan-out' | 'controller' | 'switch' | 'port chip' | 'value' | 'ports' | 'sharing';

/** One thing that two designs can have in common. Equal keys are the same thing. */
export interface LikenessToken {
  readonly key: string;
  readonly kind: TokenKind;
  /** Sort within the kind: a role, a kind of value; empty where there is none. */
  readonly of: string;
  /** What is printed of it: "VLR-81C", "100 µF". */
  readonly words: string;
}

/**
 * How much a kind of evidence says about a design beside its rarity. Our own choice (common practice): a controller is chosen once for
 * a platform, a capacitor value is taken from a short row of values and recurs by chance, ports are what the market asks for.
 */
export const KIND_WEIGHT: Readonly<Record<TokenKind, number>> = {
  topology: 0.8,
  'fan-out': 0.5,
  controller: 1.6,
  switch: 1.2,
  'port chip': 0.8,
  value: 0.6,
  ports: 0.7,
  sharing: 0.25,
};
