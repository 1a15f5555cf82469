import { describe, expect, it } from 'vitest';
import { judged, message, said } from './judged.ts';

describe('lists that sinks refuse', () => {
  // Linux drivers/usb/typec/tcpm, enum pdo_err: one fixture a reason.
  it.each([
    ['9V 3A, 12V 3A', 'first-offer', 'No fixed 5 V'],
    ['9V3A, 5V3A', 'first-offer', '5 V must be first'],
    ['5V3A, 12V3A, 9V3A', 'offer-order', 'not rising in voltage'],
    ['5V3A, PPS 3.3-11V 3A, 9V3A', 'offer-order', 'fixed after programmable'],
    ['5V3A, battery 5-12V 20W, battery 3-9V 20W', 'offer-order', 'not rising in lowest voltage'],
    ['5V3A, variable 5-12V 3A, variable 5-12V 2A', 'offer-twice', 'is a duplicate'],
    ['5V3A, 9V3A, PPS 3.3-16V 3A, PPS 3.3-11V 3A', 'offer-order', 'not rising in highest voltage'],
    ['5V3A, 9V3A, PPS 3.3-11V 3A, PPS 3.3-11V 3A', 'offer-twice', 'is a duplicate'],
  ])('%s: %s', (text, rule, words) => {
    expect(message(text, rule)).toContain(words);
  });

  it('are an error at the first place when the words themselves say so, and a warning when a label does', () => {
    expect(said('0x0002D12C 0x0801912C')).toContain('error first-offer');
    expect(said('9V3A, 5V3A')).toContain('warning first-offer');
  });

  it('cannot hold an eighth object, unless it is of EPR', () => {
    const seven = '5V 3A, 9V 3A, 12V 3A, 15V 3A, 20V 5A, PPS 5-16V 5A, PPS 5-21V 5A';
    expect(said(seven)).not.toContain('error offer-count');
    expect(message(`${seven}, PPS 5-11V 5A`, 'offer-count')).toBe('8 offers to 20 V: a message holds 7.');
    expect(message(`${seven}, 28V 5A, EPR AVS 15-28V 140W`, 'offer-count')).toBe('');
  });

  it('put SPR AVS before PPS', () => {
    const [before, after] = ['SPR AVS 9-20V 3A/3.25A', 'PPS 5-21V 3.25A'];
    const fixed = '5V 3A, 9V 3A, 15V 3A, 20V 3.25A';
    expect(message(`${fixed}, ${before}, ${after}`, 'offer-order')).toBe('');
    expect(message(`${fixed}, ${after}, ${before}`, 'offer-order')).toContain('SPR AVS after programmable');
  });
});

describe('the fixed supplies that a rated power asks for', () => {
  // USB PD R3.2 V1.1, Table 10.2; currents may be rounded up or down to 10 mA (10.2).
  it.each([
    [15, '5V 3A'],
    [18, '5V 3A, 9V 2A'],
    [20, '5V 3A, 9V 2.22A'],
    [20, '5V 3A, 9V 2.23A'],
    [25, '5V 3A, 9V 2.77A'],
    [25, '5V 3A, 9V 2.78A'],
    [27, '5V 3A, 9V 3A'],
    [30, '5V 3A, 9V 3A, 15V 2A'],
    [33, '5V 3A, 9V 3A, 15V 2.2A'],
    [35, '5V 3A, 9V 3A, 15V 2.33A'],
    [35, '5V 3A, 9V 3A, 15V 2.34A'],
    [40, '5V 3A, 9V 3A, 15V 2.66A'],
    [45, '5V 3A, 9V 3A, 15V 3A'],
    [60, '5V 3A, 9V 3A, 15V 3A, 20V 3A'],
    [65, '5V 3A, 9V 3A, 15V 3A, 20V 3.25A'],
    [67, '5V 3A, 9V 3A, 15V 3A, 20V 3.35A'],
    [100, '5V 3A, 9V 3A, 15V 3A, 20V 5A'],
    [140, '5V 3A, 9V 3A, 15V 3A, 20V 5A, 28V 5A, EPR AVS 15-28V 140W'],
    [180, '5V 3A, 9V 3A, 15V 3A, 20V 5A, 28V 5A, 36V 5A, EPR AVS 15-36V 180W'],
    [240, '5V 3A, 9V 3A, 15V 3A, 20V 5A, 28V 5A, 36V 5A, 48V 5A, EPR AVS 15-48V 240W'],
  ])('%d W: %s', (watts, text) => {
    expect(said(text, { watts })).toEqual([]);
  });

  it.each([
    [20, '5V 3A, 9V 2.2A', '9 V carries 2.2 A'],
    [65, '5V 3A, 9V 3A, 20V 3.25A', 'No fixed 15 V'],
    [30, '5V 3A, 9V 2.5A, 15V 2A', '9 V carries 2.5 A'],
    [140, '5V 3A, 9V 3A, 15V 3A, 20V 5A', 'No fixed 28 V'],
    [45, '5V 2A, 9V 3A, 15V 3A', '5 V carries 2 A'],
  ])('%d W is not met by %s', (watts, text, words) => {
    expect(message(text, 'required-offers', { watts })).toContain(words);
  });

  it('are only noted where a maker’s own protocol may carry the power', () => {
    const known = { watts: 65, protocols: ['ten volts by the data lines'] };
    expect(said('5V 3A, 9V 3A', known)).toContain('note required-offers');
    expect(said('5V 3A, 9V 3A', known)).not.toContain('warning required-offers');
  });

  it('are expected only as far as the cable lets the source show them', () => {
    const list = '5V 3A, 9V 3A, 15V 3A, 20V 3A';
    expect(said(list, { watts: 65, cable: 'unmarked cable' })).toEqual(['note cable-of-offers']);
    expect(message(list, 'cable-of-offers', { watts: 65, cable: 'unmarked cable' })).toContain('may offer more through a marked one');
    expect(message(list, 'required-offers', { watts: 65, cable: 'marked cable' })).toContain('20 V carries 3 A');
  });
});

describe('what an older revision allowed', () => {
  it('12 V is a note, and a warning where R3.2 is claimed', () => {
    const list = '5V 3A, 9V 3A, 12V 3A, 15V 3A, 20V 5A';
    expect(said(list, { watts: 100, revision: '3.0' })).toEqual(['note optional-offers']);
    expect(message(list, 'optional-offers', { watts: 100 })).toContain('older revisions allowed it');
    expect(said(list, { watts: 100, revision: '3.2' })).toContain('warning optional-offers');
  });

  it('PPS from 3.3 V is a note, and a warning where R3.2 is claimed', () => {
    const list = '5V 3A, 9V 3A, 15V 3A, 20V 5A, PPS 3.3-21V 5A';
    expect(said(list, { watts: 100, revision: '3.1' })).toEqual(['note pps-ranges']);
    expect(said(list, { watts: 100, revision: '3.2 V1.1' })).toContain('warning pps-ranges');
    expect(said(list.replace('3.3', '4'), { watts: 100 })).toContain('warning pps-ranges');
  });

  it('no SPR AVS is a note for an older message, and a warning where R3.2 is claimed', () => {
    const words = '0x0801912C 0x0002D12C 0x0004B12C 0x00064145';
    expect(said(words, { watts: 65, revision: '3.0' })).toEqual(['note avs-offers']);
    expect(said(words, { watts: 65, revision: '3.2' })).toEqual(['warning avs-offers']);
    expect(said(words, { watts: 65 })).toEqual([]);
    expect(said('0x0801912C 0x0002D12C', { watts: 27, revision: '3.2' })).toEqual([]);
  });

  it('the 5 V range of PPS is one too', () => {
    expect(message('5V 3A, 9V 3A, PPS 3.3-5.9V 3A, PPS 3.3-11V 3A', 'pps-ranges', { watts: 27 })).toContain(
      'ends at 5.9 V; older revisions had it',
    );
  });
});

describe('PPS', () => {
  // USB PD R3.2 V1.1, 10.2.3.2.2: worked examples.
  it.each([
    [36, '5V 3A, 9V 3A, 15V 2.4A, PPS 5-11V 3A, PPS 5-16V 2.4A'],
    [50, '5V 3A, 9V 3A, 15V 3A, 20V 2.5A, PPS 5-16V 3A, PPS 5-21V 2.5A'],
    [80, '5V 3A, 9V 3A, 15V 3A, 20V 4A, PPS 5-16V 3A, PPS 5-21V 4A'],
    [27, '5V 3A, 9V 3A, PPS 5-11V 3A'],
    [20, '5V 3A, 9V 2.22A, PPS 5-11V 2.2A'],
    [45, '5V 3A, 9V 3A, 15V 3A, PPS 5-16V 3A'],
    [60, '5V 3A, 9V 3A, 15V 3A, 20V 3A, PPS 5-21V 3A'],
    [65, '5V 3A, 9V 3A, 15V 3A, 20V 3.25A, PPS 5-21V 3.25A'],
    [100, '5V 3A, 9V 3A, 15V 3A, 20V 5A, PPS 5-21V 5A'],
  ])('%d W: %s', (watts, text) => {
    expect(said(text, { watts })).toEqual([]);
  });

  it('is rounded down to 50 mA, so 2.15 A is too little for 20 W', () => {
    expect(message('5V 3A, 9V 2.22A, PPS 5-11V 2.15A', 'pps-currents', { watts: 20 })).toContain('must carry 2.2 A at 9 V');
  });

  it('is counted at its nominal voltage: 21 V × 5 A is 100 W', () => {
    expect(said('5V 3A, 9V 3A, 15V 3A, 20V 5A, PPS 5-21V 5A', { watts: 100 })).toEqual([]);
    expect(message('5V 3A, 9V 3A, 15V 3A, 20V 3.25A, PPS 5-21V 5A', 'pps-currents', { watts: 65 })).toContain(
      '20 V × 5 A = 100 W at its nominal voltage',
    );
  });

  it('above the rated power is in order when its power-limited bit is set', () => {
    const fixed = '0x0801912C 0x0002D12C 0x0004B12C 0x00064145';
    expect(said(`${fixed} 0xC9A43264`, { watts: 65 })).toEqual([]);
    expect(said(`${fixed} 0xC1A43264`, { watts: 65 })).toEqual(['warning pps-currents']);
  });

  it('below 1 A cannot be set', () => {
    expect(message('5V 3A, PPS 5-11V 0.2A', 'pps-ranges')).toContain('below 1 A');
  });
});

describe('EPR', () => {
  const spr = '0x0881912C 0x0002D12C 0x0004B12C 0x000641F4 0x00000000 0x00000000 0x00000000';

  it('needs its bit in the first object, and only above 100 W', () => {
    expect(message(`${spr.replace('0x0881912C', '0x0801912C')} 0x0008C1F4 0xD230968C`, 'epr-bit', { watts: 140 })).toContain(
      'bit (23) of 0x0801912C is not set',
    );
    expect(message('0x0881912C 0x0002D12C 0x0004B12C 0x000641F4', 'epr-bit', { watts: 100 })).toContain('for sources above 100 W');
    expect(message('0x0801912C 0x0002D12C 0x0004B12C 0x000641F4', 'epr-bit', { watts: 140 })).toContain(
      'A source of 140 W has the EPR capable bit',
    );
    expect(said(`${spr} 0x0008C1F4 0xD230968C`, { watts: 140 })).toEqual([]);
  });

  it.each([
    ['28V 5A, EPR AVS 15-36V 140W', 140, 'with 140 W it ends at 28 V'],
    ['28V 5A, EPR AVS 16-28V 140W', 140, 'EPR AVS begins at 15 V'],
    ['28V 5A', 140, 'without EPR AVS'],
    ['28V 5A, EPR AVS 15-28V 120W', 140, 'names 120 W'],
  ])('%s at %d W: %s', (text, watts, words) => {
    expect(message(`5V 3A, 9V 3A, 15V 3A, 20V 5A, ${text}`, 'avs-offers', { watts })).toContain(words);
  });

  it('has no 36 V at 140 W', () => {
    expect(message('5V 3A, 9V 3A, 15V 3A, 20V 5A, 28V 5A, 36V 3.88A, EPR AVS 15-28V 140W', 'optional-offers', { watts: 140 })).toContain(
      '36 V is no voltage of a 140 W source',
    );
  });

  it('has SPR AVS currents equal to those of 15 V and 20 V', () => {
    // A captured word: 15 V 3.00 A, 20 V 2.02 A beside a fixed 20 V 2.25 A.
    expect(message('0x0801912C 0x0002D12C 0x0004B12C 0x000640E1 0xEC04B0CA', 'avs-offers')).toContain(
      'carries 2.02 A to 20 V, and fixed 20 V carries 2.25 A',
    );
  });
});

describe('variable supplies', () => {
  it('wander by a fifth at most', () => {
    // USB PD R3.2 V1.1, 6.4.1.2.2.
    expect(message('5V 3A, variable 5-12V 3A', 'variable-range')).toContain('less than 80 %');
    expect(message('5V 3A, variable 9.6-12V 3A', 'variable-range')).toBe('');
  });
});

describe('cables', () => {
  it.each([
    ['5V 3A, 9V 3A, 15V 3A, 20V 5A', 'unmarked cable', 'warning', 'needs a cable marked 5 A'],
    ['5V 3A, 9V 3A, 15V 3A, 20V 5A', null, 'note', 'the cable of the reading is not named'],
    ['5V 3A, 9V 3A, 15V 3A, 20V 5A, 28V 5A, EPR AVS 15-28V 140W', 'marked cable', 'warning', 'needs a cable marked for EPR'],
  ] as const)('%s through %s: %s', (text, cable, severity, words) => {
    const [remark] = judged(text, { cable }).filter(({ rule }) => rule === 'cable-of-offers');
    expect(remark?.severity).toBe(severity);
    expect(remark?.message).toContain(words);
  });

  it('3 A goes through any', () => {
    expect(said('5V 3A, 9V 3A, 15V 3A, 20V 2.5A', { watts: 50, cable: 'unmarked cable' })).toEqual([]);
  });
});

describe('power that is promised', () => {
  it.each([
    ['5V 3A, 9V 2.22A, 12V 1.67A', 20, []],
    ['5V 3A, 9V 2.78A, 12V 2.08A', 25, []],
    ['5V 3A, 9V 2.22A, 12V 1.75A', 20, ['warning']],
    ['5V 3A, 9V 2.22A', 25, ['warning']],
  ] as const)('%s at %d W', (text, watts, severities) => {
    expect(judged(text, { watts }).flatMap(({ rule, severity }) => (rule === 'offers-against-rated-power' ? [severity] : []))).toEqual(
      severities,
    );
  });

  it('is declared in whole watts from 10 W on', () => {
    expect(message('5V 3A, 9V 2.5A', 'rated-power-steps', { watts: 22.5 })).toContain('22.5 W is no power that USB PD declares');
    expect(said('5V 1.5A, 9V 0.83A', { watts: 7.5 })).not.toContain('note rated-power-steps');
  });
});
