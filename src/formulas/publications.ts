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
  texasTransitionPfc: { title: 'Texas Instruments SLUS837A (2008, revised 2009), UCC28061 data sheet', standing: 'read' },
  texasTransitionPfcAnalysis: { title: 'Texas Instruments SLUS515F (2002, revised 2009), UCC28050 data sheet', standing: 'read' },
  fairchildBoundaryPfc: {
    title: 'Fairchild Semiconductor AN-6086 rev. 1.0.4 (2010), Interleaved boundary-conduction PFC design guide',
    standing: 'read',
  },
  texasResonant: {
    title: 'Texas Instruments SLUP263 (2010), LLC half-bridge design, as restated in the tests of an open design library',
    standing: 'secondary',
  },
  texasResonantController: { title: 'Texas Instruments SLUS846B, UCC25600 data sheet', standing: 'read' },
  infineonResonant: { title: 'Infineon AN ICE2HS01G V1.0 (2011), LLC converter design guide', standing: 'read' },
  resonantTankNote: { title: 'A designer’s note on a 1200 W LLC tank, 400 V to 48 V, version 2 (2026)', standing: 'read' },
  maximFlyback: { title: 'Maxim Integrated MAXREFDES1085, 24 W flyback converter', standing: 'read' },
  unitrodeFlyback: { title: 'Unitrode U-165, Design review of an isolated 50 W flyback converter', standing: 'read' },
  texasPrimaryRegulated: { title: 'Texas Instruments SLUSD71A (2018), UCC28742 data sheet', standing: 'read' },
  unitrodeMagnetics: {
    title: 'Texas Instruments / Unitrode MAG100A, Magnetics design handbook, section 5 (also SLUP127)',
    standing: 'read',
  },
  texasActiveClamp: { title: 'Texas Instruments, UCC28780 active-clamp flyback controller data sheet', standing: 'read' },
  texasFlybackOvershoot: { title: 'Texas Instruments SLVAFK6, flyback design note', standing: 'read' },
  jacobTextbook: {
    title: 'J. M. Jacob, Power Electronics: Principles and Applications (Delmar), in the FOSSEE textbook companion',
    standing: 'secondary',
  },
  bimbhraTextbook: { title: 'P. S. Bimbhra, Power Electronics (Khanna), in the FOSSEE textbook companion', standing: 'secondary' },
  sedraTextbook: { title: 'Sedra and Smith, Microelectronic Circuits (Oxford), in the FOSSEE textbook companion', standing: 'secondary' },
  robertsonTextbook: {
    title: 'C. R. Robertson, Fundamental Electrical and Electronic Principles (Newnes), in the FOSSEE textbook companion',
    standing: 'secondary',
  },
  incroperaTextbook: {
    title: 'Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer (Wiley), in the FOSSEE textbook companion',
    standing: 'secondary',
  },
  cengelTextbook: { title: 'Y. A. Cengel, Heat and Mass Transfer (McGraw-Hill), in the FOSSEE textbook companion', standing: 'secondary' },
  texasBuck: { title: 'Texas Instruments SLUS719E (2007, revised 2013), TPS40192 data sheet, design example', standing: 'read' },
  linearBuckBoost3789: { title: 'Linear Technology LTC3789 rev. a data sheet', standing: 'read' },
  linearBuckBoost3780: { title: 'Linear Technology LTC3780 rev. f data sheet', standing: 'read' },
  stBuckBoost: { title: 'STMicroelectronics AN4449, Buck-boost converter', standing: 'read' },
  stBuckRegulator: { title: 'STMicroelectronics B5973D data sheet, DocID14117 rev. 4', standing: 'read' },
  rohmBuckLosses: {
    title: 'ROHM 64AN035E, Efficiency of a buck converter, as restated in the tests of an open library',
    standing: 'secondary',
  },
  softSwitchingSeminar: {
    title: 'APEC 2026 seminar S.08, AC-DC converters of medium and low power, compiled summary',
    standing: 'secondary',
  },
  fuseChecklist: {
    title: 'EDN, The fuse-selection checklist (26 September 1996)',
    standing: 'read',
    url: 'http://www.edn.com/archives/1996/092696/20df4.htm',
  },
  fusePulseCharts: {
    title: 'Littelfuse, Fuse technology pages, catalogue of 3 March 2017',
    standing: 'read',
    url: 'http://electronicscatalogs.littelfuse.com/guide/fuse-mounting-accessories/12.php',
  },
  openHeatNotes: { title: 'Libre Solar, Losses and heat, open hardware documentation', standing: 'read' },
  enclosureHeatGuide: { title: 'Elliott Electric Supply, Heat dissipation in electrical enclosures', standing: 'read' },
  coselLife: { title: 'Cosel technical answer a0057, Electrolytic capacitor life at varying ambient temperature', standing: 'read' },
  rectifierFlybackTransformer: {
    title: 'International Rectifier AN-1024a, Flyback transformer design for the IRIS40xx series',
    standing: 'read',
  },
  boardTraceNote: { title: 'A designer’s board calculation for a 1200 W LLC converter, quoting IPC-2221A (2026)', standing: 'read' },
  instrumentationTextbook: {
    title: 'U. S. Shah, Electronic Instrumentation and Measurements, in a companion of worked examples',
    standing: 'secondary',
  },
  forwardTextbook: {
    title: 'Worked example of a power-electronics textbook, chapter 16, switched-mode supplies, in the FOSSEE textbook companion',
    standing: 'secondary',
  },
  circuitTheory: { title: 'Elementary circuit theory', standing: 'common practice' },
  elementaryGeometry: { title: 'Elementary geometry', standing: 'common practice' },
} as const satisfies Record<string, Publication>;

/** An open data set of cable drops by gauge, length and current. */
export const CABLE_DROP_DATA = {
  title: 'Open data set of USB cable voltage drop (beniceco/usb-cable-voltage-drop)',
  standing: 'read',
} as const satisfies Publication;

/** Where an independent figure comes from that nobody published: worked apart from this program. */
export function workedWith(tool: string): Source {
  return { title: `Worked apart from this program with ${tool}`, section: 'no published example found', standing: 'worked apart' };
}

/** A publication at one clause, page or equation. */
export function cite(publication: Publication, section: string): Source {
  return { ...publication, section };
}
