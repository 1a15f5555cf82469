import type { Source } from '../../values/value.ts';
import type { DeratingPolicy } from './policy.ts';

/** Appendix A of MIL-STD-975M at one clause; read in another publisher's copy of its tables, hence secondary. */
function appendixA(section: string): Source {
  return {
    title: 'MIL-STD-975M (5 August 1994, cancelled 1998), NASA standard EEE parts list',
    section: `appendix A, ${section}`,
    standing: 'secondary',
  };
}

const FUSES = appendixA('3.9; another 0.005 for each kelvin above 25 °C');

/** The predecessor of the present NASA instruction, with the semiconductor rows that could not be read there. */
export const milStd975m: DeratingPolicy = {
  id: 'mil-std-975m',
  title: 'MIL-STD-975M',
  meaning: 'Space practice of the 1990s; cancelled, and far stricter than a consumer product needs.',
  rules: [
    {
      partClass: 'transistor',
      quantity: 'voltage',
      limit: 0.75,
      condition: 'with alternating peaks and transients',
      source: appendixA('3.15'),
    },
    { partClass: 'transistor', quantity: 'current', limit: 0.75, source: appendixA('3.15') },
    { partClass: 'transistor', quantity: 'power', limit: 0.5, condition: 'junction up to 125 °C', source: appendixA('3.15') },
    { partClass: 'rectifier', quantity: 'voltage', limit: 0.7, condition: 'peak inverse voltage', source: appendixA('3.4') },
    { partClass: 'rectifier', quantity: 'current', limit: 0.5, source: appendixA('3.4') },
    { partClass: 'resistor', quantity: 'power', limit: 0.6, condition: 'film chip and wire-wound', source: appendixA('3.11') },
    { partClass: 'ceramic capacitor', quantity: 'voltage', limit: 0.6, condition: 'up to 110 °C', source: appendixA('3.1') },
    { partClass: 'film capacitor', quantity: 'voltage', limit: 0.6, condition: 'up to 85 °C', source: appendixA('3.1') },
    {
      partClass: 'capacitor',
      technologies: ['tantalum'],
      quantity: 'voltage',
      limit: 0.5,
      condition: 'solid, at 70 °C, linear to 0.30 at 110 °C',
      source: appendixA('3.1'),
    },
    { partClass: 'fuse', quantity: 'current', limit: 0.5, ratedFrom: 2, ratedBelow: 15.001, source: FUSES },
    { partClass: 'fuse', quantity: 'current', limit: 0.45, ratedFrom: 1, ratedBelow: 2, source: FUSES },
    { partClass: 'fuse', quantity: 'current', limit: 0.4, ratedFrom: 0.5, ratedBelow: 1, source: FUSES },
    { partClass: 'fuse', quantity: 'current', limit: 0.35, ratedFrom: 0.375, ratedBelow: 0.5, source: FUSES },
    { partClass: 'fuse', quantity: 'current', limit: 0.3, ratedFrom: 0.25, ratedBelow: 0.375, source: FUSES },
    { partClass: 'fuse', quantity: 'current', limit: 0.25, ratedFrom: 0.125, ratedBelow: 0.25, source: FUSES },
  ],
};
