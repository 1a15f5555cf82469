import { describe, expect, it } from 'vitest';
import { offersView } from '../../src/render/offers.ts';
import { reading } from '../entry/reading.ts';

const YAML = `ports:
  C1: { connector: USB-C, power: 140 W, offers: [5 V 3 A, 9 V 3 A, 15 V 3 A, 20 V 5 A, 28 V 5 A, EPR AVS 15-28 V 140 W] }
  C2: { connector: USB-C, power: 65 W, offers: [5 V 3 A, 9 V 3 A, 15 V 3 A, 20 V 3.25 A, PPS 5-21 V 3.25 A] }
  A1: { connector: USB-A, power: 12 W, offers: 5 V 2.4 A }
  IN: { connector: barrel, direction: input, accepts: 19 V 3.42 A }`;

describe('the offers of a device', () => {
  const html = offersView(reading(YAML).entry);

  it('are a figure an output, and a table of the same numbers', () => {
    expect(html.match(/<figure/g)).toHaveLength(3);
    expect(html.match(/<table/g)).toHaveLength(1);
    expect(html).not.toContain('IN</b>');
  });

  it('stand on the same axes: 48 V is named at the port that ends at 5 V too', () => {
    const figures = html.split('<figure').slice(1);
    for (const figure of figures) expect(figure).toContain('>48</text>');
  });

  it('say what they are and which cable they need', () => {
    expect(html).toContain('USB PD, EPR AVS; above 20\u00a0V with a 240\u00a0W cable');
    expect(html).toContain('USB PD, PPS; above 3\u00a0A with a 5\u00a0A cable');
    expect(html).toContain('one voltage, not negotiated');
  });

  it('are told in words to readers of text', () => {
    expect(html).toContain(
      '<desc id="offers-c2-d">5 V 3 A, 15 W; 9 V 3 A, 27 W; 15 V 3 A, 45 W; 20 V 3.25 A, 65 W; PPS 5–21 V 3.25 A, 65 W at 20 V. Rated 65 W.</desc>',
    );
  });

  it('put the table beside the figure where there is one output only', () => {
    const one = offersView(reading('ports:\n  C1: { connector: USB-C, power: 20 W, offers: [5 V 3 A, 9 V 2.22 A] }').entry);
    expect(one).toMatch(/^<div class="envelopes"><figure.*<\/figure><div><table/s);
  });
});
