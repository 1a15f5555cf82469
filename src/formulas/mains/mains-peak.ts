import { defineFormula } from '../../values/define-formula.ts';
import { cite, PUBLICATIONS } from '../publications.ts';

/** Crest of a sinusoidal supply: the voltage that a bridge charges an unloaded bulk capacitor to. */
export const mainsPeak = defineFormula({
  id: 'mains-peak',
  title: 'Peak of the mains',
  subject: 'mains',
  meaning: 'Crest of a sinusoidal supply: the voltage that a bridge charges an unloaded bulk capacitor to.',
  expression: '\\hat{V} = \\sqrt{2}\\,V_{\\mathrm{rms}}',
  output: { tex: '\\hat{V}', dimension: 'voltage', meaning: 'crest voltage', unit: 'V' },
  inputs: {
    rms: { tex: 'V_{\\mathrm{rms}}', dimension: 'voltage', meaning: 'supply voltage, rms', unit: 'V' },
  },
  compute({ rms }) {
    return Math.SQRT2 * rms;
  },
  validity: ['Sinusoidal supply; the drop of the bridge, below 2 V, is left out.'],
  source: cite(PUBLICATIONS.powerIntegrationsAn17, 'p. 8'),
  examples: [
    {
      source: cite(PUBLICATIONS.fairchildFlyback, 'eq. 4 and appendix step 2, p. 13'),
      inputs: { rms: '265 V' },
      printed: '375 V',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.texasCurrentMode, '9.2.2.2, eq. 10'),
      inputs: { rms: '265 V' },
      printed: '375 V',
      kind: 'published',
    },
    {
      source: cite(PUBLICATIONS.amethermInrush, 'worked example: 480 V, 10 % above'),
      inputs: { rms: '528 V' },
      printed: '746.59 V',
      kind: 'published',
      allowance: { fraction: 0.00016, reason: 'the source rounds the square root of 2 to 1.414, which is 0.015 % low' },
    },
    {
      source: cite(PUBLICATIONS.powerIntegrationsAn17, 'p. 8, highest input'),
      inputs: { rms: '265 V' },
      printed: '375 V',
      kind: 'published',
    },
  ],
});
