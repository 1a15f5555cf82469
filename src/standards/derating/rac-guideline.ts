import type { Source } from '../../values/value.ts';
import type { DeratingPolicy } from './policy.ts';

const TABLE: Source = {
  title: 'RAC (RiAC) component derating guideline',
  section: 'table for a benign environment, read in two public copies that agree; rows for transistors and resistors were not in them',
  standing: 'secondary',
  url: 'https://kekaoxing.com/82062.html',
};

/** Reliability practice for equipment in rooms; the document's severe environment takes another 10 points off. */
export const racGuideline: DeratingPolicy = {
  id: 'rac-guideline',
  title: 'RAC guideline, benign environment',
  meaning: 'Reliability practice for equipment in heated rooms, a little stricter than consumer practice.',
  rules: [
    { partClass: 'aluminium electrolytic', quantity: 'voltage', limit: 0.8, source: TABLE },
    { partClass: 'ceramic capacitor', quantity: 'voltage', limit: 0.7, source: TABLE },
    { partClass: 'film capacitor', quantity: 'voltage', limit: 0.7, source: TABLE },
    { partClass: 'capacitor', technologies: ['tantalum'], quantity: 'voltage', limit: 0.8, source: TABLE },
    { partClass: 'rectifier', quantity: 'voltage', limit: 0.8, source: TABLE },
    { partClass: 'rectifier', quantity: 'current', limit: 1, condition: 'below 100 %', source: TABLE },
  ],
};
