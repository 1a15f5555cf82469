import type { Source } from '../../values/value.ts';
import type { DeratingPolicy, DeratingRule } from './policy.ts';

const CAPACITORS: Source = {
  title: 'NASA EEE-INST-002 (NASA/TP-2003-212242 with addendum 1, 2008)',
  section: 'section C1, table 4, as reproduced in a public copy; columns rebuilt from a flattened page',
  standing: 'secondary',
  url: 'https://anyflip.com/hyty/ztww/basic',
};

const FUSES: Source = {
  title: 'NASA EEE-INST-002, section F1',
  section: 'fuse table as reproduced in a public guide; another 0.5 % for each kelvin above 25 °C',
  standing: 'secondary',
  url: 'http://www.interfacebus.com/Fuse_Derating_Guide.html',
};

/** Fuses of 2 A and more, then down by rated current. */
const FUSE_LINES: readonly (readonly [from: number, below: number | null, limit: number])[] = [
  [2, null, 0.5],
  [1, 2, 0.45],
  [0.5, 1, 0.4],
  [0.375, 0.5, 0.35],
  [0.25, 0.375, 0.3],
  [0.125, 0.25, 0.25],
];

/** Space practice for capacitors and fuses, the two tables of this document that could be read. */
export const nasaEeeInst002: DeratingPolicy = {
  id: 'nasa-eee-inst-002',
  title: 'NASA EEE-INST-002, capacitors and fuses',
  meaning:
    'Written for spacecraft, far stricter than a consumer product needs. Aluminium electrolytics are not listed: they are not used there.',
  rules: [
    {
      partClass: 'ceramic capacitor',
      quantity: 'voltage',
      limit: 0.6,
      condition: 'direct voltage and peak ripple together, up to 110 °C',
      source: CAPACITORS,
    },
    { partClass: 'film capacitor', quantity: 'voltage', limit: 0.6, condition: 'up to 85 °C', source: CAPACITORS },
    {
      partClass: 'capacitor',
      technologies: ['tantalum'],
      quantity: 'voltage',
      limit: 0.5,
      condition: 'solid tantalum at 70 °C, linear to 0.30 at 110 °C',
      source: CAPACITORS,
    },
    ...FUSE_LINES.map(fuseRule),
  ],
};

function fuseRule([from, below, limit]: (typeof FUSE_LINES)[number]): DeratingRule {
  const rule: DeratingRule = { partClass: 'fuse', quantity: 'current', limit, ratedFrom: from, condition: 'at 25 °C', source: FUSES };
  return below === null ? rule : { ...rule, ratedBelow: below };
}
