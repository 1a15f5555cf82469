/**
 * Secondary matter behind one telling line, number first; on paper it stands open (print.css). `summary` and `matter` are markup. A link to
 * an anchor inside opens it, as the browser does of itself.
 */
export function fold(summary: string, matter: string): string {
  return `<details class="fold"><summary>${summary}</summary><div class="fold-in">${matter}</div></details>`;
}
