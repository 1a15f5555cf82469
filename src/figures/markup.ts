/** Escapes text for XML and HTML content and for attribute values in double quotes. */
export function escapeText(text: string): string {
  return /[&<>"]/.test(text) ? text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;') : text;
}

/** A coordinate with two decimals at most, so that the same numbers give the same bytes. */
export function px(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return Object.is(rounded, -0) ? '0' : String(rounded);
}

/** A fraction of the figure's width as a percentage: 0.5 gives "50%". */
export function percent(fraction: number): string {
  return `${px(fraction * 100)}%`;
}

/**
 * A whole figure: `svg` with role, title and description. Classes carry all style; `id` makes the title's and the description's ids.
 * Width and height are in CSS pixels and the figure is drawn at 1 : 1.
 */
export function figure(input: {
  id: string;
  className: string;
  width: number;
  height: number;
  title: string;
  description: string;
  body: string;
  /** The figure holds links, so it is a group and not one picture. */
  hasLinks?: boolean;
}): string {
  const { id, className, width, height, title, description, body } = input;
  return (
    `<svg class="${className}" role="${input.hasLinks === true ? 'group' : 'img'}" aria-labelledby="${id}-t ${id}-d" width="${px(width)}" height="${px(height)}" viewBox="0 0 ${px(width)} ${px(height)}">` +
    `<title id="${id}-t">${escapeText(title)}</title><desc id="${id}-d">${escapeText(description)}</desc>${body}</svg>`
  );
}
