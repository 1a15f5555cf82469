import type { Source } from '../../values/value.ts';
import type { DeratingPolicy } from './policy.ts';

const TABLE_XIX: Source = {
  title: 'MIL-DTL-917, electric power equipment for naval ships',
  section: 'table XIX, field-effect transistors',
  standing: 'read',
  url: 'https://electricalcontrolequipment.emilspec.com/MIL-DTL-917/page60.html',
};

/** Naval practice for field-effect transistors. */
export const milDtl917: DeratingPolicy = {
  id: 'mil-dtl-917',
  title: 'MIL-DTL-917, field-effect transistors',
  meaning: 'Written for switchgear on naval ships, stricter than a consumer product needs.',
  rules: [
    {
      partClass: 'transistor',
      quantity: 'voltage',
      limit: 0.7,
      condition: 'repetitive peak (direct 0.5, nominal working 0.6, non-repetitive 0.8)',
      source: TABLE_XIX,
    },
    { partClass: 'transistor', quantity: 'current', limit: 0.6, caution: 0.8, condition: 'nominal 0.6, highest 0.8', source: TABLE_XIX },
  ],
};
