import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { Derived, StageGainCurve } from '../../src/derived/derived.ts';
import type { Entry } from '../../src/entry/entry.ts';
import { gainPlot, shownPairs } from '../../src/figures/gain-curve/gain-plot.ts';
import { labelRoom } from '../../src/figures/gain-curve/label-room.ts';
import { inOwnPlaces } from '../../src/figures/gain-curve/own-places.ts';
import { llcGain } from '../../src/formulas/llc/llc-gain.ts';
import { gainCurveView } from '../../src/render/gain-curve.ts';
import { gainCurveTable } from '../../src/tables/gain-curve.ts';
import { isMissing } from '../../src/values/value.ts';
import { restsOnAssumption } from '../../src/values/trace.ts';
import { anEntry, fact, portWith, stage, supply } from '../derived/an-entry.ts';

/** A tank of 124 kHz behind a PFC of 390 V; the outputs, the magnetising inductance and the lowest bus are what a test is about. */
function withTank(ports: Parameters<typeof portWith>[1][], more: Readonly<Record<string, ReturnType<typeof fact>>> = {}): Entry {
  const tank = {
    Lr: fact('75 µH', 'inductance', 'stages.main.Lr'),
    Cr: fact('22 nF', 'capacitance', 'stages.main.Cr'),
    Lm: fact('450 µH', 'inductance', 'stages.main.Lm'),
    ...more,
  };
  return anEntry(supply('AC', '85-265 V'), [portWith('C1', ...ports)], {
    stages: [
      stage('pfc', 'boost-pfc', { bus: fact('390 V', 'voltage', 'stages.pfc.bus') }),
      stage('main', 'llc-half-bridge', tank, { turns: [43, 5], feeds: ['C1'] }),
    ],
  });
}

function curveOf(entry: Entry): StageGainCurve {
  const [curve] = derive(entry).gainCurves;
  if (curve === undefined) throw new Error('the tank is known');
  return curve;
}

function viewOf(entry: Entry, derived: Derived = derive(entry)): string {
  return gainCurveView({ entry, derived, placed: [] });
}

/** The words beside the drawings. */
const said = (html: string): string => /<div class="gain-words">(.*?)<\/div>/su.exec(html)?.[1]?.replace(/<[^>]*>/gu, ' ').replace(/[\s\u00a0]+/gu, ' ') ?? ''; // prettier-ignore

describe('two corners that lie beside each other', () => {
  it('have their frequencies on the sides that they turn away from each other', () => {
    // 21 V ask for a gain of 0.93: above resonance, at no load further.
    const view = viewOf(withTank([[21, 5]]));
    const [sheet = ''] = view.split('</svg>');
    const words = [...sheet.matchAll(/<text class="num halo-text (start|end)"[^>]*>(\d+)\skHz/gu)].map(([, anchor, kilohertz]) => ({
      anchor,
      kilohertz: Number(kilohertz),
    }));
    const sorted = words.sort((one, other) => one.kilohertz - other.kilohertz).map(({ anchor }) => anchor);
    expect(sorted).toEqual(['end', 'start']);
  });
});

describe('the gain of a resonant tank', () => {
  it('is one at resonance, whatever the load', () => {
    const { loaded, noLoad } = curveOf(withTank([[20, 5]]));
    for (const pairs of [loaded[0]?.pairs ?? [], noLoad]) expect(pairs.find(([ratio]) => ratio === 1)?.[1]).toBe(1);
  });

  it('has its peak where no place of a much finer search is higher', () => {
    const [curve] = curveOf(withTank([[20, 12]])).loaded;
    const [ratio, gain] = curve?.peak ?? [NaN, NaN];
    // Quality of 75 µH and 22 nF with 20 V at 12 A through 43:5: √(Lr/Cr) over 8/π² · 8.6² · 20/12 Ω.
    const quality = Math.sqrt(75e-6 / 22e-9) / ((8 / Math.PI ** 2) * 8.6 ** 2 * (20 / 12));
    const fine = Array.from({ length: 20_000 }, (_, step) => 0.3 + step / 10_000);
    const gains = fine.map((at) => llcGain.compute({ inductanceRatio: 6, quality, frequencyRatio: at }));
    const highest = Math.max(...gains);
    expect(gain).toBeGreaterThanOrEqual(highest);
    expect(gain - highest).toBeLessThan(1e-6);
    expect(Math.abs(ratio - (fine[gains.indexOf(highest)] ?? NaN))).toBeLessThan(2e-4);
  });

  it('puts each loaded corner on the curve of its own output, and each unloaded one on the curve without load', () => {
    const curve = curveOf(withTank([[18, 3], [20, 5]])); // prettier-ignore
    const found = curve.points.filter(({ frequencyRatio }) => !isMissing(frequencyRatio));
    expect(found.length).toBeGreaterThan(2);
    for (const { name, load, gain, frequencyRatio } of found) {
      const pairs = load === 'no load' ? curve.noLoad : (curve.loaded.find((line) => `${name},`.includes(line.name.slice(3)))?.pairs ?? []);
      if (isMissing(gain) || isMissing(frequencyRatio)) throw new Error('found above');
      const behind = pairs.findIndex(([ratio]) => ratio >= frequencyRatio.nominal);
      expect(pairs[behind]?.[1]).toBeLessThanOrEqual(gain.nominal);
      expect(pairs[behind - 1]?.[1]).toBeGreaterThanOrEqual(gain.nominal);
    }
  });

  it('asks for most gain at the lowest bus that the output is held down to', () => {
    const { points } = curveOf(withTank([[20, 5]], { 'lowest bus': fact('320 V', 'voltage', 'stages.main.lowest bus') }));
    const gains = points.map(({ gain }) => (isMissing(gain) ? NaN : Number(gain.nominal.toFixed(3))));
    // 2 · 8.6 · 20 V over 390 V and over 320 V.
    expect(gains).toEqual([0.882, 0.882, 1.075, 1.075]);
  });

  it('carries the tolerances of the tank into resonance and corners', () => {
    const tolerant = withTank([[20, 5]], { Cr: fact('22 nF ± 10 %', 'capacitance', 'stages.main.Cr') });
    const [{ resonance, points }, exact] = [curveOf(tolerant), curveOf(withTank([[20, 5]]))];
    if (isMissing(resonance) || isMissing(exact.resonance)) throw new Error('the tank is known');
    expect(resonance.nominal).toBe(exact.resonance.nominal);
    // One over the root of 1.1 and of 0.9.
    expect(resonance.low / resonance.nominal).toBeLessThan(0.9535);
    expect(resonance.high / resonance.nominal).toBeGreaterThan(1.054);
    const [loaded] = points;
    if (loaded === undefined || isMissing(loaded.frequency)) throw new Error('full load is reached');
    expect(loaded.frequency.high).toBeGreaterThan(loaded.frequency.nominal);
  });

  it('takes no load for no assumption', () => {
    const unloaded = curveOf(withTank([[20, 5]])).points.find(({ load }) => load === 'no load');
    if (unloaded === undefined || isMissing(unloaded.frequencyRatio)) throw new Error('no load is reached');
    expect(restsOnAssumption(unloaded.frequencyRatio)).toBe(false);
  });

  it('is not drawn where Lm is not known', () => {
    const entry = withTank([[20, 5]]);
    const stages = entry.stages.map((one) => ({ ...one, parameters: Object.fromEntries(Object.entries(one.parameters).filter(([key]) => key !== 'Lm')) })); // prettier-ignore
    expect(viewOf({ ...entry, stages })).toBe('');
  });
});

describe('what is said of the corners', () => {
  it('names the frequency of a gain that the tank has', () => {
    expect(said(viewOf(withTank([[20, 5]])))).toMatch(
      /^ \d+ kHz at full load and \d+ kHz at no load give a gain of 0\.88 for 20 V 5 A, bus 390 V\./,
    );
  });

  it('says that an unloaded tank stays above a low output, since its gain never falls below Ln over Ln + 1', () => {
    const text = said(viewOf(withTank([[5, 3], [20, 5]]))); // prettier-ignore
    expect(text).toContain('No load stays above it at any frequency, so it has to skip cycles.');
  });

  it('says that a loaded tank does not reach a gain above its peak', () => {
    const text = said(viewOf(withTank([[20, 12]], { 'lowest bus': fact('150 V', 'voltage', 'stages.main.lowest bus') })));
    expect(text).toContain('Full load does not reach it: the largest gain of the tank is lower.');
  });

  it('stands with the measured frequency and the gain there', () => {
    const text = said(viewOf(withTank([[20, 5]], { frequency: fact('121 kHz', 'frequency', 'stages.main.frequency') })));
    // Just below the resonance of 124 kHz.
    expect(text).toContain('121 kHz , measured: there the curve at full load gives 1.01 .');
  });
});

describe('the figure of a gain curve', () => {
  const points = [[0.5, 1.2], [0.6, 1.9], [0.8, 1.4], [1, 1], [2, 0.8]] as const; // prettier-ignore

  it('is cut where it leaves the plot, and leaves out the branch below a peak that is not shown', () => {
    const shown = shownPairs(points, [0.6, 1.9], 1.5);
    expect(shown[0]?.[1]).toBe(1.5);
    expect(shown[0]?.[0]).toBeGreaterThan(0.6);
    expect(shown[0]?.[0]).toBeLessThan(0.8);
    expect(shown.slice(1)).toEqual([[0.8, 1.4], [1, 1], [2, 0.8]]); // prettier-ignore
    expect(shownPairs(points, [0.6, 1.9], 2)).toEqual(points);
  });

  it('holds resonance, every level and every corner inside its plot', () => {
    const span = (nominal: number) => ({ low: nominal * 0.97, nominal, high: nominal * 1.03 });
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 3, noNaN: true }), fc.double({ min: 1.05, max: 4, noNaN: true }), (gain, peak) => {
        const level = { words: 'x', number: '', gain: span(gain) };
        const loaded = [{ words: 'full load', pairs: [[0.4, peak / 2], [0.5, peak], [1, 1], [2, 0.7]] as const, peak: [0.5, peak] as const, peakWords: '' }]; // prettier-ignore
        const plot = gainPlot({
          ...{ id: 'g', title: '', description: '', resonance: { kilohertz: 100, words: '' }, loaded, noLoad: [], levels: [level] },
          ...{ marks: [], running: null, layout: 'sheet' },
        });
        for (const at of [gain * 1.03, gain * 0.97, 1]) {
          expect(plot.y(at)).toBeGreaterThanOrEqual(plot.top);
          expect(plot.y(at)).toBeLessThanOrEqual(plot.bottom);
        }
        expect(plot.x(1)).toBeGreaterThan(plot.left);
        expect(plot.x(1)).toBeLessThan(plot.right);
      }),
      { seed: 4 },
    );
  });

  it('has no two words in one place', () => {
    const spot = fc.record({ x: fc.integer({ min: 40, max: 260 }), y: fc.integer({ min: 20, max: 180 }) });
    fc.assert(
      fc.property(fc.array(spot, { maxLength: 12 }), (spots) => {
        const room = labelRoom({ x: 0, y: 0, width: 300, height: 200 });
        const placed = spots.flatMap((at, index) => room.find(`${String(100 + index)} kHz`, 'number', [{ ...at, anchor: 'start' }]) ?? []);
        for (const one of placed)
          for (const other of placed)
            if (one !== other) expect(Math.abs(one.x - other.x) >= 7 * 7.6 || Math.abs(one.y - other.y) >= 15).toBe(true);
      }),
      { seed: 4 },
    );
  });

  it('moves only those words at its edge that are too near to each other', () => {
    expect(inOwnPlaces([50, 100, 104, 200], 18, 0, 300)).toEqual([50, 93, 111, 200]);
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { maxLength: 14 }), (wanted) => {
        const places = [...inOwnPlaces(wanted, 18, 0, 300)].sort((one, other) => one - other);
        places.forEach((place, index) => {
          expect(place).toBeGreaterThanOrEqual(-1e-9);
          expect(place).toBeLessThanOrEqual(300 + 1e-9);
          if (index > 0) expect(place - (places[index - 1] ?? 0)).toBeGreaterThanOrEqual(18 - 1e-9);
        });
      }),
      { seed: 4 },
    );
  });

  it('has every corner in its table, and says which are not reached', () => {
    const entry = withTank([[5, 3], [20, 5]]); // prettier-ignore
    const derived = derive(entry);
    const rows = gainCurveTable.build({ entry, derived })?.groups[0]?.rows ?? [];
    const corners = rows.filter(({ id }) => id.includes('corner'));
    expect(corners).toHaveLength(derived.gainCurves[0]?.points.length ?? NaN);
    const open = corners.filter(({ cells }) => cells.some((cell) => cell.kind === 'missing' && cell.reason === 'not reached'));
    expect(open.length).toBeGreaterThan(0);
    expect(open.length).toBeLessThan(corners.length);
  });

  it('is drawn in both its forms with a title and a description', () => {
    const html = viewOf(withTank([[5, 3], [20, 5]], { frequency: fact('90–190 kHz', 'frequency', 'stages.main.frequency') })); // prettier-ignore
    expect(html.match(/<svg class="fig gain-fig/gu)).toHaveLength(2);
    expect(html).not.toMatch(/NaN|Infinity|undefined|style=/u);
    expect(html).toMatch(
      /<title id="gain-1-sheet-t">Gain of the resonant tank of main over frequency<\/title><desc id="gain-1-sheet-d">\d/u,
    );
  });
});
