import type { Source } from '../values/value.ts';

/** A value that a derivation assumes where the author gives none; low, nominal and high in SI units. */
export interface CustomaryValue {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
  readonly reason: string;
  readonly source: Source;
}

function practice(section: string): Source {
  return { title: 'Design practice of mains adapters', section, standing: 'common practice' };
}

/** Values of the trade with no publication behind them; whatever rests on one is shown as resting on an assumption. */
export const CUSTOMARY = {
  mainsTolerance: {
    low: 1.1,
    nominal: 1.1,
    high: 1.1,
    reason: 'the mains may be 10 % above the highest printed voltage',
    source: practice('mains tolerance of 10 %'),
  },
  efficiency: {
    low: 0.85,
    nominal: 0.9,
    high: 0.95,
    reason: 'efficiency at full load not given; adapters reach 85 to 95 %',
    source: practice('efficiency at full load'),
  },
  powerFactorWithout: {
    low: 0.5,
    nominal: 0.6,
    high: 0.7,
    reason: 'power factor not given; a bridge with a bulk capacitor and no PFC has 0.5 to 0.7',
    source: practice('power factor of a capacitor-input rectifier at low line'),
  },
  powerFactorWith: {
    low: 0.95,
    nominal: 0.98,
    high: 0.99,
    reason: 'power factor not given; a PFC stage reaches 0.95 to 0.99 at low line and full load',
    source: practice('power factor with a PFC stage at low line'),
  },
  unityPowerFactor: { low: 1, nominal: 1, high: 1, reason: 'a direct supply has no power factor', source: practice('direct supply') },
  pfcBus: {
    low: 380,
    nominal: 390,
    high: 400,
    reason: 'voltage of the PFC bus not given; boost PFC stages for world-wide mains are set to 380 to 400 V',
    source: practice('bus voltage of a boost PFC'),
  },
  synchronousDrop: {
    low: 0,
    nominal: 0.05,
    high: 0.1,
    reason: 'drop of the rectifier not given; a synchronous rectifier drops less than 0.1 V',
    source: practice('drop of a synchronous rectifier'),
  },
  diodeDrop: {
    low: 0.4,
    nominal: 0.7,
    high: 1.2,
    reason: 'drop of the rectifier not given; diodes drop 0.4 to 1.2 V',
    source: practice('drop of a rectifier diode'),
  },
} as const satisfies Record<string, CustomaryValue>;

/** Tolerance of an electrolytic capacitor whose marking shows none, as a fraction either way. */
export const ELECTROLYTIC_TOLERANCE: { readonly fraction: number; readonly reason: string; readonly source: Source } = {
  fraction: 0.2,
  reason: 'tolerance of the capacitance not marked; electrolytics are sold as ±20 %',
  source: practice('capacitance tolerance of electrolytics, code M'),
};

/** Highest printed mains voltage from which a nameplate is taken to include the tolerance of the mains already, in volts. */
export const INCLUDES_TOLERANCE_FROM = 264;
