import type { Role } from './role.ts';

export const TRANSMITTER_COIL: Role = {
  id: 'transmitter-coil',
  name: 'transmitter coil',
  alsoCalled: ['Qi coil', 'charging coil', 'wireless coil'],
  partClass: 'magnetic',
  bareNumber: 'inductance',
  rates: ['inductance'],
  plausible: [{ dimension: 'inductance', low: 1e-6, high: 100e-6, reason: 'common practice: coils of wireless transmitters' }],
  meaning: 'Makes the field that the device above picks up.',
  example: '6.3 µH',
};
