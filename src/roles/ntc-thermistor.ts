import type { Role } from './role.ts';

export const NTC_THERMISTOR: Role = {
  id: 'ntc-thermistor',
  name: 'NTC thermistor',
  alsoCalled: ['NTC', 'inrush limiter', 'inrush thermistor'],
  partClass: 'thermistor',
  bareNumber: 'resistance',
  rates: ['resistance', 'current'],
  plausible: [{ dimension: 'resistance', low: 0.5, high: 200, reason: 'common practice: cold resistance of inrush limiters' }],
  meaning: 'Limits the current that charges the bulk capacitor at plug-in by being cold; its resistance falls as it warms.',
  example: '10 Ω 3 A',
};
