import type { Derived } from '../../derived/derived.ts';
import type { Entry, Part, Port } from '../../entry/entry.ts';
import { photoLengths } from '../../derived/photo-lengths/photo-lengths.ts';
import type { PublishedPhoto } from '../published-photo.ts';
import { traitsOf } from '../traits-of.ts';
import type { DeviceData } from './device-schema.ts';
import { partIds } from './part-ids.ts';
import { factData, knownData, quantityData } from './number-data.ts';

/**
 * One teardown as data for others: identifiers that stay, SI units, and the evidence of every number. Terms of use are those of the
 * descriptor that it names.
 *
 * @param photos as published, in the order of the entry; null for one that was not
 */
export function deviceData(entry: Entry, derived: Derived, photos: readonly (PublishedPhoto | null)[]): DeviceData {
  const { device } = entry;
  const { isolated, rectification } = traitsOf(entry, derived);
  const ids = partIds(entry);
  return {
    $schema: '../../data/device.schema.json',
    id: entry.slug,
    number: entry.number,
    revision: derived.revision,
    title: entry.title,
    published: entry.published,
    termsOfUse: '../../data/datapackage.json',
    author: entry.author,
    maker: device.maker,
    name: device.name,
    model: device.model,
    kind: device.kind,
    released: device.released,
    price: device.price === null ? null : { amount: device.price.amount, currency: device.price.currency },
    topology: { family: derived.family, words: derived.topology, isolated, rectification },
    stages: entry.stages.map(stageData),
    ports: entry.ports.map(portData),
    parts: entry.parts.map((part, index) => partData(ids[index] ?? '', part)),
    derived: Object.fromEntries(Object.entries(derived.named).map(([name, known]) => [name, knownData(known)])),
    stress: derived.stress.map((row) => ({
      references: [...row.references],
      role: row.role,
      quantity: row.quantity,
      stress: knownData(row.stress),
      rating: knownData(row.rating),
      ratio: knownData(row.ratio),
      limit: row.limit,
      policy: row.policy,
      verdict: row.verdict,
    })),
    ...measuredData(entry),
    photos: photosData(entry, photos),
    corrections: entry.corrections.map(({ date, where, was, is, why }) => ({ date, where, was, is, why })),
  };
}

function measuredData(entry: Entry): Pick<DeviceData, 'measurements' | 'efficiency'> {
  return {
    measurements: entry.measurements.map(({ subject, value, conditions, instrument }) => ({
      subject,
      value: quantityData(value.quantity, value.evidence),
      conditions: { ...conditions },
      instrument,
    })),
    efficiency: entry.efficiency.map(efficiencyData),
  };
}

/** The photos with what was measured in them; the pictures themselves stand on the page. */
function photosData(entry: Entry, photos: readonly (PublishedPhoto | null)[]): DeviceData['photos'] {
  const lengths = photoLengths(entry, photos);
  return entry.photos.map(({ alt, scale }, index) => ({
    photo: index + 1,
    width: photos[index]?.width ?? null,
    height: photos[index]?.height ?? null,
    alternative: alt,
    scale:
      scale === null
        ? null
        : { from: [...scale.from], to: [...scale.to], length: quantityData(scale.length.quantity, scale.length.evidence) },
    lengths: lengths
      .filter(({ photo }) => photo === index + 1)
      .map(({ name, place, from, to, length }) => ({ name, place, from: [...from], to: [...to], length: knownData(length) })),
  }));
}

/** A point as it was measured; `loads` holds each of several ports that were loaded at once. */
function efficiencyData(point: Entry['efficiency'][number]): DeviceData['efficiency'][number] {
  const { statistic, port, line, output, measuredOutput, current, load, loads, input, efficiency } = point;
  return {
    statistic,
    port,
    line: factData(line),
    output: factData(output),
    loads: loads.map((each) => ({
      port: each.port,
      output: factData(each.output),
      measuredOutput: factData(each.measuredOutput),
      current: factData(each.current),
      power: factData(each.power),
    })),
    measuredOutput: factData(measuredOutput),
    current: factData(current),
    load: factData(load),
    input: factData(input),
    efficiency: factData(efficiency),
    notSustained: point.notSustained,
  };
}

function stageData(stage: Entry['stages'][number]): DeviceData['stages'][number] {
  const { id, kind, mode, turns, feeds, parameters, reset } = stage;
  const known = Object.entries(parameters).map(([key, fact]) => [key, quantityData(fact.quantity, fact.evidence)] as const);
  return {
    id,
    kind,
    mode,
    turns: [...turns],
    turnsRatio: writtenRatio(stage),
    reset: reset?.written ?? null,
    feeds: [...feeds],
    parameters: Object.fromEntries(known),
  };
}

function writtenRatio({ turnsRatio }: Entry['stages'][number]): string | null {
  if (turnsRatio === null) return null;
  if (turnsRatio.by === 'ratio') return turnsRatio.ratio.quantity.written;
  return `${turnsRatio.primary.quantity.written} : ${turnsRatio.secondary.quantity.written}`;
}

function portData({ id, connector, direction, power, offers }: Port): DeviceData['ports'][number] {
  return { id, connector, direction, power: factData(power), offers: offers.map((offer) => offer.written) };
}

function partData(id: string, part: Part): DeviceData['parts'][number] {
  const { role, stage, maker, number, marking, technology, rating, evidence, fitting } = part;
  return {
    id,
    references: [...part.references],
    role,
    stage,
    maker,
    number,
    marking,
    package: part.package,
    technology,
    rating: rating?.written ?? null,
    quantities: (rating?.quantities ?? []).map((quantity) => quantityData(quantity, evidence)),
    evidence,
    fitting,
    pieces: part.count,
    fromFactSheet: [...(part.fromFactSheet ?? [])],
  };
}
