import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { isMissing } from '../../src/values/value.ts';
import { published } from '../published/published.ts';
import { anEntry, fact, part, portWith, stage, supply } from './an-entry.ts';

describe('a stage in plain words', () => {
  const main = stage('main', 'active-clamp-flyback', {}, { turns: [22, 4], feeds: ['C1'] });
  const entry = anEntry(supply('AC', '85-265 V'), [portWith('C1', [20, 3.25])], {
    stages: [main],
    parts: [part('QL', 'primary-switch', 'main', '650 V'), part('C2', 'output-capacitor', 'main', '270 µF 22 V polymer')],
  });

  it('says what is thin first, then what is comfortable', () => {
    expect(derive(entry).stageVerdicts).toEqual([
      {
        stage: 'main',
        name: 'active-clamp flyback',
        sentences: [
          'C2 (output capacitor) uses 91 % of its 22 V: thin, the line is 80 %.',
          'Comfortable: QL (primary switch) at 75 % of its 650 V.',
        ],
        comfortable: 'Comfortable: QL (primary switch) at 75 % of its 650 V.',
      },
    ]);
  });

  it('says what cannot be judged and what to measure for it', () => {
    const sentences = derive({ ...entry, stages: [{ ...main, turns: [] }] }).stageVerdicts[0]?.sentences;
    expect(sentences).toContain('Not judged: QL (primary switch); wanted: turns of main.');
  });

  it('calls a part that just keeps its line close', () => {
    const fuse = anEntry(supply('AC', '85-265 V'), [], {
      stages: [stage('in', 'input-filter')],
      parts: [part('F1', 'input-fuse', 'in', '2 A 250 VAC')],
    });
    expect(derive(fuse).stageVerdicts[0]?.sentences[0]).toBe(
      'F1 (input fuse) uses 106 % of its 250 V: within the line of 110 %, with nothing to spare.',
    );
  });
});

describe('a loss beside what explains it', () => {
  it('takes the bridge and the switch off the measured loss', () => {
    const point = {
      statistic: 'point',
      of: null,
      port: 'C1',
      loads: [],
      line: fact('115 V', 'voltage', 'e'),
      output: null,
      measuredOutput: fact('20.0 V', 'voltage', 'e'),
      current: fact('3.25 A', 'current', 'e'),
      load: null,
      input: fact('71.7 W', 'power', 'e'),
      efficiency: null,
      place: null,
      method: null,
      instrument: null,
      notSustained: null,
      ambient: null,
      after: null,
      note: null,
      cable: null,
      path: ['e'],
    } as const;
    const entry = anEntry(supply('AC', '100-240 V'), [portWith('C1', [20, 3.25])], {
      stages: [stage('bridge', 'rectifier'), stage('pfc', 'boost-pfc', { bus: fact('390 V', 'voltage', 'b') })],
      parts: [part('BD1', 'bridge-rectifier', 'bridge', '800 V 4 A')],
      efficiency: [point],
    });
    const { losses } = derive(entry);
    if (losses === null || isMissing(losses.measured) || isMissing(losses.explained)) throw new Error('no budget');
    // 71.7 W less 65.0 W; the bridge 2 × 0.9 V × (2√2/π) × 71.7 W / 115 V (bc: 1.01039 W): power as measured, drop assumed.
    expect(published(losses.measured.nominal, '6.70 W', 'power').agrees).toBe(true);
    expect(published(losses.explained.nominal, '1.0104 W', 'power').agrees).toBe(true);
  });
});
