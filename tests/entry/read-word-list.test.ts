import { describe, expect, it } from 'vitest';
import { reading } from './reading.ts';

function offersOf(words: readonly string[]): ReturnType<typeof reading> {
  return reading(`ports:\n  C1:\n    connector: USB-C\n    offers:\n${words.map((word) => `      - "${word}"`).join('\n')}`);
}

describe('a message written one word a line', () => {
  it('is read as one message: zero words before the eighth place draw no remark', () => {
    const { entry, findings } = offersOf([
      '0x0A81912C',
      '0x0002D12C',
      '0x0004B12C',
      '0x000641F4',
      '0x00000000',
      '0x00000000',
      '0x00000000',
      '0x0008C1F4',
      '0xD230968C',
    ]);
    expect(findings).toEqual([]);
    expect(entry.ports[0]?.offers.map((offer) => [offer.written, offer.path.at(-1)])).toEqual([
      ['0x0A81912C', 0],
      ['0x0002D12C', 1],
      ['0x0004B12C', 2],
      ['0x000641F4', 3],
      ['0x0008C1F4', 7],
      ['0xD230968C', 8],
    ]);
  });

  it('places a remark at its own line', () => {
    expect(offersOf(['0x0A81912C', '0x00000000', '0x0002D12C']).places).toEqual(['value-remark 6:10']);
    expect(offersOf(['0x0A01912C', '0xF0001234']).places).toEqual(['unreadable-value 6:10']);
    expect(offersOf(['0x2C91010A', '0x2CD10200']).findings[0]).toContain('are these words printed so?');
  });
});
