import type { DataPath } from '../diagnostics/finding.ts';
import { didYouMean } from './nearest-word.ts';
import { atValue, readingFinding, type ReadingRuleId } from './reading-rules.ts';
import type { ReadingContext } from './reading-context.ts';

/** A group that may say that it equals another one. */
interface Repeating {
  readonly 'same as'?: string | undefined;
}

/** A group with what it repeats filled in; `placeOf` is where a field is really written. */
export interface Resolved<T> {
  readonly fields: T;
  readonly placeOf: (field: string) => DataPath;
}

/** A group by its name, with its place. */
export interface Named<T> {
  readonly fields: T;
  readonly path: DataPath;
}

/**
 * Fills in what `same as` repeats: fields of the other group, overridden by what the group says itself.
 * A name that is not there and a circle are reported, and the group is taken as it stands.
 */
export function resolveRepetition<T extends Repeating>(
  context: ReadingContext,
  start: Named<T>,
  lookUp: (name: string) => Named<T> | null,
  names: { readonly rule: ReadingRuleId; readonly thing: string; readonly known: () => readonly string[] },
): Resolved<T> {
  const chain = chainFrom(context, start, lookUp, names);
  const fields = chain.reduceRight<T>((below, group) => ({ ...below, ...group.fields }), start.fields);
  const placeOf = (field: string): DataPath => {
    const holder = chain.find((group) => Reflect.get(group.fields, field) !== undefined) ?? start;
    return [...holder.path, field];
  };
  return { fields, placeOf };
}

function chainFrom<T extends Repeating>(
  context: ReadingContext,
  start: Named<T>,
  lookUp: (name: string) => Named<T> | null,
  names: { readonly rule: ReadingRuleId; readonly thing: string; readonly known: () => readonly string[] },
): readonly Named<T>[] {
  const chain = [start];
  for (let group = start; group.fields['same as'] !== undefined;) {
    const wanted = group.fields['same as'];
    const next = lookUp(wanted);
    const place = atValue([...group.path, 'same as']);
    if (next === null) {
      const advice = didYouMean(wanted, names.known()) ?? undefined;
      context.findings.push(
        readingFinding(
          names.rule,
          place,
          `There is no ${names.thing} "${wanted}" to be the same as.`,
          advice === undefined ? {} : { advice },
        ),
      );
      break;
    }
    if (chain.some((earlier) => earlier.fields === next.fields)) {
      context.findings.push(readingFinding('repetition-circle', place, `"same as: ${wanted}" leads back to where it began.`));
      break;
    }
    chain.push(next);
    group = next;
  }
  return chain;
}
