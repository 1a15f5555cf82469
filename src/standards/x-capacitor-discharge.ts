import type { Source } from '../values/value.ts';

/** A rule for how fast the pins of a plug must lose their charge. Always shown by name, since the rules differ. */
export interface DischargeRule {
  readonly id: string;
  readonly name: string;
  /** Time after unplugging, in seconds. */
  readonly seconds: number;
  /** Voltage to reach in volts, or the share of the starting peak where the rule is a time constant. */
  readonly reach: { readonly volts: number } | { readonly shareOfPeak: number };
  /** Capacitance above which the rule asks anything, in farads; null where it has no such line. */
  readonly aboveFarads: number | null;
  /** What the rule is written for; one that is not for chargers stands beside the others for information and judges nothing. */
  readonly writtenFor: 'chargers' | 'household appliances' | 'machines';
  readonly source: Source;
}

const MAILING_LIST: Source = {
  title: 'IEC 60950-1, 2.1.1.7',
  section: 'as quoted in the archive of the IEEE product-safety list',
  standing: 'secondary',
  url: 'https://mail-archive.com/emc-pstc@listserv.ieee.org/msg21618.html',
};

const REPORT_FORM: Source = {
  title: 'IEC 62368-1, 5.5.2.2',
  section: '2 s as printed in a laboratory report form; 60 V is table 5 from 300 nF up, read in a public rendering',
  standing: 'secondary',
};

const MACHINES: Source = {
  title: 'IEC 60204-1, 6.2.4',
  section: 'as paraphrased by a safety consultancy',
  standing: 'secondary',
  url: 'https://cmph-safety.tech/?p=933',
};

const HOUSEHOLD: Source = { title: 'IEC 60335-1', section: '34 V after 1 s, as quoted on public pages', standing: 'secondary' };

/** Discharge rules by name. `62368-plug` holds from 300 nF; smaller capacitances may keep a higher voltage. */
export const DISCHARGE_RULES: readonly DischargeRule[] = [
  {
    id: '62368-plug',
    name: 'IEC 62368-1: 60 V within 2 s',
    seconds: 2,
    reach: { volts: 60 },
    aboveFarads: null,
    writtenFor: 'chargers',
    source: REPORT_FORM,
  },
  {
    id: '60950-plug',
    name: 'IEC 60950-1: 37 % within 1 s',
    seconds: 1,
    reach: { shareOfPeak: Math.exp(-1) },
    aboveFarads: 0.1e-6,
    writtenFor: 'chargers',
    source: MAILING_LIST,
  },
  {
    id: '60335-plug',
    name: 'IEC 60335-1: 34 V within 1 s',
    seconds: 1,
    reach: { volts: 34 },
    aboveFarads: 0.1e-6,
    writtenFor: 'household appliances',
    source: HOUSEHOLD,
  },
  {
    id: '60204-plug',
    name: 'IEC 60204-1: 60 V within 1 s at plug pins',
    seconds: 1,
    reach: { volts: 60 },
    aboveFarads: null,
    writtenFor: 'machines',
    source: MACHINES,
  },
];

/** Points of the voltage that a capacitance may keep under IEC 62368-1 (ES1), in farads and volts peak; linear between. */
export const ES1_CAPACITOR_VOLTAGES: { readonly points: readonly (readonly [farads: number, volts: number])[]; readonly source: Source } = {
  points: [
    [0.133e-9, 25_000],
    [0.2e-9, 20_000],
    [0.4e-9, 10_000],
    [0.8e-9, 5000],
    [1.6e-9, 2500],
    [4e-9, 1000],
    [8e-9, 500],
    [12e-9, 350],
    [18e-9, 250],
    [28e-9, 200],
    [41e-9, 150],
    [61e-9, 125],
    [91e-9, 100],
    [170e-9, 75],
    [300e-9, 60],
  ],
  source: {
    title: 'IEC 62368-1, 5.2.2.3, table 5',
    section: 'read in two public renderings that agree; linear interpolation allowed',
    standing: 'secondary',
  },
};

/** Voltage that a capacitance in farads may keep as ES1, in volts peak. */
export function es1CapacitorVoltage(farads: number): number {
  const { points } = ES1_CAPACITOR_VOLTAGES;
  for (const [index, [highFarads, highVolts]] of points.entries()) {
    if (farads > highFarads) continue;
    const before = points[index - 1];
    if (before === undefined) return highVolts;
    const [lowFarads, lowVolts] = before;
    return lowVolts + ((highVolts - lowVolts) * (farads - lowFarads)) / (highFarads - lowFarads);
  }
  return 60;
}
