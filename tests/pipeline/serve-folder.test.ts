import { symlinkSync } from 'node:fs';
import { get, type IncomingHttpHeaders, type OutgoingHttpHeaders } from 'node:http';
import { connect } from 'node:net';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { describe, expect, onTestFinished, test } from 'vitest';
import { listen, serverOf } from '../../src/pipeline/serve-folder.ts';
import { temporaryFolder, writeFiles } from './content-folder.ts';

const POLICY = "default-src 'none'";

async function served(base = '/'): Promise<{ readonly address: string; readonly folder: string }> {
  const outer = temporaryFolder();
  writeFiles(outer, {
    'secret.txt': 'secret',
    'site/index.html': '<h1>home</h1>',
    'site/a/index.html': '<h1>a</h1>',
    'site/404.html': '<h1>no such page</h1>',
    'site/style.css': 'a{}',
    'site/data.json': '{}',
    'site/x y.txt': 'spaced',
    'site/_headers': `/*\n  Content-Security-Policy: ${POLICY}\n  X-Content-Type-Options: nosniff\n/other\n  X-Other: no\n`,
  });
  const folder = join(outer, 'site');
  symlinkSync(join(outer, 'secret.txt'), join(folder, 'linked.txt'));
  const server = serverOf(folder, base);
  onTestFinished(() => void server.close());
  return { address: await listen(server, 0, base, false), folder };
}

/** The bytes as they came over the wire. */
function asked(address: string, headers: OutgoingHttpHeaders): Promise<{ readonly headers: IncomingHttpHeaders; readonly body: Buffer }> {
  return new Promise((resolve, reject) => {
    get(address, { headers }, (response) => {
      const pieces: Buffer[] = [];
      response.on('data', (piece: Buffer) => pieces.push(piece));
      response.on('end', () => {
        resolve({ headers: response.headers, body: Buffer.concat(pieces) });
      });
    }).on('error', reject);
  });
}

/** A request as no well-behaved client would send it. Returns the whole answer. */
function rawRequest(address: string, line: string): Promise<string> {
  const { port } = new URL(address);
  return new Promise((resolve, reject) => {
    const socket = connect(Number(port), '127.0.0.1', () => socket.write(`${line} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`));
    let said = '';
    socket.on('data', (chunk) => (said += chunk.toString()));
    socket.on('end', () => {
      resolve(said);
    });
    socket.on('error', reject);
  });
}

describe('the server for looking at a finished site', () => {
  test('pages, types and the headers of the site', async () => {
    const { address } = await served();
    const home = await fetch(address);
    expect(home.status).toBe(200);
    expect(await home.text()).toBe('<h1>home</h1>');
    expect(home.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(home.headers.get('content-security-policy')).toBe(POLICY);
    expect(home.headers.get('x-content-type-options')).toBe('nosniff');
    expect(home.headers.get('x-other')).toBeNull();
    expect((await fetch(`${address}style.css`)).headers.get('content-type')).toBe('text/css; charset=utf-8');
    expect(await (await fetch(`${address}x%20y.txt`)).text()).toBe('spaced');
    expect(await (await fetch(`${address}a/?q=1`)).text()).toBe('<h1>a</h1>');
  });

  test('text goes over the wire in what the browser takes, and comes out as it was', async () => {
    const { address, folder } = await served();
    const text = '<p>The same sentence once more.</p>\n'.repeat(400);
    writeFiles(folder, { 'long.html': text, 'photo.jpg': text });
    for (const [accepted, coding] of [
      ['gzip, deflate, br', 'br'],
      ['gzip', 'gzip'],
      ['br;q=0.2, gzip', 'gzip'],
      ['br;q=0, *', 'gzip'],
      ['identity', null],
      ['deflate', null],
    ] as const) {
      const answer = await asked(`${address}long.html`, { 'accept-encoding': accepted });
      expect(answer.headers['content-encoding'] ?? null, accepted).toBe(coding);
      expect(answer.headers.vary).toBe('Accept-Encoding');
      const plain = coding === 'br' ? brotliDecompressSync(answer.body) : coding === 'gzip' ? gunzipSync(answer.body) : answer.body;
      expect(plain.toString()).toBe(text);
      expect(answer.body.length < text.length / 10).toBe(coding !== null);
    }
    const picture = await asked(`${address}photo.jpg`, { 'accept-encoding': 'gzip, br' });
    expect([picture.headers['content-encoding'], picture.headers['content-length']]).toEqual([undefined, String(text.length)]);
    const short = await asked(`${address}style.css`, { 'accept-encoding': 'gzip, br' });
    expect(short.headers['content-encoding']).toBeUndefined();
  });

  test('a folder without its slash is sent to the one with it', async () => {
    const { address } = await served();
    const answer = await fetch(`${address}a`, { redirect: 'manual' });
    expect([answer.status, answer.headers.get('location')]).toEqual([301, '/a/']);
  });

  test('what is not there gets the page for that, with its headers', async () => {
    const { address } = await served();
    for (const path of ['nowhere/', 'index.html/', 'a/nothing.css']) {
      const answer = await fetch(address + path);
      expect(answer.status).toBe(404);
      expect(await answer.text()).toBe('<h1>no such page</h1>');
      expect(answer.headers.get('content-security-policy')).toBe(POLICY);
    }
  });

  test.each([
    'GET /../secret.txt',
    'GET /%2e%2e/secret.txt',
    'GET /..%2fsecret.txt',
    'GET /a/../../secret.txt',
    'GET /..%5csecret.txt',
    'GET /linked.txt',
    'GET /%00',
    'GET /%E0%A4%A',
  ])('%s does not leave the folder', async (line) => {
    const { address } = await served();
    const answer = await rawRequest(address, line);
    expect(answer).not.toContain('secret');
    expect(answer).toMatch(/^HTTP\/1\.1 40[04]/);
  });

  test('only reading is answered', async () => {
    const { address } = await served();
    expect((await fetch(address, { method: 'POST' })).status).toBe(405);
    const head = await fetch(address, { method: 'HEAD' });
    expect([head.status, head.headers.get('content-length'), await head.text()]).toEqual([200, '13', '']);
  });

  test('under a base path the site lies there and nowhere else', async () => {
    const { address } = await served('/sub/');
    expect(address).toMatch(/\/sub\/$/);
    expect((await fetch(address)).status).toBe(200);
    const root = new URL('/', address).href;
    const answer = await fetch(root, { redirect: 'manual' });
    expect([answer.status, answer.headers.get('location')]).toEqual([302, '/sub/']);
    expect((await fetch(`${root}a/`)).status).toBe(404);
    expect((await fetch(`${root}sub/a/`)).status).toBe(200);
  });

  test('a port that is taken is refused, or another one is taken where that was allowed', async () => {
    const { address, folder } = await served();
    const port = Number(new URL(address).port);
    const second = serverOf(folder, '/');
    onTestFinished(() => void second.close());
    await expect(listen(second, port, '/', false)).rejects.toMatchObject({ code: 'EADDRINUSE' });
    const third = serverOf(folder, '/');
    onTestFinished(() => void third.close());
    expect(await listen(third, port, '/', true)).not.toBe(address);
  });
});
