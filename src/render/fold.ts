/**
 * Secondary matter behind one telling line, number first; on paper it stands open (print.css). `summary` and `matter` are markup. A link to
 * an anchor inside opens it, as the browser does of itself. `className` for one that paper leaves closed.
 */
export function fold(summary: string, matter: string, className = ''): string {
  return `<details class="fold${className === '' ? '' : ` ${className}`}"><summary><span>${summary}</span></summary><div class="fold-in">${matter}</div></details>`;
}
