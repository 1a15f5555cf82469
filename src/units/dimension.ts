/**
 * The dimensions that the trade's values have, each with the SI unit in which this program holds it.
 * A number never travels without one of these names.
 */
export const SI_UNITS = {
  voltage: 'V',
  current: 'A',
  power: 'W',
  'apparent power': 'VA',
  resistance: 'Ω',
  capacitance: 'F',
  inductance: 'H',
  frequency: 'Hz',
  time: 's',
  length: 'm',
  area: 'm²',
  volume: 'm³',
  mass: 'kg',
  energy: 'J',
  charge: 'C',
  temperature: '°C',
  'temperature difference': 'K',
  ratio: '1',
  'power density': 'W/m³',
  'specific power': 'W/kg',
  'capacitance per power': 'F/W',
  'melting integral': 'A²s',
  'heat flux': 'W/m²',
  'thermal resistance': 'K/W',
  'flux density': 'T',
} as const;

/** Name of a physical dimension; temperatures are degrees Celsius, every other one is in its SI unit. */
export type Dimension = keyof typeof SI_UNITS;
