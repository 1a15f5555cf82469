import type { Source } from '../values/value.ts';

/** A source with the clause, page or equation left open: each example adds its own. */
type Publication = Omit<Source, 'section'>;

/** Publications that several formulas cite. Where only a copy or a quotation was seen, the standing says `secondary`. */
export const PUBLICATIONS = {
  fairchildFlyback: {
    title: 'Fairchild Semiconductor AN-4137 rev. 1.3.0 (2003), Design guidelines for off-line flyback converters',
    standing: 'read',
  },
  fairchildResonant: {
    title: 'Fairchild Semiconductor AN-4151 rev. 1.0.2 (2014), Half-bridge LLC resonant converter design',
    standing: 'read',
  },
  texasCurrentMode: {
    title: 'Texas Instruments SLUS223F (1997, revised 2020), UCx84x data sheet, 48 W off-line flyback application',
    standing: 'read',
  },
  texasInterleavedPfc: {
    title: 'Texas Instruments SLUS767E (2007, revised 2008), UCC28060 data sheet',
    standing: 'read',
  },
  texasRectifierController: {
    title: 'Texas Instruments SLUSCM5A (revised 2018), UCC24612 data sheet, 60 W flyback design',
    standing: 'read',
  },
  texasActiveClampAdapter: {
    title: 'Texas Instruments TIDA-01622, TIDUDW2 (2018), 65 W USB Type-C adapter reference design',
    standing: 'read',
  },
  powerIntegrationsAn17: {
    title: 'Power Integrations AN-17 rev. C (1996), Flyback transformer design',
    standing: 'read',
  },
  powerIntegrations45W: {
    title: 'Power Integrations DER-600 rev. 1.0 (2020), 45 W USB PD 3.0 power supply, opening page',
    standing: 'read',
  },
  powerIntegrations100W: {
    title: 'Power Integrations DER-937 rev. 1.0 (2021), 100 W USB PD 3.0 power supply, opening page',
    standing: 'read',
  },
  silanna65W: {
    title: 'Silanna Semiconductor RD-29, document 11100 version 1.0, 65 W USB PD report, opening page',
    standing: 'read',
  },
  infineonPfc: {
    title: 'Infineon DN 2013-01 rev. 1.1 (2016), PFC boost converter design guide, 1200 W example',
    standing: 'read',
  },
  amethermInrush: {
    title: 'Ametherm, Selecting an inrush current limiter',
    standing: 'read',
    url: 'http://www.ametherm.com/ntc_thermistor_probes/selecting%20a%20thermistor.htm',
  },
  wuerthLineFilter: {
    title: 'Würth Elektronik ANP015, line filter design, as restated in the tests of an open filter library',
    standing: 'secondary',
  },
  birdTextbook: {
    title: 'J. O. Bird, Electrical Circuit Theory and Technology (Newnes), in the FOSSEE textbook companion',
    standing: 'secondary',
  },
  storeyTextbook: {
    title: 'N. Storey, Electrical and Electronic Systems (Pearson), in the FOSSEE textbook companion',
    standing: 'secondary',
  },
  circuitTheory: { title: 'Elementary circuit theory', standing: 'common practice' },
  elementaryGeometry: { title: 'Elementary geometry', standing: 'common practice' },
} as const satisfies Record<string, Publication>;

/** Where an independent figure comes from that nobody published: worked apart from this program. */
export function workedWith(tool: string): Source {
  return { title: `Worked apart from this program with ${tool}`, section: 'no published example found', standing: 'secondary' };
}

/** A publication at one clause, page or equation. */
export function cite(publication: Publication, section: string): Source {
  return { ...publication, section };
}
