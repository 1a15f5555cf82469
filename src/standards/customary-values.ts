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
  converterEfficiency: {
    low: 0.92,
    nominal: 0.95,
    high: 0.98,
    reason: 'efficiency of the converter at full load not given; converters around one inductor reach 92 to 98 %',
    source: practice('efficiency of non-isolated converters at full load'),
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
  fullCell: {
    low: 4.15,
    nominal: 4.2,
    high: 4.25,
    reason: 'voltage of a full cell not given; lithium-ion cells are charged to 4.2 V',
    source: practice('end-of-charge voltage of lithium-ion cells'),
  },
  fullIronPhosphateCell: {
    low: 3.55,
    nominal: 3.6,
    high: 3.65,
    reason: 'voltage of a full cell not given; lithium iron phosphate cells are charged to 3.6 V',
    source: practice('end-of-charge voltage of lithium iron phosphate cells'),
  },
  emptyCell: {
    low: 2.8,
    nominal: 3,
    high: 3.2,
    reason: 'voltage of an empty cell not given; converters stop at about 3 V',
    source: practice('end-of-discharge voltage of lithium-ion cells'),
  },
  suppressedLoadDump: {
    low: 35,
    nominal: 35,
    high: 35,
    reason: 'highest voltage of a suppressed load dump in a 12 V vehicle',
    source: { title: 'ISO 16750-2', section: 'load dump with centralised suppression, 12 V system', standing: 'memory' },
  },
  jumpStart: {
    low: 24,
    nominal: 24,
    high: 24,
    reason: 'a 12 V vehicle may be started from a 24 V one',
    source: { title: 'ISO 16750-2', section: 'jump start, 12 V system', standing: 'memory' },
  },
  coldSuperjunction: {
    low: 1.5,
    nominal: 1.8,
    high: 2.3,
    reason: 'on-resistance is marked at 25 °C; a superjunction switch has 1.8 times that at 100 °C, 2.1 to 2.6 times at 150 °C',
    source: {
      title: 'Infineon data sheets of 500 to 700 V superjunction switches, and the rule of the 650 V C7 design note',
      section: 'on-resistance at 25 and 150 °C',
      standing: 'read',
    },
  },
  coldGallium: {
    low: 1.3,
    nominal: 1.6,
    high: 2.1,
    reason: 'on-resistance is marked at 25 °C; a gallium-nitride switch has 1.3 to 2.1 times that when hot',
    source: practice('on-resistance of gallium-nitride switches over temperature'),
  },
  coldSiliconCarbide: {
    low: 1.1,
    nominal: 1.3,
    high: 1.6,
    reason: 'on-resistance is marked at 25 °C; a silicon-carbide switch has 1.1 to 1.6 times that when hot',
    source: practice('on-resistance of silicon-carbide switches over temperature'),
  },
  coldLowVoltage: {
    low: 1.2,
    nominal: 1.4,
    high: 1.6,
    reason: 'on-resistance is marked at 25 °C; a low-voltage switch has 1.2 to 1.6 times that when hot',
    source: {
      title: 'Linear Technology LTC3780 data sheet and others',
      section: 'factors of 1.2 to 1.6 used for switches of 30 to 100 V',
      standing: 'read',
    },
  },
  coldCopper: {
    low: 1.1,
    nominal: 1.3,
    high: 1.4,
    reason: 'resistance of a winding is measured cold; copper has 1.1 to 1.4 times that at 50 to 125 °C, and more for alternating current',
    source: practice('resistance of copper over temperature, 0.39 % a kelvin'),
  },
  turnTaking: {
    low: 0,
    nominal: 0.5,
    high: 1,
    reason: 'which of the two switches is the upper one is not said, so either may carry the current for most of the period',
    source: practice('two switches that take turns'),
  },
  senseThreshold: {
    low: 0.4,
    nominal: 0.7,
    high: 1,
    reason: 'threshold of the current sense not given; flyback and boost controllers trip at 0.4 to 1.0 V',
    source: practice('current-sense thresholds of off-line controllers'),
  },
  meterResistance: {
    low: 10e6,
    nominal: 10e6,
    high: 10e6,
    reason: 'input resistance of the meter not given; handheld meters have 10 MΩ',
    source: practice('input resistance of digital multimeters'),
  },
  bridgeDrop: {
    low: 0.75,
    nominal: 0.9,
    high: 1.05,
    reason: 'drop of a bridge diode not given; silicon diodes drop 0.75 to 1.05 V at their load',
    source: practice('forward drop of silicon bridge diodes'),
  },
  lineFrequency: { low: 50, nominal: 50, high: 60, reason: 'frequency of the mains not printed', source: practice('mains frequency') },
  inductorRipple: {
    low: 0.2,
    nominal: 0.3,
    high: 0.5,
    reason: 'ripple of the inductor not given; 20 to 50 % of its current is usual',
    source: practice('inductor ripple in continuous conduction'),
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
