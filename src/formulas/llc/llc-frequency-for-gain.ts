import { defineFormula } from '../../values/define-formula.ts';
import { frequencyOfLargestGain } from '../llc-largest-gain-frequency.ts';
import { cite, PUBLICATIONS } from '../publications.ts';
import { llcGain } from './llc-gain.ts';

/** Highest multiple of the resonance that is searched; no controller goes there. */
const HIGHEST = 10;

/** Halvings of the stretch between peak and `HIGHEST`: past the last digit of a double. */
const HALVINGS = 60;

const GAIN_DIGITS =
  'the wanted gain is printed to three digits; half of its last one moves the frequency by this much, more the flatter the curve';

/** Frequency at which an LLC tank has a wanted gain, on the side of its peak where the switches turn on at zero voltage. */
export const llcFrequencyForGain = defineFormula({
  id: 'llc-frequency-for-gain',
  title: 'Frequency at which an LLC tank has a gain',
  subject: 'llc',
  meaning:
    'Switching over resonant frequency at which the tank has the gain that is asked for, above the frequency of its largest gain, where the switches turn on at zero voltage.',
  expression: 'f_{n}:\\quad M(f_{n}, L_{n}, Q_{e}) = M',
  output: { tex: 'f_{n}', dimension: 'ratio', meaning: 'switching over resonant frequency', unit: '1' },
  inputs: {
    gain: { tex: 'M', dimension: 'ratio', meaning: 'gain that is asked for', unit: '1' },
    inductanceRatio: { tex: 'L_{n}', dimension: 'ratio', meaning: 'magnetising over resonant inductance', unit: '1' },
    quality: { tex: 'Q_{e}', dimension: 'ratio', meaning: 'quality factor; 0 without load', unit: '1' },
  },
  compute({ gain, inductanceRatio, quality }) {
    const gainAt = (frequencyRatio: number): number => llcGain.compute({ inductanceRatio, quality, frequencyRatio });
    let low = frequencyOfLargestGain(inductanceRatio, quality);
    let high = HIGHEST;
    if (!(gainAt(low) >= gain && gainAt(high) <= gain)) return NaN;
    for (let step = 0; step < HALVINGS; step += 1) {
      const middle = (low + high) / 2;
      if (gainAt(middle) > gain) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  },
  validity: [
    'First-harmonic approximation: good near resonance, low below it.',
    'The gain lies between the largest of the tank at this load and that at ten times the resonance.',
  ],
  remarks: ['There is no closed form with load: the gain falls steadily above its peak, so the frequency is found by halving.'],
  source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5'),
  examples: [
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { gain: '0.836', inductanceRatio: '2.41', quality: '0' },
      printed: '1.379',
      kind: 'published',
      allowance: { fraction: 0.002, reason: GAIN_DIGITS },
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { gain: '0.836', inductanceRatio: '3', quality: '0' },
      printed: '1.5622',
      kind: 'published',
      allowance: { fraction: 0.003, reason: GAIN_DIGITS },
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { gain: '0.836', inductanceRatio: '3.46', quality: '0' },
      printed: '1.7698',
      kind: 'published',
      allowance: { fraction: 0.004, reason: GAIN_DIGITS },
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { gain: '0.836', inductanceRatio: '3.68', quality: '0' },
      printed: '1.9035',
      kind: 'published',
      allowance: { fraction: 0.005, reason: GAIN_DIGITS },
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { gain: '0.836', inductanceRatio: '4.21', quality: '0' },
      printed: '2.4133',
      kind: 'published',
      allowance: { fraction: 0.009, reason: GAIN_DIGITS },
    },
    {
      source: cite(PUBLICATIONS.resonantTankNote, 'p. 4 and 5, no load'),
      inputs: { gain: '0.836', inductanceRatio: '4.71', quality: '0' },
      printed: '3.6928',
      kind: 'published',
      allowance: { fraction: 0.024, reason: GAIN_DIGITS },
    },
  ],
});
