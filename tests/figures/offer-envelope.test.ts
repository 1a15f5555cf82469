import { describe, expect, it } from 'vitest';
import { envelopeAxes } from '../../src/figures/envelope-axes.ts';
import { offerEnvelope } from '../../src/figures/offer-envelope.ts';
import { readOffers } from '../../src/usb-pd/read-offers.ts';
import type { ReadOffer } from '../../src/usb-pd/offer-list.ts';

function offersOf(text: string): readonly ReadOffer[] {
  const reading = readOffers(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.remarks));
  return reading.value;
}

function drawn(text: string, watts: number | null = null, among: string = text): string {
  const offers = offersOf(text);
  return offerEnvelope({ id: 'p', port: 'C1', watts, offers, description: text, axes: envelopeAxes(offersOf(among)) });
}

/** Plot of the axes 0 to 22 V and 0 to 6 A: left, right, bottom and top in pixels. */
const FIELD = { left: 30, right: 338, bottom: 186, top: 26 };

function x(volts: number, end = 22): number {
  return Math.round((FIELD.left + ((FIELD.right - FIELD.left) * volts) / end) * 100) / 100;
}

function y(amps: number): number {
  return Math.round((FIELD.bottom - ((FIELD.bottom - FIELD.top) * amps) / 6) * 100) / 100;
}

const HUNDRED = '5V 3A, 9V 3A, 15V 3A, 20V 5A, PPS 3.3-21V 5A';
const EPR = '5V 3A, 9V 3A, 15V 3A, 20V 5A, 28V 5A, EPR AVS 15-28V 100W';

describe('the axes', () => {
  it('end at 22 V, and at 50 V as soon as one port of the device goes above', () => {
    expect(envelopeAxes(offersOf(HUNDRED)).volts).toBe(22);
    expect(envelopeAxes(offersOf(EPR)).volts).toBe(50);
    expect(drawn('5V 3A', null, EPR)).toContain(`M${x(5, 50)} ${y(0)}V${y(3)}`);
  });

  it('name the voltages that are offered, where there is room', () => {
    expect(envelopeAxes(offersOf('5V 3A, 9V 3A, 12V 3A, 15V 3A, 20V 3A')).ticks).toEqual([0, 5, 9, 12, 15, 20]);
    expect(envelopeAxes(offersOf(EPR)).ticks).toEqual([0, 5, 9, 15, 20, 28, 36, 48]);
  });

  it('grow with a barrel that carries more than 6 A', () => {
    expect(envelopeAxes([{ kind: 'plain', volts: 19.5, amps: 9.23 }])).toMatchObject({ volts: 22, amps: 11 });
    expect(envelopeAxes([{ kind: 'plain', volts: 54, amps: 2 }]).volts).toBeGreaterThan(54);
  });
});

describe('a fixed offer', () => {
  it('is a stem with a square at its volts and amperes, and the amperes above', () => {
    const svg = drawn('9V 2.22A');
    expect(svg).toContain(`M${x(9)} ${y(0)}V${y(2.22)}`);
    expect(svg).toMatch(/<rect class="solid"[^>]*width="9" height="9"\/><text class="num mid amps"[^>]*>2.22<\/text>/);
  });

  it('keeps its number clear of a neighbour’s', () => {
    const heights = [...drawn('9V 2.22A, 10V 2.25A', null, '48V 5A').matchAll(/mid amps" x="[\d.]+" y="([\d.]+)"/g)].map((match) =>
      Number(match[1]),
    );
    expect(Math.abs((heights[0] ?? 0) - (heights[1] ?? 0))).toBeGreaterThan(12);
  });
});

describe('a range', () => {
  it('of PPS is a field from its lowest to its highest voltage', () => {
    expect(drawn('PPS 3.3-21V 5A')).toContain(
      `<path class="field" d="M${x(3.3)},${y(0)}L${x(3.3)},${y(5)}L${x(21)},${y(5)}L${x(21)},${y(0)}"/>`,
    );
  });

  it('that is power limited is cut by its nominal watts', () => {
    const svg = drawn('PPS 5-21V 5A (power limited)');
    expect(svg).toContain(`L${x(20)},${y(5)}L`);
    expect(svg).toContain(`L${x(21)},${y(100 / 21)}L${x(21)},${y(0)}`);
  });

  it('of EPR AVS carries 5 A to its knee and then its watts', () => {
    const svg = drawn(EPR);
    expect(svg).toContain(`L${x(20, 50)},${y(5)}L`);
    expect(svg).toContain(`L${x(28, 50)},${y(100 / 28)}L`);
  });

  it('of SPR AVS steps at 15 V', () => {
    expect(drawn('SPR AVS 9-20V 3A/2.25A')).toContain(`L${x(15)},${y(3)}L${x(15)},${y(2.25)}L${x(20)},${y(2.25)}`);
  });
});

describe('the rated power', () => {
  it('is a curve that ends at the right, with its watts outside', () => {
    const svg = drawn(HUNDRED, 100);
    expect(svg).toContain(`L${x(22)},${y(100 / 22)}"/><text class="num" x="${FIELD.right + 6}"`);
    expect(svg).toContain('>100\u00a0W</text>');
  });

  it('is left out where nobody states one', () => {
    expect(drawn(HUNDRED)).not.toContain('rated');
  });
});

describe('the whole figure', () => {
  it('has a title and its offers in words', () => {
    expect(drawn(HUNDRED, 100)).toContain(`<title id="p-t">Offers of C1, amperes over volts</title><desc id="p-d">${HUNDRED}</desc>`);
  });

  it('stays inside its frame for every kind of offer', () => {
    const numbers = [
      ...drawn(`${EPR}, battery 5-20V 60W, variable 5-12V 3A, SPR AVS 9-15V 3A`, 240).matchAll(/[ML](\d+(?:\.\d+)?)[ ,](\d+(?:\.\d+)?)/g),
    ];
    for (const [, across, down] of numbers) {
      expect(Number(across)).toBeLessThanOrEqual(400);
      expect(Number(down)).toBeLessThanOrEqual(216);
    }
    expect(numbers.length).toBeGreaterThan(20);
  });

  it('is drawn the same each time', () => {
    expect(drawn('5V 3A, 9V 3A, 15V 3A, 20V 3.25A, PPS 3.3-21V 3.25A', 65)).toMatchSnapshot();
  });
});
