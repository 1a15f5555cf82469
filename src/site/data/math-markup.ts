import temml from 'temml';

/**
 * MathML of a TeX expression, drawn by the browser itself: no script, no style attribute (the site's policy forbids them) and no
 * class. Throws when the TeX is wrong, so that a formula with a slip in its expression stops the build.
 */
export function mathMarkup(tex: string, display: 'block' | 'inline'): string {
  const markup = temml.renderToString(tex, { displayMode: display === 'block', throwOnError: true, strict: true, trust: false });
  // A small fraction (\tfrac) would fall under the smallest text size of the sheet, so fractions have their full size everywhere.
  return markup.replaceAll(/\s(?:style|class)="[^"]*"/g, '').replaceAll('displaystyle="false"', 'displaystyle="true"');
}
