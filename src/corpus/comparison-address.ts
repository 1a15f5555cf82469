/** Most sheets side by side. */
export const MOST_COMPARED = 4;

/** Reads the sheets named in an address, `a,b,c`: each once, four at most; the rest is named as left out. */
export function comparedSlugs(value: string | null): { readonly slugs: readonly string[]; readonly leftOut: readonly string[] } {
  const named = [...new Set((value ?? '').split(',').map((slug) => slug.trim()).filter((slug) => slug !== ''))]; // prettier-ignore
  return { slugs: named.slice(0, MOST_COMPARED), leftOut: named.slice(MOST_COMPARED) };
}
