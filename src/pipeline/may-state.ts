/**
 * Whether the frontmatter of a file may state a field, told without parsing it: few entries have logs or changed photos. However the key is
 * written (in quotes, indented, in braces on one line), its word stands there.
 */
export function mayState(text: string, field: string): boolean {
  const end = text.indexOf('\n---', 3);
  return text.slice(0, end === -1 ? undefined : end).includes(field);
}
