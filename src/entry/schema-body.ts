import { z } from 'zod';
import { evidenceWord, note, oneOrMore, reading, words } from './schema-text.ts';

export const BODY_SCHEMA = z
  .strictObject({
    size: reading(
      'Outer size with its tolerance: three edges, or diameter and height.',
      '68 × 52 × 29 mm ± 0.3 mm',
      '⌀32 × 60 mm',
    ).optional(),
    volume: reading('Volume by displacement; it stands over the edges multiplied.', '98 cm³ ± 1 cm³').optional(),
    mass: reading('Mass with its tolerance.', '187 g ± 1 g').optional(),
    basis: z
      .enum(['cased', 'board'])
      .optional()
      .describe('Whether size and mass are those of the cased device (taken where left out) or of the bare board.'),
    prongs: z.enum(['folded', 'removed', 'included', 'none']).optional().describe('Plug prongs when the size was taken.'),
    cable: z.enum(['fixed', 'none']).optional().describe('Whether a cable is fixed to the device.'),
    inlet: words('Mains inlet.', 'C8', 'C14').optional(),
    plug: words('Mains plug.', 'type A, folding').optional(),
    material: words('Case material.', 'polycarbonate, V-0').optional(),
    'also stated': oneOrMore(
      'Other sizes that a document states for the same thing, with where.',
      '60 × 28.6 × 20 mm printed in table 1',
    ).optional(),
    evidence: evidenceWord(),
    note: note(),
  })
  .describe('Size, mass and case.');
