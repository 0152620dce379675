import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freePort } from '../../hub/nats-server.mjs';
import type { Engine } from './engine';

// Debian's WebKitGTK and its small browser, by the plain addresses of W3C WebDriver.
const PATIENCE_MS = 60_000;
let port = 0;

const miniBrowser = (): string => {
  const files = execFileSync('dpkg', ['-L', 'libwebkit2gtk-4.1-0'], { encoding: 'utf8' }).split('\n');
  const found = files.find((file) => file.endsWith('/MiniBrowser'));
  if (!found) throw new Error('There is no MiniBrowser: install webkit2gtk-driver.');
  return found;
};

async function ask<T>(method: string, path: string, body?: unknown): Promise<T> {
  const init = { method, ...(body !== undefined && { body: JSON.stringify(body) }) };
  const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
    ...init,
    signal: AbortSignal.timeout(PATIENCE_MS),
  });
  const { value } = (await answer.json()) as { value: T & { error?: string; message?: string } };
  if (value?.error) throw new Error(`${value.error}: ${value.message}`);
  return value;
}

async function untilUp(): Promise<void> {
  const startMs = Date.now();
  for (;;) {
    const isUp = await fetch(`http://127.0.0.1:${port}/status`).then(
      ({ ok }) => ok,
      () => false,
    );
    if (isUp) return;
    if (Date.now() - startMs > PATIENCE_MS) throw new Error('WebKitWebDriver did not start.');
    await new Promise((resolve) => setTimeout(resolve, 200));
  }
}

/** Debian's WebKitGTK, in a home of its own. */
export async function openWebKit(): Promise<Engine> {
  const home = mkdtempSync(join(tmpdir(), 'coatwait-webkit-'));
  port = await freePort();
  const env = { ...process.env, HOME: home, WEBKIT_DISABLE_DMABUF_RENDERER: '1' };
  const driver = spawn('xvfb-run', ['-a', 'WebKitWebDriver', `--port=${port}`], {
    env,
    detached: true,
    stdio: 'ignore',
  });
  try {
    await untilUp();
    return await pageOf(driver, home);
  } catch (error) {
    end(driver, home);
    throw error;
  }
}

async function pageOf(driver: ChildProcess, home: string): Promise<Engine> {
  const options = { binary: miniBrowser(), args: ['--automation'] };
  const { sessionId } = await ask<{ sessionId: string }>('POST', '/session', {
    capabilities: { alwaysMatch: { browserName: 'MiniBrowser', 'webkitgtk:browserOptions': options } },
  });
  const session = `/session/${sessionId}`;
  await ask('POST', `${session}/timeouts`, { script: 40_000, pageLoad: 40_000 });
  await ask('POST', `${session}/window/rect`, { x: 0, y: 0, width: 500, height: 900 });
  return {
    goTo: (url) => ask('POST', `${session}/url`, { url }),
    async run(body, ...args) {
      const script = `const done = arguments[arguments.length - 1]; const args = Array.from(arguments).slice(0, -1);
        (async () => {${body}})().then((value) => done({ value }), (error) => done({ failure: String(error) }));`;
      const said = await ask<{ value?: never; failure?: string }>('POST', `${session}/execute/async`, {
        script,
        args,
      });
      if (said?.failure) throw new Error(said.failure);
      return said?.value as never;
    },
    picture: async () => Buffer.from(await ask<string>('GET', `${session}/screenshot`), 'base64'),
    async close() {
      await ask('DELETE', session).catch(() => undefined);
      end(driver, home);
    },
  };
}

function end({ pid }: ChildProcess, home: string): void {
  if (pid !== undefined) process.kill(-pid); // the driver, its browser and their screen: one group of ours
  rmSync(home, { recursive: true, force: true, maxRetries: 20, retryDelay: 200 });
}
