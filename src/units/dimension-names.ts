import type { Dimension } from './dimension.ts';

interface DimensionName {
  /** With its article: "a voltage". */
  readonly phrase: string;
  /** Units in which the trade writes it. */
  readonly units: string;
  /** Whether a value below zero makes sense. */
  readonly isSigned: boolean;
}

/** How messages speak of a dimension. */
export const DIMENSION_NAMES: Readonly<Record<Dimension, DimensionName>> = {
  voltage: { phrase: 'a voltage', units: 'mV, V or kV', isSigned: true },
  current: { phrase: 'a current', units: 'µA, mA or A', isSigned: true },
  power: { phrase: 'a power', units: 'mW, W or kW', isSigned: false },
  'apparent power': { phrase: 'an apparent power', units: 'VA', isSigned: false },
  resistance: { phrase: 'a resistance', units: 'mΩ, Ω, kΩ or MΩ', isSigned: false },
  capacitance: { phrase: 'a capacitance', units: 'pF, nF or µF', isSigned: false },
  inductance: { phrase: 'an inductance', units: 'nH, µH or mH', isSigned: false },
  frequency: { phrase: 'a frequency', units: 'Hz, kHz or MHz', isSigned: false },
  time: { phrase: 'a time', units: 'µs, ms, s, min or h', isSigned: false },
  length: { phrase: 'a length', units: 'mm, cm, m or in', isSigned: false },
  area: { phrase: 'an area', units: 'mm² or cm²', isSigned: false },
  volume: { phrase: 'a volume', units: 'cm³, mL or in³', isSigned: false },
  mass: { phrase: 'a mass', units: 'g, kg or oz', isSigned: false },
  energy: { phrase: 'an energy', units: 'mJ, J or Wh', isSigned: false },
  charge: { phrase: 'a charge', units: 'mAh or Ah', isSigned: false },
  temperature: { phrase: 'a temperature', units: '°C', isSigned: true },
  'temperature difference': { phrase: 'a temperature difference', units: 'K', isSigned: true },
  ratio: { phrase: 'a ratio', units: '%', isSigned: true },
  'power density': { phrase: 'a power density', units: 'W/cm³ or W/in³', isSigned: false },
  'specific power': { phrase: 'a specific power', units: 'W/kg', isSigned: false },
  'capacitance per power': { phrase: 'a capacitance per watt', units: 'µF/W', isSigned: false },
  'melting integral': { phrase: 'a melting integral', units: 'A²s', isSigned: false },
  'heat flux': { phrase: 'a heat flux', units: 'W/m²', isSigned: false },
  'thermal resistance': { phrase: 'a thermal resistance', units: 'K/W', isSigned: false },
  'flux density': { phrase: 'a flux density', units: 'mT or T', isSigned: false },
};
