import { describe, expect, it } from 'vitest';
import { cableFor, CABLES } from '../../src/usb-pd/cable.ts';
import { currentAt } from '../../src/usb-pd/current-at.ts';
import { readOffers } from '../../src/usb-pd/read-offers.ts';
import type { ReadOffer } from '../../src/usb-pd/offer-list.ts';
import { supplies } from '../../src/usb-pd/supplies.ts';

/** Most amperes that any of these offers gives at a voltage; null where none has it. */
function mostCurrentAt(offers: readonly ReadOffer[], volts: number): number | null {
  const currents = offers.flatMap((offer) => currentAt(offer, volts) ?? []);
  return currents.length === 0 ? null : Math.max(...currents);
}

function offersOf(text: string): readonly ReadOffer[] {
  const reading = readOffers(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.remarks));
  return reading.value;
}

const HUNDRED = offersOf('5V 3A, 9V 3A, 15V 3A, 20V 5A, PPS 5-21V 5A');

describe('a 65 W laptop that needs 20 V', () => {
  const laptop = { volts: 20, watts: 65 };

  it('runs on a 100 W port', () => {
    expect(supplies(HUNDRED, laptop, CABLES.marked)).toMatchObject({ watts: 65, isMet: true, volts: 20, reason: '65 W' });
  });

  it('falls to 15 V 45 W where the list ends there', () => {
    const given = supplies(offersOf('5V 3A, 9V 3A, 15V 3A'), laptop, CABLES.marked);
    expect(given).toMatchObject({ watts: 45, isMet: false, volts: 15, reason: 'no 20 V, falls to 15 V 45 W' });
  });

  it('gets 60 W through a 3 A cable', () => {
    expect(supplies(HUNDRED, laptop, CABLES.unmarked)).toMatchObject({ watts: 60, isMet: false, reason: '60 W: the cable carries 3 A' });
  });

  it('gets 5 V from a port that has no more', () => {
    expect(supplies(offersOf('5V 2.4A BC 1.2'), laptop)).toMatchObject({ watts: 12, reason: 'no 20 V, falls to 5 V 12 W' });
  });

  it('gets nothing from a barrel of a higher voltage', () => {
    expect(supplies([{ kind: 'plain', volts: 24, amps: 5 } as const], laptop)).toMatchObject({ watts: 0, offer: null, isMet: false });
  });
});

describe('a cable decides', () => {
  it('28 V 5 A needs the 240 W mark; otherwise 100 W', () => {
    const epr = offersOf('5V 3A, 9V 3A, 15V 3A, 20V 5A, 28V 5A, EPR AVS 15-28V 140W');
    const need = { volts: 28, watts: 140 };
    expect(supplies(epr, need, CABLES.epr)).toMatchObject({ watts: 140, isMet: true });
    expect(supplies(epr, need, CABLES.marked)).toMatchObject({ watts: 100, isMet: false, reason: 'no 28 V, falls to 20 V 100 W' });
  });

  it.each([
    [20, 3.25, 'a cable marked 5 A'],
    [20, 3, 'any USB-C cable'],
    [28, 3, 'a cable marked 240 W'],
  ])('%d V %d A: %s', (volts, amps, name) => {
    expect(cableFor(volts, amps).name).toBe(name);
  });
});

describe('a 27 W phone with PPS', () => {
  const phone = { volts: 9, watts: 27, pps: true };

  it('takes the range that holds its voltage, not the first', () => {
    const given = supplies(offersOf('5V 3A, 9V 3A, PPS 3.3-5.9V 3A, PPS 3.3-11V 3A'), phone);
    expect(given).toMatchObject({ watts: 27, isMet: true, offer: { kind: 'PPS', maxVolts: 11 } });
  });

  it('falls to a fixed voltage where there is no PPS, and that is said', () => {
    expect(supplies(offersOf('5V 3A, 9V 3A'), phone)).toMatchObject({
      watts: 27,
      isMet: false,
      reason: 'no PPS at 9 V, falls to 9 V 27 W',
    });
  });
});

describe('two PPS ranges on one port', () => {
  const offers = offersOf('PPS 3.3-5.9V 3A; 3.3-11V 1.8A');

  it.each([
    [5, 3],
    [9, 1.8],
    [12, null],
  ])('at %d V up to %s A', (volts, amps) => {
    expect(mostCurrentAt(offers, volts)).toBe(amps);
  });
});

describe('current of adjustable offers over voltage', () => {
  it.each([
    // USB PD R3.2 V1.1, Table 10.12: 5 A up to PDP/5 A, then PDP/V; 144 W: 28.8 V (public worked example), 36 V 4 A.
    ['EPR AVS 15-36V 144W', 28.8, 5],
    ['EPR AVS 15-36V 144W', 36, 4],
    ['EPR AVS 15-48V 240W', 40, 5],
    ['EPR AVS 15-28V 100W', 28, 3.55],
    ['SPR AVS 9-20V 3A/2.25A', 15, 3],
    ['SPR AVS 9-20V 3A/2.25A', 15.1, 2.25],
    ['SPR AVS 9-15V 2.4A', 16, null],
    ['PPS 5-21V 5A (power limited)', 21, 4.75],
    ['PPS 5-21V 5A', 21, 5],
    ['variable 5-12V 3A', 9, null],
  ])('%s at %d V: %s A', (text, volts, amps) => {
    expect(mostCurrentAt(offersOf(text), volts)).toBe(amps);
  });
});

describe('a need without a voltage', () => {
  it('takes the strongest offer, the lower voltage among equals', () => {
    expect(supplies(offersOf('5V 3A, 9V 3A, 12V 2.25A'), { volts: null, watts: 45 })).toMatchObject({ watts: 27, volts: 9, isMet: false });
  });

  it('takes 19.98 W as 20 W, as labels do', () => {
    expect(supplies(offersOf('5V 3A, 9V 2.22A'), { volts: 9, watts: 20 })).toMatchObject({ watts: 20, isMet: true });
  });
});
