import type { InsulationPlace } from './entry.ts';
import { isYes, readFact, type ReadingContext, textsOf, type Written, written } from './reading-context.ts';
import type { EntrySource } from './schema.ts';

type PlaceFields = NonNullable<EntrySource['insulation']>[string];

/** Reads insulation distances; measured unless the entry says otherwise. */
export function readInsulation(context: ReadingContext, source: EntrySource['insulation']): readonly InsulationPlace[] {
  return Object.entries(source ?? {}).map(([id, fields]) => readPlace(context, id, fields));
}

function readPlace(context: ReadingContext, id: string, fields: PlaceFields): InsulationPlace {
  const path = ['insulation', id];
  const field = (key: string, text: string | undefined): Written | null => written(text, [...path, key], fields.evidence ?? 'measured');
  return {
    id,
    between: fields.between ?? null,
    kind: fields.kind ?? null,
    clearance: readFact(context, field('clearance', fields.clearance), 'length'),
    creepage: readFact(context, field('creepage', fields.creepage), 'length'),
    slot: readFact(context, field('slot', fields.slot), 'length'),
    thickness: readFact(context, field('thickness', fields.thickness), 'length'),
    sheet: isYes(fields.sheet),
    workingVoltage: readFact(context, field('working voltage', fields['working voltage']), 'voltage'),
    withstand: readFact(context, field('withstand', fields.withstand), 'voltage'),
    materialGroup: fields['material group'] ?? null,
    pollutionDegree: fields['pollution degree'] ?? null,
    altitude: readFact(context, field('altitude', fields.altitude), 'length'),
    method: fields.method ?? null,
    alsoStated: textsOf(fields['also stated']),
    note: fields.note ?? null,
    path,
  };
}
