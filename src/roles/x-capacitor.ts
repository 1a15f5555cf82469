import type { Role } from './role.ts';

export const X_CAPACITOR: Role = {
  id: 'x-capacitor',
  name: 'X capacitor',
  alsoCalled: ['X2 capacitor', 'X1 capacitor', 'X cap', 'across-the-line capacitor'],
  partClass: 'safety capacitor',
  bareNumber: 'capacitance',
  rates: ['capacitance', 'voltage'],
  plausible: [
    {
      dimension: 'capacitance',
      low: 1e-9,
      high: 10e-6,
      reason: 'common practice: across-the-line capacitors lie between nanofarads and a few microfarads',
    },
    { dimension: 'voltage', low: 100, high: 1000, reason: 'common practice: class X parts are made for mains voltages' },
  ],
  meaning: 'Stands across the mains and short-circuits the differential noise. Must fail without fire, hence its class.',
  example: '0.33 µF X2 310 VAC',
};
