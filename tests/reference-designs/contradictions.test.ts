import { describe, expect, test } from 'vitest';
import { saidOf } from '../demo/entries-in.ts';
import { design, DESIGNS } from './designs.ts';

/** What the checks say about stated values of one design. */
function contradictionsOf(slug: string): readonly string[] {
  return saidOf(design(slug), ['error', 'warning', 'note']).filter((name) =>
    /^(?:claim|stated-otherwise|density|efficiency-margin)/u.test(name),
  );
}

describe('documents that contradict themselves are found out', () => {
  test('TIDA-01622: two board sizes (front page, table 1), 22:4 turns against 6:1, a clamp capacitor of 250 V or 500 V, and 30 W/in³ that its size does not give', () => {
    expect(contradictionsOf('tida-01622-65w-acf')).toEqual([
      'claim-against-computed at power density',
      // 93 % at 115 V in section 2.3, 91.3 % at the same line in table 1.
      'claims-differ at peak efficiency',
      'stated-otherwise at C42, C43',
      'stated-otherwise at main',
      'stated-otherwise at size',
    ]);
  });

  test('DER-601, opening page: 17.4 W/in³ with its enclosure and 11 W/in³ without', () => {
    expect(contradictionsOf('der-601-60w')).toEqual(['claimed-density-plausible at power density']);
  });

  test('MAXREFDES1085: an input range that ends at 60 V or at 36 V, a ratio defined both ways, computed against fitted values', () => {
    expect(contradictionsOf('maxrefdes1085-24w')).toEqual([
      // Step of the snubber: 65.8 V from 36 V, while table 1 lets 60 V in.
      'claim-against-computed at snubber diode voltage',
      'stated-otherwise at C1',
      'stated-otherwise at R1',
      'stated-otherwise at R2',
      'stated-otherwise at main',
      'stated-otherwise at plug',
    ]);
  });

  test('IP6557: 100 µF in the data sheet, 220 µF in the application note', () => {
    expect(contradictionsOf('ip6557-140w-car')).toEqual(['stated-otherwise at C7']);
  });

  test('DER-937, Summary and Features: 91.30 % at 20 V and 115 V is 2.30 points over 89 %, where 2.20 is printed; the nine other margins fit', () => {
    expect(contradictionsOf('der-937-100w-pfc-qr')).toEqual(['efficiency-margin-agrees at efficiency margin at 20 V and 115 V']);
  });

  test.each(['rd-29-65w-acf', 'der-602-100w', 'evb4-65w-2c', 'evbum2684-300w', 'psma-45w-acf', 'psma-150w-19v'])(
    '%s: sizes and densities that agree are not reproached',
    (slug) => {
      expect(contradictionsOf(slug)).toEqual([]);
    },
  );
});

describe('what is thin in a published design is said of it as of any other', () => {
  test.each(DESIGNS)('$slug: warnings', (sheet) => {
    const meant: Readonly<Record<string, readonly string[]>> = {
      // 374.8 V on 400 V and 20 V on 25 V of X5R: bill of material.
      'tida-01622-65w-acf': [
        'capacitor-voltage-margin at C#1',
        // 500 V ceramics behind the bridge, under the crest of 265 V.
        'capacitor-voltage-margin at C#2',
        'capacitor-voltage-margin at C5, C6',
        'claim-against-computed at power density',
        'claims-differ at peak efficiency',
        // 3.25 A at 20 V in the efficiency table, and no word about the cable.
        'current-without-cable at C1',
        // 93 % at 115 V in section 2.3; the highest of its rows there is 91.3 %.
        'reported-against-measured at peak efficiency',
      ],
      // 9 V 2.2 A is 20 mA under the 2.22 A that USB PD asks of a 20 W source: 19.8 W sold as 20 W.
      'der-533-20w': ['required-offers at C1'],
      // The page names the PPS range alone, so the fixed offers that USB PD asks for are not in the list.
      'evb4-65w-2c': ['first-offer at C1', 'required-offers at C1', 'required-offers at C1', 'required-offers at C1'],
      // 5.1, 9.2 and 15.3 V are set above nominal for the drop of the cable, and are no voltages of USB PD.
      'rdr-659-30w': ['first-offer at C1', 'required-offers at C1', 'required-offers at C1'],
      'der-601-60w': ['claimed-density-plausible at power density'],
      // 5.17 V is no multiple of the 50 mV of a fixed object: the report sets the bus, not an offer.
      'tidt200-car-2x5v': ['value-remark'],
      'der-937-100w-pfc-qr': ['efficiency-margin-agrees at efficiency margin at 20 V and 115 V'],
      // 419 V in the text of page 15, 502 V by equation 25; a quality factor of 0.36 in table 3.
      'an-4151-192w-llc': [
        'claim-against-computed at quality factor at full load',
        'claim-against-computed at resonant capacitor voltage',
        'claims-differ at resonant capacitor voltage',
      ],
      'maxrefdes1085-24w': ['claim-against-computed at snubber diode voltage'],
    };
    expect(saidOf(sheet, ['warning'])).toEqual(meant[sheet.slug] ?? []);
  });
});
