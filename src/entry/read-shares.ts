import type { DataPath, Finding } from '../diagnostics/finding.ts';
import type { Share } from './entry.ts';
import { piecesBetween } from './pieces-between.ts';
import { readPlain, type ReadingContext } from './reading-context.ts';
import { atValue, readingFinding } from './reading-rules.ts';
import { splitEvidence } from './split-evidence.ts';

/** Sets of ports that are known to draw on one pool, from other lines of the same entry. */
export type KnownPools = readonly (readonly string[])[];

/**
 * Reads the powers of one allocation and gives them to its groups of ports: one power a group; one power alone for one pool of
 * all ports ("15 W shared", and in print "C2+A: 15 W"); "each" for the same power at every port.
 * Fewer powers than ports are matched through a pool that the entry names elsewhere, and refused otherwise.
 */
export function readShares(
  context: ReadingContext,
  groups: readonly (readonly string[])[],
  value: string,
  place: { readonly path: DataPath; readonly shift: number },
  pools: KnownPools,
): readonly Share[] | null {
  const text = value.replace(/\s+(?:shared|each)\s*$/iu, '');
  const each = /\beach\s*$/iu.test(value);
  const powers = readPowers(context, text, place);
  if (powers === null) return null;
  const ports = groups.flat();
  const [first] = powers;
  if (powers.length === groups.length) return groups.map((group, index) => share(group, powers[index] ?? first));
  if (powers.length === 1 && each) return ports.map((port) => share([port], first));
  if (powers.length === 1) return [share(ports, first)];
  const pooled = throughPool(ports, powers.length, pools);
  if (pooled !== null) return pooled.map((group, index) => share(group, powers[index] ?? first));
  context.findings.push(mismatch(groups, powers, value, place));
  return null;
}

/** A power with the evidence that stands beside it. */
type ReadPower = Omit<Share, 'ports'>;

function share(ports: readonly string[], power: ReadPower | undefined): Share {
  // Callers pass as many powers as groups; a power that is not there would be a fault of this file.
  if (power === undefined) throw new RangeError('an allocation without a power');
  return { ports, ...power };
}

function readPowers(
  context: ReadingContext,
  text: string,
  place: { readonly path: DataPath; readonly shift: number },
): readonly ReadPower[] | null {
  const powers =
    text.trim() === ''
      ? []
      : piecesBetween(text, /\+/u).map(({ piece, start }) => readPower(context, piece, place.path, place.shift + start));
  const read = powers.filter((power) => power !== null);
  if (read.length === powers.length && read.length > 0) return read;
  if (powers.length === 0)
    context.findings.push(
      readingFinding('unreadable-value', atValue(place.path), 'No power stands here.', { advice: 'Write one power a port: 65 W + 30 W.' }),
    );
  return null;
}

function readPower(context: ReadingContext, piece: string, path: DataPath, start: number): ReadPower | null {
  const { text, evidence } = splitEvidence(piece);
  if (text === '') {
    // The plus sign is what can be pointed at: nothing stands where the power should.
    const span = { start: Math.max(0, start - 1), end: Math.max(1, start) };
    context.findings.push(
      readingFinding('unreadable-value', atValue(path, span), 'A power is missing beside this plus sign.', {
        advice: 'Write one power a port: 65 W + 30 W.',
      }),
    );
    return null;
  }
  const power = readPlain(context, text, 'power', path, start);
  return power === null ? null : { power, ...(evidence === null ? {} : { evidence }) };
}

/** Ports in their order, with the one known pool that makes them as many groups as there are powers. */
function throughPool(ports: readonly string[], count: number, pools: KnownPools): readonly (readonly string[])[] | null {
  const fitting = pools.filter((pool) => pool.length === ports.length - count + 1 && pool.every((port) => ports.includes(port)));
  const [pool] = fitting;
  if (pool === undefined || fitting.length > 1) return null;
  const first = ports.findIndex((port) => pool.includes(port));
  return ports.flatMap((port, index) => (index === first ? [pool] : pool.includes(port) ? [] : [[port]]));
}

function mismatch(
  groups: readonly (readonly string[])[],
  powers: readonly ReadPower[],
  value: string,
  place: { readonly path: DataPath; readonly shift: number },
): Finding {
  const ports = groups.flat();
  const message = `${ports.join(' + ')} are ${groups.length} and "${value}" has ${powers.length} powers.`;
  const tail = ports.slice(powers.length - 1);
  const bracketed = [...ports.slice(0, powers.length - 1), `(${tail.join(' + ')})`].join(' + ');
  const advice =
    powers.length < ports.length ? `Bracket the ports that share one power: ${bracketed}: ${value.trim()}` : 'Give one power a port.';
  return readingFinding('shares-mismatch', atValue(place.path, { start: place.shift, end: place.shift + value.length }), message, {
    advice,
    subject: ports.join(' + '),
  });
}
