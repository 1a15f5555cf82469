import { describe, expect, it } from 'vitest';
import { valueOf } from '../../src/values/from-quantity.ts';
import { isMissing } from '../../src/values/value.ts';
import { aQuantity } from './a-quantity.ts';

const STANDBY = aQuantity('power', 0.075, { low: null, bound: 'at most', written: '≤ 75 mW', significant: 2 });

describe('the value of a written quantity', () => {
  it('keeps the number, the tolerance, the digits and the evidence', () => {
    const mass = aQuantity('mass', 0.187, { low: 0.186, high: 0.188, significant: 3, written: '187 g ± 1 g' });
    expect(valueOf({ quantity: mass, evidence: 'measured' }, 'body.mass')).toEqual({
      dimension: 'mass',
      low: 0.186,
      nominal: 0.187,
      high: 0.188,
      significant: 3,
      origin: { evidence: 'measured', written: '187 g ± 1 g', at: 'body.mass' },
    });
  });

  it('gives no value for a bound, and says which bound', () => {
    const known = valueOf({ quantity: STANDBY, evidence: 'printed' }, 'measurements.standby');
    expect(known).toMatchObject({ missing: true, needs: ['measurements.standby'] });
    expect(isMissing(known) && known.reason).toContain('only known as a bound: ≤ 75 mW');
  });

  it('takes the number of a bound where it is told to', () => {
    expect(valueOf({ quantity: STANDBY, evidence: 'printed' }, 'x', { bound: 'use' })).toMatchObject({
      low: 0.075,
      nominal: 0.075,
      high: 0.075,
    });
  });

  it('calls an assumption of the author an assumption', () => {
    const bus = valueOf({ quantity: aQuantity('voltage', 390), evidence: 'assumed' }, 'stages.pfc.bus');
    expect(bus).toMatchObject({ origin: { evidence: 'assumed' } });
  });

  it('gives no value for a number that is none', () => {
    expect(valueOf({ quantity: aQuantity('voltage', Number.NaN), evidence: 'printed' }, 'x')).toMatchObject({ missing: true });
  });
});
