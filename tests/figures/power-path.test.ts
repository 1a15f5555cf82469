import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { PathBlock, PathOutlet, PowerPath } from '../../src/derived/power-path/power-path.ts';
import { powerPathFigure } from '../../src/figures/power-path/power-path.ts';
import { pathNodes } from '../../src/figures/power-path/path-nodes.ts';
import { drawnLosses, lossScale } from '../../src/figures/power-path/losses.ts';
import { missing } from '../../src/values/missing.ts';
import { isMissing } from '../../src/values/value.ts';
import { bySlug, entriesIn } from '../demo/entries-in.ts';

const ENTRIES = entriesIn(join(import.meta.dirname, '../../demo/teardowns'));

function pathOf(slug: string): PowerPath {
  const { path } = bySlug(ENTRIES, slug).derived;
  if (path === null) throw new Error(`${slug} has no stages`);
  return path;
}

function drawn(path: PowerPath): string {
  return powerPathFigure({
    id: 'path',
    name: 'a device',
    path,
    familyLink: '/topologies/x/',
    partLink: (reference) => `#part-${reference}`,
  });
}

/** All numbers of all coordinates of the drawing. */
function isFinite(svg: string): boolean {
  return !/NaN|Infinity|undefined|null/u.test(svg);
}

const UNKNOWN = missing('not known');

function block(stage: string, from: string | null): PathBlock {
  return {
    stage,
    from,
    kind: 'buck',
    side: 'none',
    input: UNKNOWN,
    output: UNKNOWN,
    loss: UNKNOWN,
    conduction: null,
    bus: null,
    parts: [],
  };
}

function outlet(port: string, from: string | null): PathOutlet {
  return { ports: [port], from, power: UNKNOWN, note: null };
}

function unknownPath(blocks: readonly PathBlock[], outlets: readonly PathOutlet[]): PowerPath {
  const source = { kind: 'direct', name: 'supply', line: null } as const;
  return { source, blocks, outlets, input: UNKNOWN, output: UNKNOWN, loss: UNKNOWN, basis: 'unknown', set: null, notes: [] };
}

describe('the power path', () => {
  it('draws a charger with a barrier and three ways out', () => {
    expect(drawn(pathOf('marlhythe-causeway-100'))).toMatchSnapshot();
  });

  it.each(ENTRIES.map(({ slug }) => slug))('%s: every stage, every port and every named part has its place', (slug) => {
    const path = pathOf(slug);
    const svg = drawn(path);
    expect(isFinite(svg)).toBe(true);
    for (const { kind } of path.blocks) expect(svg).toContain(`href="#s-${kind}"`);
    for (const { ports } of path.outlets) expect(svg).toContain(ports.join(' + '));
    const references = [...svg.matchAll(/href="#part-([^"]+)"/gu)].map(([, reference]) => reference);
    const known = path.blocks.flatMap(({ parts }) => parts.flatMap((part) => part.references));
    expect(references.filter((reference) => !known.includes(reference ?? ''))).toEqual([]);
  });

  it('has a barrier only in a device that has one', () => {
    expect(drawn(pathOf('yarrowdene-stub-30'))).toContain('class="barrier"');
    expect(drawn(pathOf('wendlestone-fairlead-92'))).not.toContain('class="barrier"');
  });

  it('dashes a band whose power is not known and gives every way out the same width', () => {
    const path = unknownPath([block('a', null), block('b', null)], [outlet('C1', 'a'), outlet('C2', 'b')]);
    const { roots } = pathNodes(path);
    expect(roots.map(({ widthIn }) => widthIn)).toEqual([0.5, 0.5]);
    const svg = drawn(path);
    expect(svg).toContain('class="unknown-edge"');
    expect(svg).not.toContain('class="wide"');
    expect(svg).toContain('the loss is not known');
    expect(isFinite(svg)).toBe(true);
  });

  it('draws a stage that feeds a port and another stage', () => {
    const path = unknownPath([block('main', null), block('second', 'main')], [outlet('C1', 'main'), outlet('C2', 'second')]);
    const svg = drawn(path);
    expect(isFinite(svg)).toBe(true);
    expect(svg).toContain('class="bus-line"');
  });

  it('draws a device without ports and one without anything behind the stage', () => {
    expect(isFinite(drawn(unknownPath([block('main', null)], [])))).toBe(true);
    expect(isFinite(drawn(unknownPath([block('main', null)], [{ ports: [], from: 'main', power: UNKNOWN, note: null }])))).toBe(true);
  });

  it('draws conduction as an open bar with its own word where the whole loss of a stage is not known', () => {
    const svg = drawn(pathOf('marlhythe-causeway-100'));
    expect(svg.match(/<rect class="bo"/gu)?.length).toBeGreaterThan(4);
    expect(svg).toContain('>conduction</text>');
    expect(svg).toContain('open bars are conduction alone, worked out');
    expect(svg).toContain('Open bar and ≥: conduction alone in the named');
  });

  it('shows conduction inside a loss that was measured, and never adds the two', () => {
    const path = pathOf('crossgarth-bothy-45');
    const losses = drawnLosses(path);
    expect(losses.map(({ stage, isWhole }) => [stage, isWhole])).toEqual([['main', true]]);
    expect(losses[0]?.watts).toBe(isMissing(path.loss) ? null : path.loss.nominal);
    expect(losses[0]?.conduction).toBeGreaterThan(0);
    expect(drawn(path)).toMatch(/class="mono-note"[^>]*>≈ 0\.\d\d conduction</u);
  });

  it.each(ENTRIES.map(({ slug }) => slug))('%s: the bars add up to what is lost', (slug) => {
    const path = pathOf(slug);
    const sum = drawnLosses(path).reduce((all, { watts }) => all + watts, 0);
    if (isMissing(path.loss)) throw new Error('no loss');
    expect(Math.abs(sum - path.loss.nominal)).toBeLessThan(0.05);
  });

  it('names a loss beside its column where another stage stands below, since dots through that would be its own', () => {
    const svg = drawn(pathOf('wendlestone-fairlead-92'));
    expect(svg).toContain('>out C1</text>');
    expect(svg.match(/class="leaving"/gu)).toHaveLength(1);
  });

  it.each(ENTRIES.map(({ slug }) => slug))('%s: no bar of a loss stands on another one or on its words', (slug) => {
    const [sheet = ''] = drawn(pathOf(slug)).split('</svg><svg');
    const bars = [...sheet.matchAll(/<rect class="bo?" x="([\d.]+)" y="([\d.]+)" width="18"/gu)].map(([, x]) => Number(x));
    const places = [...new Set(bars)].sort((one, other) => one - other);
    expect(places.length).toBe(drawnLosses(pathOf(slug)).length);
    for (const [index, x] of places.entries()) expect(x - (places[index - 1] ?? -Infinity)).toBeGreaterThan(88);
  });

  it('states the scale of the losses as a power of two that fits the room', () => {
    const losses = [{ watts: 6.4 }];
    const times = lossScale(losses, 1.18, 64);
    expect(times).toBe(8);
    expect(6.4 * 1.18 * times).toBeLessThanOrEqual(64);
    expect(6.4 * 1.18 * times * 2).toBeGreaterThan(64);
  });
});
