import type { WORD_SOURCES } from './word-vectors.ts';

/** A whole message of a source. */
export interface CapabilitySet {
  readonly id: string;
  readonly source: keyof typeof WORD_SOURCES;
  readonly words: readonly number[];
  readonly what: string;
}

export const CAPABILITY_SETS: readonly CapabilitySet[] = [
  { id: 'set 1', source: 'zephyrSink', words: [0x0a01912c, 0x0002d12c, 0x0004b12c, 0x000640e1], what: '45 W source, four objects' },
  {
    id: 'set 2',
    source: 'zephyrDualRole',
    words: [0x0a01912c, 0x0002d12c, 0x0003c12c, 0x0004b12c, 0x000641f4, 0xc1a42164],
    what: '100 W source with 12 V and PPS',
  },
  { id: 'set 3', source: 'boardBoot', words: [0x0a0191f4, 0x0002d12c, 0x0003c0e1, 0x0004b0b4], what: '27 W board supply, 5 V 5 A' },
  { id: 'set 4', source: 'ucsi', words: [0x0801912c, 0x0002d12c, 0x0004b12c, 0x00064145], what: '65 W source read through UCSI' },
  {
    id: 'set 5',
    source: 'sinkBoard',
    words: [0x0a81912c, 0x0002d12c, 0x0003c12c, 0x0004b12c, 0x000641f4, 0xc9a43264],
    what: '140 W charger, SPR message',
  },
  {
    id: 'set 6',
    source: 'sinkBoard',
    words: [0x0a81912c, 0x0002d12c, 0x0003c12c, 0x0004b12c, 0x000641f4, 0xc9a43264, 0x00000000, 0x0008c1f4, 0xd230968c],
    what: 'the same charger, EPR message with filler in place 7',
  },
  {
    id: 'set 7',
    source: 'messageLibrary',
    words: [0x0801912c, 0x0002d12c, 0x0003c12c, 0x0004b12c, 0x00064145, 0xc0dc213c],
    what: '65 W charger with PPS',
  },
  { id: 'set 8', source: 'sourceFirmware', words: [0x0801912c, 0x0802d0c8, 0x0803c096, 0xc8dc2128], what: '18 W firmware set' },
  { id: 'set 9', source: 'sourceFirmware', words: [0x0801912c, 0x0802d0fa, 0x0803c0c8, 0xc8dc2132], what: '24 W firmware set' },
  {
    id: 'set 10',
    source: 'sourceFirmware',
    words: [0x0801912c, 0x0802d12c, 0x0803c0fa, 0x0804b0b4, 0x08064087, 0xc8dc213c],
    what: '27 W firmware set',
  },
  {
    id: 'set 11',
    source: 'sourceFirmware',
    words: [0x0801912c, 0x0802d12c, 0x0803c12c, 0x0804b12c, 0x080640e1, 0xc990212d],
    what: '45 W firmware set, PPS to 20 V',
  },
  {
    id: 'set 12',
    source: 'stackConfig',
    words: [
      0x0881912c, 0x0002d12c, 0x0004b12c, 0x000641f4, 0x00000000, 0x00000000, 0x00000000, 0x0008c1f4, 0x000b41f4, 0x000f01f4, 0xd3c096f0,
    ],
    what: '240 W source as its EPR message',
  },
  {
    id: 'set 13',
    source: 'tcpmLog',
    words: [0x0801912c, 0x0002d12c, 0x0004b12c, 0x000640e1, 0xc0dc2164, 0xc140213c, 0xc1a4212d],
    what: '45 W charger, seven objects',
  },
  { id: 'set 14', source: 'tcpmPost', words: [0x0801912c, 0x0002d0c8], what: '18 W charger' },
  {
    id: 'set 15',
    source: 'bugReport',
    words: [0x2801912c, 0x0002d12c, 0x0003c12c, 0x0004b12c, 0x0006412c, 0xc1a4213c],
    what: '60 W dual-role source',
  },
];
