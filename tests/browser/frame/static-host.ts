import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

/** The built app as free static hosts serve it: in a folder, types by ending, not one header more. */
export async function serveInFolder(folder = '/shop/wait/') {
  let isPaused = false;
  let addition = '';
  const server = createServer(async ({ url = '/' }, response) => {
    if (isPaused) return void response.destroy();
    const { pathname } = new URL(url, 'http://host');
    if (!pathname.startsWith(folder)) return void response.writeHead(404).end();
    const file =
      normalize(pathname.slice(folder.length)) === '.' ? 'index.html' : pathname.slice(folder.length);
    const bytes = await readFile(join('dist', normalize(file))).catch(() => undefined);
    if (!bytes) return void response.writeHead(404).end();
    response.setHeader('Content-Type', TYPES[extname(file)] ?? 'application/octet-stream');
    response.end(file === 'service-worker.js' ? `${bytes}${addition}` : bytes);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  return {
    origin,
    address: `${origin}${folder}`,
    close: () => server.close(),
    /** From now on there is a newer version, whose worker does this too. */
    release: (more: string) => {
      addition = more;
    },
    pause: () => {
      isPaused = true;
    },
    goOn: () => {
      isPaused = false;
    },
  };
}
