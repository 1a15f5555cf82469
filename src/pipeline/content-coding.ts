/** How a text goes over the wire smaller, the better first. */
const CODINGS = ['br', 'gzip'] as const;

export type ContentCoding = (typeof CODINGS)[number];

/**
 * The coding in which a text is sent, of those that the browser takes: the one it wants most, of equals the better. Null where it takes
 * none, and a coding at weight 0 is not taken (RFC 9110, section 12.5.3).
 */
export function contentCoding(accepted: string | readonly string[] | undefined): ContentCoding | null {
  if (accepted === undefined) return null;
  const weights = weightsOf(typeof accepted === 'string' ? accepted : accepted.join(','));
  const weightOf = (coding: ContentCoding): number =>
    weights.get(coding) ?? (coding === 'gzip' ? weights.get('x-gzip') : undefined) ?? weights.get('*') ?? 0;
  const [best] = CODINGS.filter((coding) => weightOf(coding) > 0).sort((a, b) => weightOf(b) - weightOf(a));
  return best ?? null;
}

function weightsOf(header: string): ReadonlyMap<string, number> {
  return new Map(
    header.split(',').map((item) => {
      const [coding = '', ...parameters] = item.split(';').map((part) => part.trim().toLowerCase());
      const weight = parameters.map((parameter) => /^q\s*=\s*(.*)$/.exec(parameter)?.[1]).find((found) => found !== undefined);
      const number = weight === undefined ? 1 : Number(weight);
      return [coding, Number.isFinite(number) ? Math.min(1, Math.max(0, number)) : 0] as const;
    }),
  );
}
