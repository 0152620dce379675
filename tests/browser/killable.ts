import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium } from 'playwright-core';
import { CHROMIUM } from './browser';

/** A Chromium of our own that can be killed without a word, as a phone dies. */
export interface Killable {
  readonly context: BrowserContext;
  /** Kills this browser and its processes, no other; settles when it is gone. */
  kill(): Promise<void>;
}

export interface Profile {
  readonly folder: string;
  remove(): void;
  /** The files in which the browser keeps what the app stored, with their bytes: what to look at after a loss. */
  stored(): string;
}

/** An empty profile folder, and how it is taken away. */
export function newProfile(): Profile {
  const folder = mkdtempSync(join(tmpdir(), 'coatwait-profile-'));
  return {
    folder,
    // Processes of a killed browser may still be writing for a moment.
    remove: () => rmSync(folder, { recursive: true, force: true, maxRetries: 20 }),
    stored: () => (readdirSync(folder, { recursive: true }) as string[]).flatMap(describe).sort().join('\n'),
  };

  function describe(path: string): string[] {
    if (!/IndexedDB|File System|WebStorage|Service Worker.Database/.test(path)) return [];
    const stat = statSync(join(folder, path), { throwIfNoEntry: false });
    return stat?.isFile() ? [`${path} ${stat.size} ${stat.mtime.toISOString()}`] : [];
  }
}

/** Starts Chromium on a profile that outlives it. */
export async function startKillable(profile: string): Promise<Killable> {
  const args = [
    ...CHROMIUM.args,
    '--headless=new',
    '--remote-debugging-port=0',
    `--user-data-dir=${profile}`,
    'about:blank',
  ];
  // Its own process group, so that the kill takes its renderers too, and nothing else.
  const child = spawn(CHROMIUM.executablePath, args, {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const browser = await chromium.connectOverCDP(await devtoolsAddress(child));
  const [context] = browser.contexts();
  if (!context) throw new Error('Chromium opened no context.');
  return {
    context,
    async kill() {
      if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
      await ended;
      await browser.close().catch(() => undefined); // the connection, which the kill has cut
    },
  };
}

function devtoolsAddress(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    child.stderr?.on('data', (text) => {
      said += text;
      const address = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (address) resolve(address);
    });
    child.once('exit', (code) => reject(new Error(`Chromium ended with ${code}: ${said.slice(-500)}`)));
  });
}
