import type { PowerPath } from '../../derived/power-path/power-path.ts';
import { escapeText, px } from '../markup.ts';
import { conductionWatts, type DrawnLoss, drawnLosses, lossScale, lossWords } from './losses.ts';
import type { PathNode } from './path-nodes.ts';
import { blockHeight, busPlace, SHEET, type Placed } from './place-across.ts';

/** Steps of the axis, in watts. */
const TICKS: readonly number[] = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];

/** Losses on their own axis, each under its stage and joined by dots; branches side by side with their names. */
export function lossAxis(
  path: PowerPath,
  placed: ReadonlyMap<PathNode, Placed>,
  scale: number,
  y: number,
): { readonly svg: string; readonly height: number } {
  const losses = drawnLosses(path);
  if (losses.length === 0) return { svg: '', height: 0 };
  const times = lossScale(losses, scale, 64);
  const perWatt = scale * times;
  const spots = lossSpots(losses, placed, scale);
  const about = path.basis === 'by efficiency' ? '≈ ' : '';
  const bars = losses.map((loss, index) => {
    const spot = spots[index];
    return spot === undefined ? '' : lossBar(loss, spot, y, perWatt, about);
  });
  const step = TICKS.find((one) => one * perWatt >= 18) ?? 100;
  const deepest = Math.max(step, ...losses.map(({ watts: lost }) => lost)) * perWatt;
  const axis = `<path class="med" d="M${SHEET.start} ${px(y + 22)}H${px(Math.max(SHEET.tips + 14, ...spots.map(({ x }) => x + LABEL)))}M${SHEET.start} ${px(y + 22)}V${px(y + 22 + deepest)}"/>${ticks(perWatt, step, deepest, y + 22)}`;
  const height = 22 + Math.max(deepest, losses.some(({ conduction }) => conduction !== null) ? 40 : 24) + 26;
  return {
    svg: `${axis}${bars.join('')}<text class="end" x="${SHEET.tips + 14}" y="${px(y + height - 6)}">${escapeText(lossWords(losses, times, path))}</text>`,
    height,
  };
}

/** Room that the words beside a bar take. */
const LABEL = 88;

/** Filled as far as it was measured, open as far as conduction alone is worked out; the open part stands inside a measured loss. */
function lossBar({ watts: lost, conduction, isWhole }: DrawnLoss, spot: LossSpot, y: number, perWatt: number, about: string): string {
  const dots = spot.from === null ? '' : `<path class="leaving" d="M${px(spot.x)} ${px(spot.from)}V${px(y + 22)}"/>`;
  const name = spot.name === null ? '' : `<text x="${px(spot.x + 15)}" y="${px(y + 15)}">${escapeText(spot.name)}</text>`;
  const bar = (className: string, height: number): string =>
    `<rect class="${className}" x="${px(spot.x - 9)}" y="${px(y + 22)}" width="18" height="${px(height)}"/>`;
  const line = (className: string, at: number, words: string): string =>
    `<text class="${className}" x="${px(spot.x + 15)}" y="${px(y + at)}">${words}</text>`;
  const open = conduction === null ? '' : bar('bo', Math.max(1, Math.min(conduction, lost) * perWatt));
  if (!isWhole) return dots + name + open + line('num', 38, about + conductionWatts(lost)) + line('mono-note', 54, 'conduction');
  const part = conduction === null ? '' : line('mono-note', 54, `${about}${conductionWatts(conduction)} conduction`);
  return dots + name + bar('b', lost * perWatt) + open + line('num', 38, about + lost.toFixed(1)) + part;
}

function ticks(perWatt: number, step: number, deepest: number, y: number): string {
  const count = Math.floor(deepest / (step * perWatt) + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => {
    const value = index * step;
    const at = y + value * perWatt;
    const unit = index === count ? ' W' : '';
    return `<path class="thin" d="M${SHEET.start} ${px(at)}h-5"/><text class="end mono-note" x="${SHEET.start - 9}" y="${px(at + 4.5)}">${Number(value.toFixed(1))}${unit}</text>`;
  }).join('');
}

/** Distance of bars that stand in a row beside their column. */
const BESIDE = 92;

interface LossSpot {
  readonly x: number;
  /** Where the dotted line starts; null where the bar stands beside its column with its name. */
  readonly from: number | null;
  /** Word above the bar, where it does not stand under its own stage. */
  readonly name: string | null;
}

/** Each stage over its own bar; where several stand in one column, in a row with their names, so that no dots run through another; what is not split under the place where the band narrows. */
function lossSpots(losses: readonly DrawnLoss[], placed: ReadonlyMap<PathNode, Placed>, scale: number): readonly LossSpot[] {
  const stages = losses.map(({ stage }) => stage);
  const blocks = [...placed.values()].filter(({ node }) => node.block !== null);
  const ofStage = (stage: string | null): Placed | undefined => blocks.find(({ node }) => node.block?.stage === stage);
  const isShared = (place: Placed | undefined): boolean => blocks.filter(({ x }) => x === place?.x).length !== 1;
  const shared = stages.filter((stage) => stage !== null && isShared(ofStage(stage))).length;
  const step = losses.some(({ isWhole, conduction }) => isWhole && conduction !== null) ? BESIDE + 40 : BESIDE;
  const last = Math.max(SHEET.start, ...blocks.map(({ x }) => x));
  let beside = Math.min(last, SHEET.width - LABEL - (shared - 1) * step) - step;
  const own = stages.flatMap((stage): LossSpot[] => {
    if (stage === null) return [];
    const place = ofStage(stage);
    if (place !== undefined && !isShared(place)) return [{ x: place.x, from: below(place, scale), name: null }];
    beside += step;
    return [{ x: beside, from: null, name: stage }];
  });
  // What is not split comes last.
  if (own.length === stages.length) return own;
  return [...own, besideOthers(narrowing(placed, scale, own.length > 0 ? 'the rest' : 'all stages'), own)];
}

/** What is not split stands clear of the bar and the words of a stage; moved away from its place it has its name and no dots. */
function besideOthers(spot: LossSpot, others: readonly LossSpot[]): LossSpot {
  const near = others.filter(({ x }) => x <= spot.x && spot.x - x < LABEL + 12);
  return near.length === 0 ? spot : { ...spot, x: Math.max(...near.map(({ x }) => x)) + LABEL + 12, from: null };
}

/** Where the band narrows to what comes out: at the first bus line, else behind the last block. */
function narrowing(placed: ReadonlyMap<PathNode, Placed>, scale: number, name: string): LossSpot {
  for (const place of placed.values()) {
    if (place.node.children.length < 2) continue;
    const next = place.node.children.flatMap((child) => placed.get(child) ?? []);
    return { x: busPlace(place.x + SHEET.block / 2, next), from: place.y + blockHeight(place.node, scale) / 2 + 4, name };
  }
  const last = [...placed.values()].filter(({ node }) => node.block !== null).sort((one, other) => other.x - one.x)[0];
  return last === undefined ? { x: SHEET.start + 60, from: null, name } : { x: last.x, from: below(last, scale), name };
}

/** Below a block and the references under it. */
function below({ node, y }: Placed, scale: number): number {
  return y + blockHeight(node, scale) / 2 + 38;
}
