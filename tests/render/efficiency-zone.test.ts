import { describe, expect, test } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import { efficiencyZone } from '../../src/render/efficiency-zone.ts';
import { checkText } from '../checks/read-example.ts';

const POINTS = '0.325 A: 84.5 %, 0.8125 A: 89.3 %, 1.625 A: 91.2 %, 2.4375 A: 91.7 %, 3.25 A: 91.9 %';

function zoneOf(measurements: string, { input = '100-240 V~ 50/60 Hz 1.5 A', placed = [] as readonly string[] } = {}) {
  const { entry } = checkText(
    'lm-s65',
    `---\ntitle: Efficiency\ndevice: { maker: Larkmoor, model: LM-S65, kind: wall charger }\nnameplate: { input: ${input}, total: 65 W }\nports: { C1: { connector: USB-C, power: 65 W, offers: [5 V 3 A, 20 V 3.25 A] } }\nmeasurements:\n${measurements}\n---\n\nText.\n`,
  );
  if (entry === null) throw new Error('the entry is readable');
  return efficiencyZone({ entry, derived: derive(entry), tables: [], placed, html: '', headings: [], diagnostics: [], photos: [] });
}

const run = (line: string, more = '') => `    - { port: C1, line: ${line}, output: 20 V, at: board${more}, points: { ${POINTS} } }`;
const plain = (html: string | undefined) => (html ?? '').replace(/<[^>]*>/g, ' ').replace(/[\u00a0\s]+/g, ' ');

describe('the zone of efficiency', () => {
  test('two line voltages stand in one chart: 230 V with circles, 115 V with squares, the limit and its short one', () => {
    const { matter } = zoneOf(`  efficiency:\n${run('230 V')}\n${run('115 V')}`) ?? { matter: '' };
    expect(matter.match(/<figure/g)).toHaveLength(1);
    expect(matter.match(/<circle class="point-in"/g)).toHaveLength(5);
    expect(matter.match(/<rect class="point-open"/g)).toHaveLength(5);
    expect(matter.match(/class="limit-line"/g)).toHaveLength(2);
    expect(matter).toContain('Means: 230 V 91.0 %, 115 V 91.0 %.');
  });

  test('115 V alone is drawn with squares too', () => {
    const { matter } = zoneOf(`  efficiency:\n${run('115 V')}`) ?? { matter: '' };
    expect(matter).not.toContain('point-in');
    expect(matter.match(/<rect class="point-open"/g)).toHaveLength(5);
  });

  test('counts its comparisons and says that none is a verdict of compliance', () => {
    const zone = zoneOf(`  efficiency:\n${run('230 V')}\n  standby: { 230 V: 63 mW }`);
    expect(plain(zone?.side)).toMatch(/Of \d+ comparisons with published limits: meets \d+/);
    expect(plain(zone?.side)).toContain('not a verdict of compliance');
    expect(plain(zone?.matter)).toContain('nothing plugged in 230 63 0.55');
  });

  test('from a car socket there is a curve and no limit, and it says why', () => {
    const zone = zoneOf(`  efficiency:\n${run('13.8 V')}`, { input: '12-24 V⎓ 8 A' });
    expect(zone?.matter).not.toContain('limit-line');
    expect(plain(zone?.side)).toContain('No published limit looks at it: the rules look at supplies from the mains');
  });

  test('is not there without a figure, and leaves out what the author placed in the text', () => {
    expect(zoneOf('  ripple: { 5 V: 38 mV }')).toBeNull();
    const placed = zoneOf(`  efficiency:\n${run('230 V')}`, { placed: ['efficiency-limits'] });
    expect(plain(placed?.matter)).not.toContain('Beside published limits');
    expect(plain(placed?.matter)).toContain('Loss at full load');
  });
});
