import { z } from 'zod';

/** Free words. Numbers are refused here, because YAML has already lost how they were written (1.10, 012, 1e3). */
export function words(description: string, ...examples: readonly string[]): z.ZodString {
  return z.string().min(1).describe(withExamples(description, examples));
}

/** Text that is read as a quantity, a rating, an offer or a list of them; its evidence may stand as the last word. */
export function reading(description: string, ...examples: readonly string[]): z.ZodString {
  return words(description, ...examples);
}

/** One text or a list of texts, for things of which there is often just one. */
export function oneOrMore(
  description: string,
  ...examples: readonly string[]
): z.ZodUnion<readonly [z.ZodString, z.ZodArray<z.ZodString>]> {
  return z.union([z.string().min(1), z.array(z.string().min(1)).min(1)]).describe(withExamples(description, examples));
}

/** `yes` or `no`; YAML 1.2 keeps them as words and reads `true` and `false` as such, so both are taken. */
export function yesOrNo(description: string): z.ZodUnion<readonly [z.ZodEnum<{ yes: 'yes'; no: 'no' }>, z.ZodBoolean]> {
  return z.union([z.enum(['yes', 'no']), z.boolean()]).describe(description);
}

/** How the values beneath are known, unless a value says it itself as its last word. */
export function evidenceWord(): z.ZodOptional<
  z.ZodEnum<{ printed: 'printed'; marked: 'marked'; measured: 'measured'; datasheet: 'datasheet'; assumed: 'assumed' }>
> {
  return z
    .enum(['printed', 'marked', 'measured', 'datasheet', 'assumed'])
    .optional()
    .describe(
      'How the values here are known, where a value does not say it as its last word: printed, marked, measured, datasheet or assumed.',
    );
}

/** Free remark, shown beside the thing it stands with. */
export function note(): z.ZodOptional<z.ZodString> {
  return words('A remark in your own words, shown beside it.').optional();
}

function withExamples(description: string, examples: readonly string[]): string {
  return examples.length === 0 ? description : `${description} Example: ${examples.join('; ')}`;
}
