import { type ReadonlySignal, signal } from '@preact/signals';
import type { Shop } from '../../logbook/fold/fold';
import { DAY_MS } from '../../units';
import { remembered } from './remembered';

/** A backup is missed once it is this old and this much was logged since: about a fortnight's work. */
const OLD_DAYS = 14;
const MUCH = 20;
/** Storage is asked for once somebody clearly means to stay. */
const MEANS_TO_STAY = 3;

const isWritten = (text: string): text is `${number}/${number}` => /^\d+\/\d+$/.test(text);
const written = remembered<`${number}/${number}`>('coatwait-backup', '0/0', isWritten);

/** When the last backup was written here, ms since 1970, and how many entries it held; noughts for none. */
export function lastBackup(): { readonly atMs: number; readonly entries: number } {
  const [atMs = 0, entries = 0] = written.now.value.split('/').map(Number);
  return { atMs, entries };
}

/** Notes that a backup was written. */
export const noteBackup = (atMs: number, entries: number): void => written.set(`${atMs}/${entries}`);

/**
 * Whether backups are written into a folder by themselves. `asks`: the browser wants a tap before it writes there again; `gone`: it
 * could not be written to.
 */
export type FolderState = 'unsupported' | 'none' | 'asks' | 'gone' | 'ready';
const folder = signal<FolderState>('unsupported');
export const folderState: ReadonlySignal<FolderState> = folder;
export const setFolderState = (state: FolderState): void => {
  folder.value = state;
};

/** Whether something was logged since the last backup, and that is more than a day ago: time for the next one into the folder. */
export function isFolderDue({ entries }: Pick<Shop, 'entries'>, nowMs: number): boolean {
  const last = lastBackup();
  return nowMs - last.atMs > DAY_MS && entries.size > last.entries;
}

/** Whether much was logged since the last backup, and that is long ago. */
export function isBackupDue({ entries }: Pick<Shop, 'entries'>, nowMs: number): boolean {
  const last = lastBackup();
  if (entries.size - last.entries < MUCH) return false;
  const [first] = entries.values();
  const sinceMs = last.atMs > 0 ? last.atMs : Date.parse(first?.at ?? '');
  return nowMs - sinceMs > OLD_DAYS * DAY_MS;
}

/** Whether the browser has promised not to clear this app's storage when the device runs short; unknown until it has answered. */
export type StoragePromise = 'unknown' | 'promised' | 'not-promised';
const promise = signal<StoragePromise>('unknown');

/** The browser's answer. */
export const storagePromise: ReadonlySignal<StoragePromise> = promise;

let isAsked = false;

/** Asks for that promise, once, as soon as the logbook holds work; some browsers then ask the person. */
export async function askForStorage({ entries }: Pick<Shop, 'entries'>): Promise<void> {
  if (isAsked || entries.size < MEANS_TO_STAY) return;
  isAsked = true;
  // Not over plain http, and not in every browser; one that keeps nothing here does not even answer, which is said elsewhere.
  const { storage } = navigator as Partial<Navigator>;
  const ask = async (): Promise<boolean> =>
    (await storage?.persisted?.()) || (await storage?.persist?.()) || false;
  promise.value = (await ask().catch(() => false)) ? 'promised' : 'not-promised';
}
