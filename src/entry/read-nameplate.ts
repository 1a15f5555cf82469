import type { DataPath } from '../diagnostics/finding.ts';
import { readSupplyInput } from '../units/read-supply-input.ts';
import type { EntryEvidence, Fact, Nameplate, PowerAtInput, PrintedCapacity } from './entry.ts';
import { accepted, listed, readFact, readPlain, readRatingFact, type ReadingContext, textsOf, written } from './reading-context.ts';
import { atKey, readingFinding } from './reading-rules.ts';
import type { EntrySource } from './schema.ts';
import { splitEvidence } from './split-evidence.ts';

/** Reads what is printed on the device. */
export function readNameplate(context: ReadingContext, source: EntrySource['nameplate']): Nameplate {
  const evidence = source?.evidence ?? 'printed';
  const inputs = listed(context, source?.input, ['nameplate', 'input']).flatMap(({ item, path }) => {
    const input = accepted(context, readSupplyInput(splitEvidence(item).text), path);
    return input === null ? [] : [input];
  });
  return {
    input: inputs[0] ?? null,
    inputs,
    output: textsOf(source?.output),
    total: readFact(context, written(source?.total, ['nameplate', 'total'], evidence), 'power'),
    peak: readFact(context, written(source?.peak, ['nameplate', 'peak'], evidence), 'power'),
    totalAtInput: readPowerAtInput(context, source?.['total at input'], ['nameplate', 'total at input']),
    capacity: readCapacity(context, source?.capacity, ['nameplate', 'capacity'], evidence),
    outputCapacity: readCapacity(context, source?.['output capacity'], ['nameplate', 'output capacity'], evidence),
    marks: textsOf(source?.marks),
    evidence,
    note: source?.note ?? null,
  };
}

/** Reads power by input voltage, in the order written. */
export function readPowerAtInput(
  context: ReadingContext,
  source: Readonly<Record<string, string>> | undefined,
  path: DataPath,
): readonly PowerAtInput[] {
  return Object.entries(source ?? {}).flatMap(([key, value]) => {
    const scratch: ReadingContext = { findings: [], gaps: context.gaps };
    const from = readPlain(scratch, key, 'voltage', [...path, key]);
    const power = readPlain(context, splitEvidence(value).text, 'power', [...path, key]);
    if (from === null) {
      context.findings.push(
        readingFinding('unreadable-value', atKey([...path, key]), `"${key}" is no voltage.`, {
          advice: 'Name the lowest input voltage: 20 V.',
        }),
      );
    }
    return from === null || power === null ? [] : [{ from, power }];
  });
}

/** Charge, voltage and energy in one line: "10000 mAh 3.7 V (37 Wh)". */
function readCapacity(context: ReadingContext, text: string | undefined, path: DataPath, evidence: EntryEvidence): PrintedCapacity | null {
  if (text === undefined) return null;
  const read = readRatingFact(context, { text: text.replace(/[()]/gu, ' '), path, evidence }, null);
  if (read.rating === null) return null;
  const { quantities } = read.rating;
  const fact = <D extends 'charge' | 'voltage' | 'energy'>(dimension: D): Fact<D> | null => {
    const quantity = quantities.find((candidate) => candidate.dimension === dimension);
    return quantity === undefined ? null : { quantity: { ...quantity, dimension }, evidence: read.evidence, path };
  };
  return { charge: fact('charge'), voltage: fact('voltage'), energy: fact('energy') };
}
