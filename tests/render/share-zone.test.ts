import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { shareZone } from '../../src/render/share-zone.ts';
import { checkText } from '../checks/read-example.ts';

const PORTS = `ports:
  C1: { connector: USB-C, power: 100 W, offers: [5 V 3 A, 20 V 5 A] }
  C2: { connector: USB-C, power: 100 W, offers: [5 V 3 A, 20 V 5 A] }
`;

/** Text of the zone of an entry with this block of ports and sharing, without tags. */
function zoneOf(data: string): { readonly side: string; readonly matter: string } {
  const { entry } = checkText(
    'lm-q100',
    `---\ntitle: Shares\ndevice: { maker: Larkmoor, model: LM-Q100, kind: desktop charger }\n${data}---\n\nText.\n`,
  );
  if (entry === null) throw new Error('the entry is readable');
  const zone = shareZone({ entry, derived: derive(entry), tables: [], placed: [], html: '', headings: [], diagnostics: [], photos: [] });
  return { side: plain(zone?.side ?? ''), matter: plain(zone?.matter ?? '') };
}

function plain(html: string): string {
  return html
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('(rests on an assumption)', '')
    .replace(/[\u00a0\s]+/g, ' ')
    .replaceAll(' .', '.')
    .trim();
}

describe('the zone of the port shares', () => {
  // Power Systems Design, 1 August 2023: a four-port charger of 100 W of which the steps of each port are told, and no more.
  test('shows steps where the combinations are not known, and which sets to measure', () => {
    const ports = ['C1', 'C2', 'C3', 'A1'].map((id) => `  ${id}: { connector: ${id === 'A1' ? 'USB-A' : 'USB-C'} }\n`).join('');
    const steps = '  steps: { C1: [100 W, 65 W, 45 W], C2: [100 W, 65 W, 30 W], C3: 30 W, A1: [30 W, 18 W] }\n';
    const { side, matter } = zoneOf(`ports:\n${ports}sharing:\n  total: 100 W\n  policy: shared\n${steps}`);
    expect(side).toContain('15 are not known');
    expect(side).toContain('Measure next C1 C2 C3 A1 C1 + C2');
    expect(side).toContain('and 7 more');
    expect(matter).toContain('Steps of each port. 9 steps of 4 ports known.');
    expect(matter).toMatch(/C1 100 C1 65 C1 45 C2 100 C2 65 C2 30 C3 30 A1 30 A1 18/);
    expect(matter).not.toContain('Evidence');
  });

  test('names shared capacity, what falls, and a row for each order of plugging with its evidence', () => {
    const { side, matter } = zoneOf(`${PORTS}sharing:\n  total: 100 W\n  allocations:\n    C1 then C2: 65 W measured + 30 W printed\n`);
    expect(side).toContain(
      'Shared capacity, by the numbers: the ports draw on one total of 100 W. The ports’ own limits add up to 200 W, 100 W more than that, as they may.',
    );
    expect(side).toContain('C1 + C2 in another order: 1 of 2 known');
    expect(side).toContain('Whether the others are interrupted when a device is added: not tested.');
    expect(matter).toContain('C1 measured, C2 printed, C1 then C2');
    expect(matter).toMatch(/When one more device is plugged in\..* C1, C1 then C2 C2 C1 100 65 35/);
  });

  // 10 CFR 430 subpart B appendix Z: D is the rated total over the sum of V × I, and every port's current is multiplied by it.
  test('scales the test load of each port so that the sum is the total', () => {
    const { matter } = zoneOf(`${PORTS}sharing: { total: 100 W }\n`);
    expect(matter).toContain('At the highest voltage, D = 0.50 C1 20.0 5.00 2.50 C2 20.0 5.00 2.50');
    expect(matter).toContain('At the lowest voltage, D = 1.00 C1 5.00 2.00 2.00 C2 5.00 2.00 2.00');
  });

  test('is not there for one port', () => {
    expect(zoneOf('ports: { C1: { connector: USB-C, power: 20 W } }\n')).toEqual({ side: '', matter: '' });
  });
});
