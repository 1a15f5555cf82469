/** Blocks that shape a power path, each kind once; filters, stores and port logic stand in every device and say nothing here. */
export function pathGlyphs(kinds: readonly string[]): readonly string[] {
  return [...new Set(kinds)].filter((kind) => !['input-filter', 'bulk-capacitor', 'port-control'].includes(kind));
}
