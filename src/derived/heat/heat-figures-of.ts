import type { Entry } from '../../entry/entry.ts';
import { powerLoss } from '../../formulas/energy/power-loss.ts';
import { boxSurface } from '../../formulas/geometry/box-surface.ts';
import { boxSurfaceTemperature } from '../../formulas/thermal/box-surface-temperature.ts';
import { heatFlux } from '../../formulas/thermal/heat-flux.ts';
import type { Source } from '../../values/value.ts';
import { valueOf } from '../../values/from-quantity.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { loadWords, measuredLoads, type MeasuredLoad } from '../power-path/measured-point.ts';
import { isMetal } from './case-material.ts';
import { pathTree } from '../power-path/path-tree.ts';
import { wholeLoads } from '../power-path/path-input.ts';
import type { PowerPath } from '../power-path/power-path.ts';
import { capacitorLives } from './capacitor-lives.ts';
import { contactLimits } from './contact-limits.ts';
import type { HeatFigures, HotSpot } from './heat-figures.ts';
import { hotSpots } from './hot-spots.ts';
import { contactOf } from './touch-contact.ts';

const HANDBOOK: Source = {
  title: 'Incropera, Fundamentals of Heat and Mass Transfer',
  section: 'chapter 9; the faces of an adapter lie below the range of the correlations',
  standing: 'secondary',
};
const PRACTICE: Source = { title: 'Common practice', section: 'plastic and painted cases', standing: 'common practice' };

/** What the loss at full load does to the case, beside what was measured on it. */
export function heatFigures(entry: Entry, path: PowerPath | null): HeatFigures {
  const spots = hotSpots(entry);
  const { loss, at } = greatestLoss(entry, path);
  const edges = edgesOf(entry);
  const surface = applyFormula(boxSurface, edges);
  return {
    loss,
    at,
    surface,
    flux: applyFormula(heatFlux, { loss, area: surface }),
    temperature: isMetal(entry) ? missing(BARE_METAL, ['emissivity']) : temperatureOf(loss, edges, ambientOf(spots)),
    spots,
    contacts: contactLimits(spots, contactOf(entry)),
    lives: capacitorLives(entry),
  };
}

const BARE_METAL = 'a bare metal case radiates little, and how little is not known';

function temperatureOf(loss: Known<'power'>, edges: Edges, ambient: Known<'temperature'>): Known<'temperature'> {
  return applyFormula(boxSurfaceTemperature, {
    loss,
    ...edges,
    ambient,
    emissivity: assume('ratio', 0.85, 0.9, 0.95, 'emissivity of plastic', PRACTICE),
    correlation: assume('ratio', 0.8, 1, 1.2, 'the correlations are good to ±20 % of the rise', HANDBOOK),
  });
}

/** Air temperature of the first measured spot, so that computed and measured stand side by side. */
function ambientOf(spots: readonly HotSpot[]): Known<'temperature'> {
  const known = spots.map((spot) => spot.ambient).find((ambient) => !isMissing(ambient));
  return known ?? assume('temperature', 25, 25, 25, 'air temperature not given', PRACTICE);
}

/** The greatest loss that was measured: at one load, or of ports measured one at a time together. */
function greatestLoss(entry: Entry, path: PowerPath | null): Pick<HeatFigures, 'loss' | 'at'> {
  if (path?.basis === 'one port at a time') return { loss: path.loss, at: 'full load of each port, added' };
  const load = hottest(path === null ? measuredLoads(entry, null) : wholeLoads(entry, pathTree(entry), path.outlets));
  if (load === null) return { loss: missing('no load point of the whole device measured', ['efficiency']), at: null };
  const words = [load.point.line?.quantity.written ?? null, loadWords(load)].filter((word) => word !== null);
  return { loss: applyFormula(powerLoss, { input: load.input, output: load.output }), at: words.join(', ') };
}

function hottest(loads: readonly MeasuredLoad[]): MeasuredLoad | null {
  const lost = ({ input, output }: MeasuredLoad): number => input.nominal - output.nominal;
  return loads.reduce<MeasuredLoad | null>((most, load) => (most === null || lost(load) > lost(most) ? load : most), null);
}

interface Edges {
  readonly length: Known<'length'>;
  readonly width: Known<'length'>;
  readonly height: Known<'length'>;
}

/** The outer edges; the last one stands upright. Only a case gives off heat in this way, and only a box has faces. */
function edgesOf({ body }: Entry): Edges {
  const size = body.size;
  const none = (reason: string): Edges => {
    const gone = missing(reason, ['outer size']);
    return { length: gone, width: gone, height: gone };
  };
  if (size === null) return none('size not known');
  if (body.basis !== 'cased') return none('only the board was measured');
  if (size.size.shape !== 'box') return none('not a box: the correlations here are for plane faces');
  const [length, width, height] = size.size.edges;
  const at = size.path.join('.');
  const edge = (quantity: typeof length): Known<'length'> => valueOf({ ...size, quantity }, at);
  return { length: edge(length), width: edge(width), height: edge(height) };
}
