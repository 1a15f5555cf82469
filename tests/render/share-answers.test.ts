import { describe, expect, test } from 'vitest';
import { shareMatrix } from '../../src/sharing/share-matrix-of.ts';
import { shareAnswers } from '../../src/render/share-answers.ts';
import type { Entry, Sharing } from '../../src/entry/entry.ts';
import { allocation, entryWithPorts, outputPort, sharing, watts } from '../sharing/entry-with-ports.ts';

const SEVENTY_FIVE: Pick<Sharing, 'total'> = { total: { quantity: watts('75 W'), evidence: 'printed', path: ['sharing', 'total'] } };
const TWO = [outputPort('A', '60 W'), outputPort('B', '60 W')];

function said(entry: Entry): string[] {
  const matrix = shareMatrix(entry);
  return matrix === null ? [] : shareAnswers(entry, matrix).map((answer) => answer.replace(/\u00a0/g, ' '));
}

describe('what the page answers in short', () => {
  // Texas Instruments SLVAFG6B, section 5.2: 75 W, two ports of 60 W at most, 37.5 W each together.
  test('full power together only, the largest fall, and that nobody tested the interruption', () => {
    expect(said(entryWithPorts(TWO, sharing([allocation({ A: '37.5 W', B: '37.5 W' })], SEVENTY_FIVE)))).toEqual([
      'Full power, 75 W, at no port alone; together at A + B.',
      'The largest fall: A from 60 W to 37.5 W when B is added.',
      'Whether the others are interrupted when a device is added: not tested.',
    ]);
  });

  test('a port with full power alone, a pool after the fall, and what each port does', () => {
    const ports = [outputPort('C1', '75 W'), outputPort('C2', '30 W'), outputPort('A1', '18 W')];
    const block = sharing([allocation({ C1: '60 W', C2: '15 W' }), allocation({ 'C2/A1': '5 W' })], {
      ...SEVENTY_FIVE,
      onNewPlugAt: { C1: 'keeps', A1: 'drops' },
    });
    expect(said(entryWithPorts(ports, block))).toEqual([
      'Full power, 75 W, only at C1, alone.',
      'The largest fall: C2 from 30 W to 5 W, shared with A1, when A1 is added.',
      'When a device is added: C1 runs on; A1 drops for a moment; C2 not tested.',
    ]);
  });

  test('assured ports lose nothing', () => {
    const block = sharing([], { policy: 'assured', onNewPlug: 'keeps' });
    expect(said(entryWithPorts(TWO, block))).toEqual([
      'No port loses power when another is plugged in.',
      'A new plug leaves the others running.',
    ]);
  });
});
