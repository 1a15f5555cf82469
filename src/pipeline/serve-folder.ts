import { createReadStream, readFileSync, realpathSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { pipeline, type Transform } from 'node:stream';
import { constants, createBrotliCompress, createGzip } from 'node:zlib';
import { contentCoding, type ContentCoding } from './content-coding.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.avif': 'image/avif',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** Headers that hold for every answer: those of the site's headers file under `/*`, if it has one. */
function siteHeaders(folder: string): Record<string, string> {
  const headers: Record<string, string> = {};
  let everywhere = false;
  for (const line of textOf(join(folder, '_headers')).split('\n')) {
    if (/^\S/.test(line)) everywhere = line.trim() === '/*' || /^\/\S*\/\*$/.test(line.trim());
    const match = /^\s+([A-Za-z-]+):\s*(.+)$/.exec(line);
    if (everywhere && match !== null) headers[match[1] ?? ''] = (match[2] ?? '').trim();
  }
  return headers;
}

function textOf(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
}

/** A server of one folder, for looking at a finished site on this machine. It never leaves the folder. */
export function serverOf(folder: string, base: string): Server {
  const root = realpathSync(resolve(folder));
  const headers = siteHeaders(root);
  return createServer((request, response) => {
    answer(request, response, { root, base, headers });
  });
}

interface Served {
  readonly root: string;
  readonly base: string;
  readonly headers: Readonly<Record<string, string>>;
}

function answer(request: IncomingMessage, response: ServerResponse, served: Served): void {
  for (const [name, value] of Object.entries(served.headers)) response.setHeader(name, value);
  const reply = replyTo(request, served);
  if (reply.file === null) response.writeHead(reply.status, { 'Content-Length': 0, ...reply.headers }).end();
  else send(request, response, reply.status, reply.file);
}

interface Reply {
  readonly status: number;
  readonly headers: Record<string, string>;
  readonly file: string | null;
}

function replyTo(request: IncomingMessage, { root, base }: Served): Reply {
  const bare = (status: number, headers: Record<string, string> = {}): Reply => ({ status, headers, file: null });
  if (request.method !== 'GET' && request.method !== 'HEAD') return bare(405, { Allow: 'GET, HEAD' });
  const path = pathOf(request.url ?? '/');
  if (path === null) return bare(400);
  if (path === '/' && base !== '/') return bare(302, { Location: base });
  if (`${path}/` === base) return bare(301, { Location: base });
  const found = path.startsWith(base) ? fileUnder(root, path.slice(base.length)) : NOTHING;
  if (found.lacksSlash) return bare(301, { Location: `${encodeURI(path)}/` });
  if (found.file !== null) return { status: 200, headers: {}, file: found.file };
  return { status: 404, headers: {}, file: fileUnder(root, '404.html').file };
}

/** The decoded path of an address without query; null for one that cannot be decoded or tries to climb. */
function pathOf(url: string): string | null {
  try {
    const path = decodeURIComponent(url.replace(/[?#].*$/s, ''));
    return path.startsWith('/') && !path.includes('\0') && !path.includes('\\') && !path.split('/').includes('..') ? path : null;
  } catch {
    return null;
  }
}

interface Found {
  readonly file: string | null;
  /** A folder was asked for without the slash at its end. */
  readonly lacksSlash: boolean;
}

const NOTHING: Found = { file: null, lacksSlash: false };

function fileUnder(root: string, below: string): Found {
  const path = join(root, below);
  const stat = statSync(path, { throwIfNoEntry: false });
  if (stat?.isDirectory() === true && below !== '' && !below.endsWith('/')) return { file: null, lacksSlash: true };
  const file = stat?.isDirectory() === true ? join(path, 'index.html') : path;
  if (statSync(file, { throwIfNoEntry: false })?.isFile() !== true || (stat?.isFile() === true && below.endsWith('/'))) return NOTHING;
  return realpathSync(file).startsWith(root + sep) ? { file, lacksSlash: false } : NOTHING;
}

/** Kinds that are text; pictures and fonts are packed already. */
const PACKS = new Set(['.html', '.css', '.js', '.mjs', '.json', '.csv', '.txt', '.xml', '.svg', '.wasm', '.webmanifest']);
/** Shorter files are sent as they are: a packet holds them either way. */
const LEAST_PACKED = 1000;

function send(request: IncomingMessage, response: ServerResponse, status: number, file: string): void {
  const { size } = statSync(file);
  const ending = extname(file).toLowerCase();
  const canBePacked = PACKS.has(ending) && size >= LEAST_PACKED;
  const coding = canBePacked ? contentCoding(request.headers['accept-encoding']) : null;
  response.writeHead(status, {
    'Content-Type': TYPES[ending] ?? 'application/octet-stream',
    'Cache-Control': 'no-cache',
    ...(canBePacked ? { Vary: 'Accept-Encoding' } : {}),
    ...(coding === null ? { 'Content-Length': size } : { 'Content-Encoding': coding }),
  });
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  // A reader who leaves in the middle is no fault of the server.
  const source = createReadStream(file);
  if (coding === null) pipeline(source, response, () => undefined);
  else pipeline(source, packer(coding), response, () => undefined);
}

function packer(coding: ContentCoding): Transform {
  return coding === 'br' ? createBrotliCompress({ params: { [constants.BROTLI_PARAM_QUALITY]: 5 } }) : createGzip();
}

/** Starts a server on this machine only; with port 0, or when the port is taken and `orAny` allows, on any free one. Resolves to its address. */
export function listen(server: Server, port: number, base: string, orAny: boolean): Promise<string> {
  return new Promise((resolveAddress, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE' && orAny) listen(server, 0, base, false).then(resolveAddress, reject);
      else reject(error);
    });
    server.listen(port, '127.0.0.1', () => {
      const address = server.address();
      const open = typeof address === 'object' && address !== null ? address.port : port;
      resolveAddress(`http://127.0.0.1:${String(open)}${base}`);
    });
  });
}
