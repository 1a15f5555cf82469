import { z } from 'zod';
import { note, words } from './schema-text.ts';

const DEVICE_KINDS = ['wall charger', 'desktop charger', 'car charger', 'power bank', 'open frame supply', 'wireless charger'] as const;

export const DEVICE_SCHEMA = z
  .strictObject({
    maker: words('Who sells it.', 'Larkmoor'),
    name: words('The name it is sold under, without the maker; left out where it has only a model number.').optional(),
    model: words('Model number as printed.', 'LM-Q100').optional(),
    kind: z.enum(DEVICE_KINDS).describe('What kind of adapter it is.'),
    released: words('Year, or year and month, in quotes where it is a year alone.', '2026-01', '"2026"').optional(),
    price: words('Price with its currency.', '62 USD').optional(),
  })
  .describe('What was taken apart.');

export const SAMPLE_SCHEMA = z
  .strictObject({
    obtained: words('How you came by it; a sample lent or given by its maker is said here.', 'bought at retail').optional(),
    lot: words('Lot or date code, in quotes where it is digits only.', '"2551"').optional(),
    serial: words('Serial number, in quotes where it is digits only.').optional(),
    firmware: words('Firmware version, in quotes.', '"1.4"').optional(),
    note: note(),
  })
  .describe('The piece on your bench.');
