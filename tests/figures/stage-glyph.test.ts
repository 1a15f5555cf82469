import { describe, expect, it } from 'vitest';
import { DRAWN_STAGE_KINDS, stageGlyph, stageSymbols } from '../../src/figures/stage-glyph.ts';
import { STAGES } from '../../src/stages/index.ts';

describe('stage glyphs', () => {
  it('are drawn for every topology block, and for nothing else', () => {
    expect([...DRAWN_STAGE_KINDS].sort()).toEqual(STAGES.map((stage) => stage.kind).sort());
  });

  it('are defined once however often they are used', () => {
    expect(stageSymbols(['buck', 'buck', 'boost']).split('<symbol ')).toHaveLength(3);
    expect(stageGlyph('buck')).toContain('href="#s-buck"');
  });
});
