import type { Role } from './role.ts';

export const TEMPERATURE_SENSOR: Role = {
  id: 'temperature-sensor',
  name: 'temperature sensor',
  alsoCalled: ['thermal sensor', 'sense thermistor', 'NTC sensor'],
  partClass: 'sensor',
  bareNumber: 'resistance',
  rates: ['resistance', 'ratio'],
  plausible: [{ dimension: 'resistance', low: 100, high: 2e6, reason: 'common practice: sense thermistors at 25 °C' }],
  meaning: 'Tells the controller how hot a place is.',
  example: '47 kΩ 1 %',
};
