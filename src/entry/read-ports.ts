import type { DataPath } from '../diagnostics/finding.ts';
import type { Offer } from '../usb-pd/offer.ts';
import type { Connector, EntryEvidence, Port } from './entry.ts';
import { readPowerAtInput } from './read-nameplate.ts';
import { isWordList, readWordList } from './read-word-list.ts';
import { accepted, listed, readFact, type ReadingContext, textsOf, written } from './reading-context.ts';
import { atKey, readingFinding } from './reading-rules.ts';
import { readOffersOnce } from './remembered-reading.ts';
import { type Named, resolveRepetition } from './repetition.ts';
import type { EntrySource } from './schema.ts';
import { splitEvidence } from './split-evidence.ts';

type PortSource = NonNullable<EntrySource['ports']>[string];

/** Reads the ports in the order in which they stand. */
export function readPorts(context: ReadingContext, source: EntrySource['ports']): readonly Port[] {
  const groups = new Map(
    Object.entries(source ?? {}).map(([id, fields]): [string, Named<PortSource>] => [id, { fields, path: ['ports', id] }]),
  );
  return [...groups].map(([id, group]) => readPort(context, id, group, groups));
}

function readPort(context: ReadingContext, id: string, group: Named<PortSource>, groups: ReadonlyMap<string, Named<PortSource>>): Port {
  const names = { rule: 'unknown-port', thing: 'port', known: () => [...groups.keys()] } as const;
  const { fields, placeOf } = resolveRepetition(context, group, (name) => groups.get(name) ?? null, names);
  const connector = fields.connector ?? connectorByName(id);
  if (fields.connector === undefined && fields['same as'] === undefined) {
    const message = `Port ${id} has no connector.`;
    context.findings.push(
      readingFinding('missing-field', atKey(group.path), message, {
        advice: 'Add connector: USB-C, USB-A, barrel, captive cable or wireless.',
        subject: id,
      }),
    );
  }
  const offers = readOfferList(context, fields.offers, placeOf('offers'));
  return {
    id,
    connector,
    direction: fields.direction ?? 'output',
    power: readFact(context, written(fields.power, placeOf('power'), fields.evidence ?? 'printed'), 'power'),
    peak: readFact(context, written(fields.peak, placeOf('peak'), fields.evidence ?? 'printed'), 'power'),
    powerAtInput: readPowerAtInput(context, fields['power at input'], placeOf('power at input')),
    offers: withoutNegotiation(offers.offers, connector, fields.revision !== undefined),
    accepts: withoutNegotiation(
      readOfferList(context, fields.accepts, placeOf('accepts')).offers,
      connector,
      fields.revision !== undefined,
    ),
    revision: fields.revision ?? null,
    readThrough: fields['read through'] ?? null,
    protocols: textsOf(fields.protocols),
    evidence: offers.evidence ?? fields.evidence ?? 'measured',
    note: fields.note ?? null,
    path: group.path,
  };
}

/** What a port's name says of its connector, so that a port without one can still be drawn. */
function connectorByName(id: string): Connector {
  return /^a\d*$/iu.test(id) ? 'USB-A' : /^dc/iu.test(id) ? 'barrel' : 'USB-C';
}

function readOfferList(
  context: ReadingContext,
  source: string | readonly string[] | undefined,
  at: DataPath,
): { readonly offers: readonly Offer[]; readonly evidence: EntryEvidence | null } {
  let evidence: EntryEvidence | null = null;
  const items = listed<string>(context, source, at);
  if (isWordList(items)) return { offers: readWordList(context, items), evidence };
  const offers = items.flatMap(({ item, path }) => {
    const split = splitEvidence(item);
    evidence ??= split.evidence;
    return (accepted(context, readOffersOnce(split.text), path) ?? []).map((offer): Offer => ({ ...offer, path }));
  });
  return { offers, evidence };
}

/**
 * A voltage and a current at a port that negotiates none of them over USB PD are a plain output: barrel and USB-A always, a fixed cable
 * when it names one voltage and no revision. Words of a tester are left as they are.
 */
function withoutNegotiation(offers: readonly Offer[], connector: Connector, negotiates: boolean): readonly Offer[] {
  const single = connector === 'captive cable' && offers.length === 1 && !negotiates;
  if (!single && connector !== 'barrel' && connector !== 'USB-A') return offers;
  return offers.map((offer) =>
    offer.kind === 'fixed' && offer.word === null
      ? { kind: 'plain', volts: offer.volts, amps: offer.amps, written: offer.written, word: null, path: offer.path }
      : offer,
  );
}
