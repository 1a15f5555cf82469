/** References of one key as the page writes them: "R1 · R2", runs of three and more as "R11–R14". */
export function referenceList(references: readonly string[]): string {
  const pieces: string[] = [];
  for (let at = 0; at < references.length;) {
    const end = runEnd(references, at);
    if (end - at >= 2) pieces.push(`${references[at] ?? ''}–${references[end] ?? ''}`);
    else for (let i = at; i <= end; i += 1) pieces.push(references[i] ?? '');
    at = end + 1;
  }
  return pieces.join(' · ');
}

/** Index of the last reference of the run that starts at `start`: same letters, number one higher each. */
function runEnd(references: readonly string[], start: number): number {
  let end = start;
  while (end + 1 < references.length && follows(references[end] ?? '', references[end + 1] ?? '')) end += 1;
  return end;
}

function follows(one: string, other: string): boolean {
  const [a, b] = [/^(\D*)(\d+)$/.exec(one), /^(\D*)(\d+)$/.exec(other)];
  return a !== null && b !== null && a[1] === b[1] && Number(b[2]) === Number(a[2]) + 1;
}

/** Anchor of a part's row: "part-C5". */
export function partAnchor(reference: string): string {
  return `part-${reference.replace(/[^A-Za-z0-9_-]/g, '_')}`;
}

/** Anchor of a named value's working: "how-density". */
export function workingAnchor(name: string): string {
  return `how-${name.replace(/[^A-Za-z0-9_-]/g, '-')}`;
}

/** Anchor of a port's offers: "port-C1". */
export function portAnchor(port: string): string {
  return `port-${port.replace(/[^A-Za-z0-9_-]/g, '_')}`;
}
