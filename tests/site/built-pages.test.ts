/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { HtmlValidate } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { SCHEME_SCRIPT } from '../../src/render/scheme-script.ts';
import { axeFaults } from './axe-faults.ts';
import { buildSmallSite, onePageOfEachKind, pageSource } from './built-site.ts';
import { smallText } from './small-text.ts';
import { showSite } from './shown-site.ts';

const TEARDOWNS = ['fennimoor-deskway-100', 'tillmere-nub-20', 'wendlestone-fairlead-92', 'crossgarth-bothy-45'];

const shown = await showSite(() => buildSmallSite('/', TEARDOWNS));

describe('a built site', () => {
  it('has a page for each teardown with the device as its heading and the text in its body', () => {
    for (const slug of TEARDOWNS) {
      const html = pageSource(shown.site, `/teardowns/${slug}/`);
      expect(html.match(/<h1>/g)).toHaveLength(1);
      expect(html).toContain('class="prose"');
      expect(html.length).toBeGreaterThan(20_000);
    }
  });

  it('letters the zones of a sheet without gaps and without I and O', () => {
    for (const slug of TEARDOWNS) {
      const letters = [...pageSource(shown.site, `/teardowns/${slug}/`).matchAll(/<section class="zone[^"]*" id="([A-Z])"/g)].map(
        (match) => match[1],
      );
      expect(letters).toEqual('ABCDEFGHJKLMNPQRSTUVWXYZ'.split('').slice(0, letters.length));
    }
  });

  it('carries its caution on every teardown', () => {
    expect(pageSource(shown.site, '/teardowns/fennimoor-deskway-100/')).toContain('Never power an opened adapter from the mains.');
    expect(pageSource(shown.site, '/teardowns/wendlestone-fairlead-92/')).toContain('Current in an opened unit');
    expect(pageSource(shown.site, '/teardowns/crossgarth-bothy-45/')).toContain('Never pierce, bend, heat or short a cell');
  });

  it('uses no inline script but that of the scheme, no inline style and no event attribute', () => {
    for (const page of shown.site.pages) {
      const html = pageSource(shown.site, page);
      expect(/<style|\sstyle=|\son[a-z]+="/.exec(html)?.[0], page).toBeUndefined();
      for (const [script, tag] of html.matchAll(/(<script[^>]*>)[^]*?<\/script>/g))
        if (tag !== '<script>') expect(tag, page).toContain('src="');
        else expect(script, page).toBe(`<script>${SCHEME_SCRIPT}</script>`);
    }
  });

  it('paints its text without waiting for a script: each is loaded beside the page or after it', () => {
    for (const page of shown.site.pages) {
      expect(/<script(?![^>]*\s(?:async|defer|type="module"))[^>]+>/.exec(pageSource(shown.site, page))?.[0], page).toBeUndefined();
    }
  });

  it('keeps a teardown under 100 KB of compressed HTML and CSS, with no scripts but those of the scheme and of the callouts', () => {
    const styles = readdirSync(join(shown.site.folder, '_sheet')).filter((name) => name.endsWith('.css'));
    for (const slug of TEARDOWNS) {
      const html = pageSource(shown.site, `/teardowns/${slug}/`);
      const linked = styles
        .filter((name) => html.includes(name))
        .map((name) => readFileSync(join(shown.site.folder, '_sheet', name), 'utf8'));
      expect(linked.length).toBeGreaterThan(0);
      expect(gzipSync(html).length + gzipSync(linked.join('')).length).toBeLessThan(100_000);
      const scripts = [...html.matchAll(/<script[^>]*src="([^"]+)"/g)].map((match) => match[1] ?? '');
      // Where photos have callouts, one small script lights mark and row together.
      expect(scripts.filter((address) => !address.startsWith('/_sheet/photo-sheet.'))).toEqual(['/scheme.js']);
    }
  });

  it('ships fonts cut down to what the trade writes', () => {
    const fonts = readdirSync(join(shown.site.folder, '_sheet')).filter((name) => name.endsWith('.woff2'));
    expect(fonts.length).toBeGreaterThan(5);
    for (const font of fonts) expect(statSync(join(shown.site.folder, '_sheet', font)).size, font).toBeLessThan(40_000);
  });

  it('is valid HTML on one page of each kind', async () => {
    const validator = new HtmlValidate({
      extends: ['html-validate:recommended'],
      rules: {
        // Formatting choices of a generator, not faults.
        'long-title': 'off',
        'no-trailing-whitespace': 'off',
        'attribute-boolean-style': 'off',
        'doctype-style': 'off',
        'void-style': 'off',
        'no-inline-style': 'error',
        // Numbers and units are kept together by these characters on purpose.
        'tel-non-breaking': 'off',
      },
    });
    const faults: string[] = [];
    for (const page of onePageOfEachKind(shown.site)) {
      const report = await validator.validateString(pageSource(shown.site, page), page);
      faults.push(
        ...report.results.flatMap((result) =>
          result.messages.map((message) => `${page}:${message.line}:${message.column} ${message.ruleId} ${message.message}`),
        ),
      );
    }
    expect(faults.slice(0, 20)).toEqual([]);
  });
});

shown.describeInBrowser('a built site in a real browser', () => {
  for (const scheme of ['light', 'dark'] as const) {
    for (const width of [1280, 360]) {
      it(`has no accessibility fault in the ${scheme === 'light' ? 'paper' : 'blueprint'} scheme at ${width} px`, async () => {
        const faults: string[] = [];
        await shown.visit(
          onePageOfEachKind(shown.site),
          { viewport: { width, height: 900 }, colorScheme: scheme, bypassCSP: true },
          async (page, address) => {
            faults.push(...(await axeFaults(page)).map((fault) => `${address} ${fault}`));
          },
        );
        expect(faults).toEqual([]);
      });
    }
  }

  it('is no wider than a phone on any page', async () => {
    await shown.visit(onePageOfEachKind(shown.site), { viewport: { width: 360, height: 780 } }, async (page, address) => {
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(width, address).toBeLessThanOrEqual(360);
    });
  });

  it('has no text under 12.5 px but raised and lowered signs', async () => {
    for (const width of [1280, 360]) {
      await shown.visit(
        shown.site.slugs.map((slug) => `/teardowns/${slug}/`),
        { viewport: { width, height: 900 } },
        async (page, address) => {
          const small = await page.evaluate(smallText);
          expect(small, `${address} ${width}`).toEqual([]);
        },
      );
    }
  });

  it('asks no other host for anything, breaks no policy and logs nothing', async () => {
    const context = await shown.openWindow({ viewport: { width: 1280, height: 900 } });
    const page = await context.newPage();
    const elsewhere: string[] = [];
    const said: string[] = [];
    page.on('request', (request) => {
      if (!request.url().startsWith(`${shown.origin}/`)) elsewhere.push(request.url());
    });
    page.on('console', (message) => said.push(`${page.url()} ${message.text()}`));
    page.on('pageerror', (error) => said.push(`${page.url()} ${error.message}`));
    // Going on to the next page cuts off what the last one still wanted.
    page.on('requestfailed', (request) => {
      if (request.failure()?.errorText !== 'net::ERR_ABORTED') said.push(`failed ${request.url()}`);
    });
    await page.addInitScript(() => {
      document.addEventListener('securitypolicyviolation', (event) => {
        console.error(`policy ${event.violatedDirective} ${event.blockedURI}`);
      });
    });
    for (const address of onePageOfEachKind(shown.site)) {
      await page.goto(shown.origin + address, { waitUntil: 'load' });
      await page.evaluate(() => document.fonts.ready);
    }
    await context.close();
    expect(elsewhere).toEqual([]);
    expect(said).toEqual([]);
  });

  it('has a glyph of its own for every character it prints', async () => {
    for (const address of onePageOfEachKind(shown.site)) {
      const context = await shown.openWindow({ viewport: { width: 1280, height: 900 } });
      const page = await context.newPage();
      await page.goto(shown.origin + address, { waitUntil: 'load' });
      await page.evaluate(() => document.fonts.ready);
      const protocol = await context.newCDPSession(page);
      await protocol.send('DOM.enable');
      await protocol.send('CSS.enable');
      const { root } = await protocol.send('DOM.getDocument', { depth: 0 });
      const { nodeId } = await protocol.send('DOM.querySelector', { nodeId: root.nodeId, selector: 'body' });
      const { fonts } = await protocol.send('CSS.getPlatformFontsForNode', { nodeId });
      await context.close();
      expect(
        fonts.some((font) => font.isCustomFont),
        address,
      ).toBe(true);
      expect(
        fonts.filter((font) => !font.isCustomFont).map((font) => `${font.familyName} ${font.glyphCount}`),
        address,
      ).toEqual([]);
    }
  });

  it('shows the same text with scripts switched off, and offers no switch that does nothing', async () => {
    const address = `/teardowns/${TEARDOWNS[0] ?? ''}/`;
    const texts: string[] = [];
    for (const javaScriptEnabled of [true, false]) {
      await shown.visit([address], { javaScriptEnabled, viewport: { width: 1280, height: 900 } }, async (page) => {
        texts.push(await page.locator('main').innerText());
        expect(await page.locator('[data-scheme-switch]').isVisible()).toBe(javaScriptEnabled);
      });
    }
    expect(texts[1]).toBe(texts[0]);
    expect(texts[0]?.length).toBeGreaterThan(5_000);
  });

  it('can be walked with the keyboard: the skip link first, and a visible focus on everything', async () => {
    await shown.visit([`/teardowns/${TEARDOWNS[0] ?? ''}/`], { viewport: { width: 1280, height: 900 } }, async (page) => {
      await page.keyboard.press('Tab');
      expect(await page.evaluate(() => document.activeElement?.textContent.trim())).toBe('Skip to the sheet');
      for (let step = 0; step < 25; step += 1) {
        await page.keyboard.press('Tab');
        const outline = await page.evaluate(() =>
          document.activeElement === null ? '' : getComputedStyle(document.activeElement).outlineStyle,
        );
        expect(outline).not.toBe('none');
      }
    });
  });

  it('prints as A4 sheets, the drawing on a page of its own', async () => {
    await shown.visit([`/teardowns/${TEARDOWNS[0] ?? ''}/`], { viewport: { width: 1280, height: 900 } }, async (page) => {
      const pdf = await page.pdf({ preferCSSPageSize: true });
      const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
      expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
      expect(pages).toBeGreaterThan(3);
      // Three framed photos, logs, efficiency and the gain of the tank among them.
      expect(pages).toBeLessThan(36);
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.strip').isVisible()).toBe(false);
      expect(await page.locator('.foot').isVisible()).toBe(true);
      // ISO A4 has 297 mm; the drawing fills one page inside the margins and no more.
      const height = await page.locator('.za').evaluate((zone) => (zone.getBoundingClientRect().height * 25.4) / 96);
      expect(height).toBeLessThan(275);
    });
  });
});
