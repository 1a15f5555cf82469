import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { partAddress } from '../../src/corpus/address.ts';
import { formerAddressPath } from '../../src/corpus/former-address-path.ts';
import { FORMULAS } from '../../src/formulas/index.ts';
import { allRules } from '../../src/pipeline/all-rules.ts';
import type { Manifest } from '../../src/corpus/prepared.ts';
import { buildSmallSite, pageSource, type BuiltSite } from './built-site.ts';

const TEARDOWNS = [
  'fennimoor-deskway-100',
  'marlhythe-causeway-100',
  'ostlewick-lantern-140',
  'tillmere-nub-20',
  'wendlestone-fairlead-92',
  'crossgarth-bothy-45',
];
const BASE = '/bench/';

let site: BuiltSite;
let sheets: Manifest['sheets'];

beforeAll(async () => {
  site = await buildSmallSite(BASE, TEARDOWNS);
  // The preparing step of this test wrote it a moment ago.
  ({ sheets } = JSON.parse(readFileSync(join(site.folder, '..', 'prepared', 'manifest.json'), 'utf8')) as Manifest);
  expect(sheets.map((sheet) => sheet.slug).sort()).toEqual([...TEARDOWNS].sort());
});

/** Text of a page without its tags. */
function textOf(address: string): string {
  return pageSource(site, `${BASE}${address}`)
    .replace(/<[^>]+>/g, ' ')
    .replace(/&#39;/g, '’')
    .replace(/\s+/g, ' ');
}

describe('pages across teardowns, under a base path', () => {
  it('no former address can take the place of anything that the site has', () => {
    const steps = readdirSync(site.folder).filter((step) => step !== 'teardowns');
    expect(steps).toContain('planner');
    expect(steps.filter((step) => formerAddressPath(step).ok)).toEqual([]);
  });

  it('every part number, maker, family, formula and rule has its page', () => {
    const pages = new Set(site.pages);
    const has = (address: string): void => {
      expect(pages.has(`${BASE}${address}`), address).toBe(true);
    };
    for (const part of sheets.flatMap((sheet) => sheet.parts)) has(`parts/${partAddress(part.number)}/`);
    for (const sheet of sheets) has(`topologies/${sheet.family}/`);
    for (const formula of FORMULAS) has(`methods/${formula.id}/`);
    for (const rule of allRules()) has(`rules/${rule.id}/`);
  });

  it('every link leads to a page or a file of the site, and every page but the redirects can be reached from home', () => {
    const reached = new Set<string>([BASE]);
    const waiting = [BASE];
    for (let page = waiting.pop(); page !== undefined; page = waiting.pop()) {
      for (const [, address = ''] of pageSource(site, page).matchAll(/<a [^>]*href="([^"#?]+)[^"]*"/g)) {
        if (/^[a-z]+:/.test(address)) continue;
        expect(address.startsWith(BASE), `${address} on ${page}`).toBe(true);
        const path = decodeURIComponent(address.slice(BASE.length));
        const file = join(site.folder, path.endsWith('/') || path === '' ? `${path}index.html` : path);
        expect(existsSync(file), `${address} on ${page}`).toBe(true);
        const target = `${BASE}${path}`;
        if (!reached.has(target) && file.endsWith('.html')) {
          reached.add(target);
          waiting.push(target);
        }
      }
    }
    const former = sheets.flatMap((sheet) => sheet.formerAddresses).map((address) => `${BASE}${address.replace(/^\/+/, '')}`);
    const unreached = site.pages.filter((page) => !reached.has(page) && !former.includes(page) && !page.endsWith('404.html'));
    expect(unreached).toEqual([]);
  });

  it('a sheet names its nearest with the evidence, and says what differs where both are one platform', () => {
    const text = textOf('teardowns/marlhythe-causeway-100/');
    expect(text).toContain('Closest other sheets');
    expect(text).toMatch(/Fennimoor Deskway 100 .*Same platform under another label\. .*What differs: label Marlhythe, there Fennimoor/);
    expect(text).toContain('same controllers VLR-27S, VLR-81C');
    expect(text).toMatch(/Density \d+(?:st|nd|rd|th) of \d+ cased, over 65 to 100 W/);
  });

  it('findings that only show beside other sheets stand on the pages concerned', () => {
    for (const slug of ['marlhythe-causeway-100', 'wendlestone-fairlead-92'])
      expect(textOf(`teardowns/${slug}/`)).toMatch(/DVF-L405 is 40 V, [\d.]+ mΩ here and 40 V, [\d.]+ mΩ elsewhere/);
  });

  it('a sheet links to its own data, and every file of data is there', () => {
    const html = pageSource(site, `${BASE}teardowns/marlhythe-causeway-100/`);
    expect(html).toContain(`<a href="${BASE}teardowns/marlhythe-causeway-100/parts.csv">CSV</a>`);
    for (const name of ['devices.csv', 'parts.csv', 'datapackage.json', 'device.schema.json'])
      expect(pageSource(site, `${BASE}data/`)).toContain(`href="${BASE}data/${name}"`);
  });

  it('a family shows the stress of its members, their spread, and the controllers met most', () => {
    const text = textOf('topologies/boost-pfc-llc-half-bridge/');
    expect(text).toMatch(/Bulk capacitor, voltage 0\.93 over 0\.94 3/);
    expect(text).toMatch(/Power density, cased [\d.]+ [\d.]+ [\d.]+ W\/cm³ 3/);
    expect(text).toContain('VLR-81C on 3');
  });

  it('a former address leads to the present one without a script', () => {
    const moved = sheets.find((sheet) => sheet.formerAddresses.length > 0);
    const html = pageSource(site, `${BASE}${moved?.formerAddresses[0]?.replace(/^\/+/, '') ?? ''}`);
    const target = `${BASE}teardowns/${moved?.slug ?? ''}/`;
    expect(html).toContain(`<meta http-equiv="refresh" content="0; url=${target}"`);
    expect(html).toMatch(/<link rel="canonical" href="[^"]+"/);
    expect(html).toContain(`<a href="${target}">`);
  });

  it('a family puts its members side by side, newest first, with the median under them', () => {
    const members = sheets.filter((sheet) => sheet.family === 'boost-pfc-llc-half-bridge');
    expect(members.length).toBeGreaterThanOrEqual(2);
    const text = textOf('topologies/boost-pfc-llc-half-bridge/');
    const places = members.map((sheet) => text.indexOf(`${sheet.maker} ${sheet.name}`));
    expect(places.every((place) => place > 0)).toBe(true);
    expect([...places].sort((one, other) => one - other)).toEqual(places);
    expect(text).toContain(`Median of ${String(members.length)} sheets`);
    for (const sheet of members) expect(text).toContain(sheet.densityWPerCm3?.toFixed(3) ?? 'no size');
  });

  it('a part that two devices share names both, with its rating on each', () => {
    const uses = new Map<string, Set<string>>();
    for (const sheet of sheets) for (const part of sheet.parts) uses.set(part.number, (uses.get(part.number) ?? new Set()).add(sheet.slug));
    const [number, slugs] = [...uses].find(([, found]) => found.size >= 2) ?? ['', new Set<string>()];
    const html = pageSource(site, `${BASE}parts/${partAddress(number)}/`);
    expect(slugs.size).toBeGreaterThanOrEqual(2);
    for (const slug of slugs) expect(html).toContain(`href="${BASE}teardowns/${slug}/"`);
  });

  it('a method shows its expression, what was published, what is computed, and the sheets that use it', () => {
    const html = pageSource(site, `${BASE}methods/stored-energy/`);
    expect(html).toContain('<math display="block">');
    const text = textOf('methods/stored-energy/');
    for (const words of ['Published and computed', '50.0 mJ', '50.00 mJ', 'Where it stops being valid', 'Sheets that use it'])
      expect(text).toContain(words);
    const mains = sheets.filter((sheet) => sheet.bulkMicrofarads !== null);
    expect(mains.length).toBeGreaterThan(0);
    for (const sheet of mains) expect(text).toContain(`${sheet.maker} ${sheet.name}`);
  });

  it('every formula says that its examples agree', () => {
    for (const formula of FORMULAS) expect(textOf(`methods/${formula.id}/`), formula.id).not.toContain('differs by more than');
  });

  it('a rule shows why, what to do, its source, and its example with the reported line', () => {
    const html = pageSource(site, `${BASE}rules/capacitor-voltage-margin/`);
    for (const words of ['Why it matters', 'What to do', 'Source', 'rating: 22 µF 400 V']) expect(html).toContain(words);
    expect(html.match(/<li class="reported">/g)).toHaveLength(1);
    expect(html).not.toContain('finding:');
  });
});
