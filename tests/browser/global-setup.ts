import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    baseUrl: string;
  }
}

/** Serves the built app on a free port for as long as the browser tests run. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  // Built beforehand in its own process: vitest sets NODE_ENV=test, which would make a development build.
  if (!existsSync('dist/service-worker.js'))
    throw new Error('There is no dist/service-worker.js. Run `npm run build` first.');
  // A copy of our own: a build that ends while the tests run takes the parts away that a page has yet to fetch.
  const copy = mkdtempSync(join(tmpdir(), 'coatwait-built-'));
  cpSync('dist', copy, { recursive: true });
  const server = await preview({ build: { outDir: copy }, preview: { host: '127.0.0.1', port: 0 } });
  const { port } = server.httpServer.address() as AddressInfo;
  project.provide('baseUrl', `http://127.0.0.1:${port}/`);
  return async () => {
    await server.close();
    rmSync(copy, { recursive: true, force: true });
  };
}
