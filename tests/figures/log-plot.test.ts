import { describe, expect, test } from 'vitest';
import { logPlot } from '../../src/figures/log-plot.ts';
import { timeAxis } from '../../src/figures/time-axis.ts';
import { foldBackLog } from '../logs/a-log-summary.ts';

const panelsOf = (markup: string): readonly string[] => markup.split('<svg class="fig log-panel"').slice(1);

describe('the plot of a log', () => {
  const panels = panelsOf(logPlot(foldBackLog(), 'log-1'));

  test('has a panel for power, volts and amperes, the power first, each named with its unit', () => {
    expect(panels.map((panel) => /<text x="7" y="14">([^<]+)</.exec(panel)?.[1])).toEqual(['power, W', 'voltage, V', 'current, A']);
  });

  test('says in words what it shows, under ids of its own', () => {
    expect(panels[0]).toContain('<title id="log-1-1-t">Power in W over time, log full load</title>');
    expect(panels[0]).toMatch(/<desc id="log-1-1-d">Mean [\d.]+\sW; lowest 65\.00\sW at 10\.0\smin, highest 100\.0\sW at 0/u);
    expect(new Set(panels.map((panel) => /aria-labelledby="([^"]+)"/.exec(panel)?.[1])).size).toBe(3);
  });

  test('marks both exact extremes where they are on the time axis', () => {
    // 65 W is reached with the row at 600 s of 2400 s, 100 W with the first.
    expect(panels[0]).toMatch(/<circle class="extreme" cx="25%"/);
    expect(panels[0]).toMatch(/<circle class="extreme" cx="0%"/);
  });

  test('draws its curve in whole numbers that stay on its grid', () => {
    const path = /class="wide trace" d="M(\d+) (\d+)l([^"]+)"/.exec(panels[2] ?? '');
    let [x, y] = [Number(path?.[1]), Number(path?.[2])];
    const steps = (path?.[3] ?? '').split(' ').map(Number);
    for (let at = 0; at < steps.length; at += 2) {
      x += steps[at] ?? NaN;
      y += steps[at + 1] ?? NaN;
      expect(x >= 0 && x <= 4000 && y >= 0 && y <= 400).toBe(true);
    }
    expect(x).toBe(4000);
  });

  test('names an event once and draws its line through every panel', () => {
    const withEvent = panelsOf(logPlot(foldBackLog({ events: { '10 min': 'lid & box closed' } }), 'log-1'));
    expect(withEvent.map((panel) => panel.includes('lid &amp; box closed'))).toEqual([true, false, false]);
    expect(withEvent.every((panel) => panel.includes('class="hidden-edge" x1="25%"'))).toBe(true);
  });

  test('has no inline style, which the policy of the pages would drop', () => {
    expect(logPlot(foldBackLog(), 'log-1')).not.toMatch(/ style=/);
  });
});

test('a time axis is in seconds, minutes or hours, whichever its length asks for', () => {
  expect([40, 180, 181, 3600, 10_801].map((seconds) => timeAxis(seconds).unit)).toEqual(['s', 's', 'min', 'min', 'h']);
  expect(timeAxis(3600).ticks.map(({ words }) => words)).toEqual(['0', '10', '20', '30', '40', '50', '60']);
  expect(timeAxis(0).ticks.length).toBeGreaterThan(1);
});
