import { defineFormula } from '../../values/define-formula.ts';

const METER_ARTICLE = {
  title: 'GVDA Instrument, Multimeter error',
  section: '±(0.5 % + 3) at 2 V with a resolution of 1 mV: ±0.013 V',
  standing: 'read',
  url: 'https://www.gvda-instrument.com/info/multimeter-error-69432302.html',
} as const;

/** Half of the interval that an instrument's accuracy leaves around its reading. */
export const instrumentUncertainty = defineFormula({
  id: 'instrument-uncertainty',
  title: 'Uncertainty of a reading',
  subject: 'measurement',
  meaning: 'How far the true value may lie from what an instrument shows, by its stated accuracy.',
  expression: 'u = a\\,x + b\\,R + n\\,d',
  output: { tex: 'u', dimension: 'voltage', meaning: 'greatest distance of the true value from the reading', unit: 'V' },
  inputs: {
    reading: { tex: 'x', dimension: 'voltage', meaning: 'what the instrument shows', unit: 'V' },
    ofReading: { tex: 'a', dimension: 'ratio', meaning: 'accuracy, share of the reading', unit: '%' },
    range: { tex: 'R', dimension: 'voltage', meaning: 'end of the range', unit: 'V' },
    ofRange: { tex: 'b', dimension: 'ratio', meaning: 'accuracy, share of the range', unit: '%' },
    counts: { tex: 'n', dimension: 'ratio', meaning: 'digits of the last place that may be wrong', unit: '1' },
    resolution: { tex: 'd', dimension: 'voltage', meaning: 'weight of the last place', unit: 'V' },
  },
  compute({ reading, ofReading, range, ofRange, counts, resolution }) {
    return ofReading * Math.abs(reading) + ofRange * Math.abs(range) + counts * resolution;
  },
  validity: [
    'Within the temperatures and the time since calibration for which the maker states the accuracy.',
    'What stands between instrument and device (leads, contacts, pick-up) comes on top.',
  ],
  remarks: [
    'Written for volts; amperes, watts and every other quantity with the same rule.',
    'Where the bench page states no resolution, the last written digit of the reading is taken.',
    'In a ratio of two readings of one quantity on one instrument, such as watts out over watts in, the share of the reading lies to the same side in both and cancels; counts, range and fixed parts do not. An efficiency is worked out so where one instrument read both sides. Volts times amperes against watts share nothing: the gain of one quantity is not that of another. Name two instruments where two ranges of one are set apart.',
  ],
  source: METER_ARTICLE,
  examples: [
    {
      source: METER_ARTICLE,
      inputs: { reading: '2 V', ofReading: '0.5 %', range: '2 V', ofRange: '0 %', counts: '3', resolution: '0.001 V' },
      printed: '0.013 V',
      kind: 'published',
    },
    {
      source: {
        title: 'GVDA Instrument, Introduction to digital multimeter accuracy',
        section: '±(1 % + 2) at 100.0 V: 98.8 V to 101.2 V',
        standing: 'read',
        url: 'https://www.gvda-instrument.com/info/introduction-to-the-accuracy-of-digital-multim-78148637.html',
      },
      inputs: { reading: '100.0 V', ofReading: '1 %', range: '200 V', ofRange: '0 %', counts: '2', resolution: '0.1 V' },
      printed: '1.2 V',
      kind: 'published',
    },
    {
      source: {
        title: 'Victor Ruoshui, measurement error of a digital multimeter',
        section: '±(0.08 % rdg + 2 dgt) at 2.000 V: 1.9964 V to 2.0036 V',
        standing: 'read',
        url: 'http://www.victorruoshui.com/newsinfo/72611.html',
      },
      inputs: { reading: '2.000 V', ofReading: '0.08 %', range: '5 V', ofRange: '0 %', counts: '2', resolution: '0.001 V' },
      printed: '0.0036 V',
      kind: 'published',
    },
  ],
});
