import { defineFormula } from '../../values/define-formula.ts';
import { boxRise } from '../box-heat.ts';
import { cite, PUBLICATIONS, workedWith } from '../publications.ts';

/** Temperature at which a box in free air gives off its loss by natural convection and radiation, found by iteration. */
export const boxSurfaceTemperature = defineFormula({
  id: 'box-surface-temperature',
  title: 'Surface temperature of a box',
  subject: 'thermal',
  meaning: 'Temperature at which a box in free air gives off its loss by natural convection and radiation, found by iteration.',
  expression:
    'P = \\sum_{\\text{sides, top, base}} h_{i}(a, b, h)\\,A_{i}\\,\\vartheta + \\varepsilon\\,\\sigma\\,A\\left((T_{a} + \\vartheta)^{4} - T_{a}^{4}\\right),\\quad T_{s} = T_{a} + k\\,\\vartheta',
  output: { tex: 'T_{s}', dimension: 'temperature', meaning: 'surface temperature', unit: '°C' },
  inputs: {
    loss: { tex: 'P', dimension: 'power', meaning: 'loss inside', unit: 'W' },
    length: { tex: 'a', dimension: 'length', meaning: 'length', unit: 'mm' },
    width: { tex: 'b', dimension: 'length', meaning: 'width', unit: 'mm' },
    height: { tex: 'h', dimension: 'length', meaning: 'height', unit: 'mm' },
    ambient: { tex: 'T_{a}', dimension: 'temperature', meaning: 'air temperature', unit: '°C' },
    emissivity: { tex: '\\varepsilon', dimension: 'ratio', meaning: 'emissivity; about 0.9 for plastic', unit: '1' },
    correlation: { tex: 'k', dimension: 'ratio', meaning: 'rise over that of the correlations: 0.8 to 1.2', unit: '1' },
  },
  compute({ loss, length, width, height, ambient, emissivity, correlation }) {
    return ambient + correlation * boxRise({ length, width, height }, loss, ambient, emissivity);
  },
  validity: [
    'Free air on all six faces, uniform surface temperature; a box in a socket or on a table runs hotter.',
    'The correlations reach adapter sizes only at their edge: the rise is good to ±20 % at best, which the factor k carries.',
  ],
  remarks: ['Later editions of the same textbook give 0.52 Ra^(1/5) for a hot face looking down; one set is used throughout.'],
  source: cite(PUBLICATIONS.incroperaTextbook, 'chapter 9: laminar vertical face, horizontal faces up and down; grey radiation'),
  examples: [
    {
      source: workedWith('Python, fixed-point iteration, 60 × 60 × 30 mm'),
      inputs: { loss: '5 W', length: '60 mm', width: '60 mm', height: '30 mm', ambient: '25 °C', emissivity: '0.9', correlation: '1' },
      printed: '51.06 °C',
      kind: 'independent',
      allowance: { fraction: 0.002, reason: 'the iteration holds the properties of air at 320 K; here they follow the film temperature' },
    },
  ],
});
