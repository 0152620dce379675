import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { inject } from 'vitest';

const base = inject('baseUrl');
const TEXT = /\.(js|html)$/;

/** The built app behind a server of our own, which can put out a newer version. */
export interface Releases {
  readonly address: string;
  /**
   * From now on there is the newer version, in files of other names, and the older one's are gone.
   * @param whole how many of its files can be had; what comes after them is missing, or is waited for in vain
   */
  release(whole?: { readonly files: number; readonly others: 'missing' | 'silence' }): void;
  /** How many files of the newer version were asked for. */
  asked(): number;
  close(): void;
}

export async function serveReleases(): Promise<Releases> {
  let newest: { readonly files: number; readonly others?: 'missing' | 'silence' } | undefined;
  let asked = 0;
  const server = createServer(async ({ url = '/' }, response) => {
    const missing = (): void => void response.writeHead(404).end();
    const isNewer = url.startsWith('/next/');
    if (newest && url.startsWith('/assets/')) return missing();
    if (isNewer && asked++ >= (newest?.files ?? 0))
      return newest?.others === 'silence' ? undefined : missing();
    const upstream = await fetch(new URL(url.replace('/next/', '/assets/'), base));
    const body = Buffer.from(await upstream.arrayBuffer());
    response.setHeader('Content-Type', upstream.headers.get('Content-Type') ?? '');
    const isChanged = newest && (url === '/' || TEXT.test(url));
    response.end(isChanged ? asNewer(body.toString()) : body);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    release(whole = { files: Number.POSITIVE_INFINITY, others: 'missing' }) {
      newest = whole;
      asked = 0;
    },
    asked: () => asked,
    close() {
      server.close();
      server.closeAllConnections();
    },
  };
}

/** In a folder of other name, so that every file is another one; what keeps its name gets another checksum in the list of the service worker. */
const asNewer = (text: string): string =>
  text.replaceAll('assets/', 'next/').replaceAll(/("revision":")[0-9a-f]{4}/g, '$10000');
