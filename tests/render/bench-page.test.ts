import { describe, expect, it } from 'vitest';
import { benchInText } from '../../src/pipeline/bench-in-text.ts';
import { benchZones } from '../../src/render/bench-page.ts';
import { quantity } from '../../src/render/quantity.ts';
import { valueOf } from '../../src/values/from-quantity.ts';
import { readQuantity } from '../../src/units/read-quantity.ts';

const { bench } = benchInText(
  'instruments:\n  meter: { name: Meter <1>, accuracy: { power: 0.1 % + 5 mW }, calibrated: 2026-01-12 }\n  spare: { name: Spare }\n',
);

describe('the page of the bench', () => {
  const html = benchZones(bench, [
    { slug: 'one', maker: 'Larkmoor', name: 'LM-Q15', instruments: [['meter', 3]] },
    { slug: 'two', maker: 'Larkmoor', name: 'LM-Q20' },
  ]);

  it('says of each instrument how good it is, when it was calibrated and where it was used', () => {
    const row = html.slice(html.indexOf('<tr id="meter">'), html.indexOf('<tr id="spare">'));
    expect(row).toContain('±(0.1 % + 5 mW)');
    expect(row).toContain('2026-01-12');
    expect(row).toContain('<a href="/teardowns/one/">Larkmoor LM-Q15</a>, 3\u00a0values');
    expect(row).not.toContain('two');
    expect(row).toContain('Meter &lt;1&gt;');
  });

  it('says what is not stated', () => {
    const row = html.slice(html.indexOf('<tr id="spare">'));
    expect(row).toContain('not stated: no interval');
    expect(row).toContain('no sheet yet');
  });

  it('has the row that a measured value links to', () => {
    const read = readQuantity('61.2 W', 'power');
    const known = read.ok
      ? valueOf({ quantity: read.value, evidence: 'measured', readOn: { instrument: 'meter', within: 0.07 } }, 'at')
      : null;
    const link = known === null ? '' : (/href="\/bench\/#([^"]+)"/.exec(quantity(known))?.[1] ?? '');
    expect(html).toContain(`id="${link}"`);
    expect(link).toBe('meter');
  });
});
