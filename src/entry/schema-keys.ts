import { z } from 'zod';
import type { DataPath } from '../diagnostics/finding.ts';

/** Keys that the format knows at a path of the data; empty where keys are free or the path leads nowhere. */
export function keysAt(schema: z.core.$ZodType, path: DataPath): readonly string[] {
  let reached: readonly z.core.$ZodType[] = branches(schema);
  for (const segment of path) reached = reached.flatMap((each) => branches(stepInto(each, segment)));
  return reached.flatMap((each) => (each instanceof z.ZodObject ? Object.keys(each.shape) : []));
}

/** The alternatives of a schema, optional wrappers taken off. */
function branches(schema: z.core.$ZodType | null): readonly z.core.$ZodType[] {
  if (schema === null) return [];
  if (schema instanceof z.ZodOptional) return branches(schema.unwrap());
  if (schema instanceof z.ZodUnion) return schema.options.flatMap((option) => branches(option));
  return [schema];
}

function stepInto(schema: z.core.$ZodType, segment: string | number): z.core.$ZodType | null {
  if (schema instanceof z.ZodObject) {
    const field: unknown = Object.hasOwn(schema.shape, segment) ? Reflect.get(schema.shape, segment) : null;
    return field instanceof z.ZodType ? field : null;
  }
  if (schema instanceof z.ZodRecord) return schema.valueType;
  if (schema instanceof z.ZodArray) return schema.element;
  return null;
}
