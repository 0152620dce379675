import type { BrowserContext } from 'playwright-core';
import { base, page } from './app';
import { rows } from './logging';

// Headless Chromium shows no dialogs. Only the dialog is replaced: the folder it gives is a real one, of the origin's own files, and what
// the browser allows is read from a note that the test keeps on the phone.

/** The dialog that chooses a folder gives the one of that name; `test-access` says what the browser allows. */
export const fakeFolderDialog = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    const access = () => localStorage.getItem('test-access') ?? 'granted';
    const refuse = (why: string) => Promise.reject(new DOMException('', why));
    const { getFileHandle } = FileSystemDirectoryHandle.prototype;
    const { write } = FileSystemWritableFileStream.prototype;
    Object.assign(FileSystemHandle.prototype, {
      queryPermission: async () => access(),
      requestPermission: async () => {
        if (access() === 'prompt') localStorage.setItem('test-access', 'granted');
        return access();
      },
    });
    FileSystemDirectoryHandle.prototype.getFileHandle = function (...given) {
      return access() === 'granted' ? getFileHandle.apply(this, given) : refuse('NotAllowedError');
    };
    FileSystemWritableFileStream.prototype.write = function (...given) {
      return localStorage.getItem('test-full') ? refuse('QuotaExceededError') : write.apply(this, given);
    };
    Object.assign(globalThis, {
      showDirectoryPicker: async () => {
        const name = localStorage.getItem('test-folder');
        if (name === null) throw new DOMException('', 'AbortError');
        const origin = await navigator.storage.getDirectory();
        return origin.getDirectoryHandle(name, { create: true });
      },
    });
  });

export const willChoose = (folder: string | null): Promise<void> =>
  page.evaluate((name) => {
    if (name === null) localStorage.removeItem('test-folder');
    else localStorage.setItem('test-folder', name);
  }, folder);
export const browserAllows = (access: 'granted' | 'prompt' | 'denied'): Promise<void> =>
  page.evaluate((said) => localStorage.setItem('test-access', said), access);

export const folderIsFull = (isFull: boolean): Promise<void> =>
  page.evaluate((is) => localStorage.setItem('test-full', is ? 'yes' : ''), isFull);

/** The files in a folder, by name, in base64. */
export const filesIn = (folder: string): Promise<Readonly<Record<string, string>>> =>
  page.evaluate(async (name) => {
    const origin = await navigator.storage.getDirectory();
    const found: Record<string, string> = {};
    const handle = await origin.getDirectoryHandle(name).catch(() => undefined);
    for await (const one of handle?.values() ?? [])
      if (one instanceof FileSystemFileHandle) {
        const bytes = new Uint8Array(await (await one.getFile()).arrayBuffer());
        found[one.name] = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
      }
    return found;
  }, folder);

export const takeFolderAway = (folder: string): Promise<void> =>
  page.evaluate(async (name) => {
    await (await navigator.storage.getDirectory()).removeEntry(name, { recursive: true });
  }, folder);

export type ShareAnswer = 'takes-it' | 'AbortError' | 'NotAllowedError';

/** The share sheet takes any file, or answers with that error; what it took is read by {@link sharedFile}. */
export const fakeShareSheet = (context: BrowserContext, answer: ShareAnswer): Promise<unknown> =>
  context.addInitScript((given) => {
    Object.assign(Navigator.prototype, {
      canShare: () => true,
      share: async ({ files = [] }: ShareData) => {
        if (given !== 'takes-it') throw new DOMException('', given);
        Object.assign(globalThis, { sharedFile: files[0] });
      },
    });
  }, answer);

export const sharedFile = async (): Promise<{ readonly name: string; readonly buffer: Buffer }> => {
  const { name, base64 } = await page.evaluate(async () => {
    const { sharedFile: file } = globalThis as unknown as { sharedFile: File };
    const bytes = new Uint8Array(await file.arrayBuffer());
    return { name: file.name, base64: btoa(Array.from(bytes, (b) => String.fromCharCode(b)).join('')) };
  });
  return { name, buffer: Buffer.from(base64, 'base64') };
};

/** SHA-256 of every photo kept on this phone, sorted. */
export const photoSums = (): Promise<string[]> =>
  page.evaluate(async () => {
    const photos = await new Promise<{ bytes: ArrayBuffer }[]>((resolve, reject) => {
      const opening = indexedDB.open('coatwait-photos');
      opening.onerror = () => reject(opening.error);
      opening.onsuccess = () => {
        const asking = opening.result.transaction('photos').objectStore('photos').getAll();
        asking.onsuccess = () => {
          opening.result.close();
          resolve(asking.result);
        };
      };
    });
    const sums = photos.map(async ({ bytes }) =>
      new Uint8Array(await crypto.subtle.digest('SHA-256', bytes)).join(),
    );
    return (await Promise.all(sums)).sort();
  });

/** The entries kept on this phone, in the order of their ids. */
export const entriesKept = (): Promise<unknown[]> => rows(page);

/** Brings in a backup, as a person does. */
export async function bringIn(buffer: Buffer, name = 'coatwait.zip'): Promise<void> {
  await page.goto(`${base}#/more`);
  const mimeType = name.endsWith('.zip') ? 'application/zip' : 'application/json';
  await page.locator('main input[type="file"]').setInputFiles({ name, mimeType, buffer });
  await page
    .getByText(/ restored\.|Nothing new/)
    .first()
    .waitFor();
}
