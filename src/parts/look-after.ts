import { effect } from '@preact/signals';
import type { OpenShop } from '../actions/shop';
import { findFolder, folderState, writeToFolder } from './backup-folder';
import { askForStorage, lastBackup, noteBackup } from './kept-here';

const DAY_MS = 86_400_000;

/**
 * Looks after the own logbook while it is open: asks the browser to keep it once there is work in it, and writes a backup into the
 * chosen folder once a day. Gives the function that ends it.
 */
export function lookAfter({ shop, nowMs, actions }: OpenShop): () => void {
  let isWriting = false;

  async function backUp(): Promise<void> {
    isWriting = true;
    const entries = shop.peek().entries.size;
    if (await writeToFolder(await actions.exportBackup())) noteBackup(nowMs.peek(), entries);
    isWriting = false;
  }

  void findFolder();
  const stopAsking = effect(() => void askForStorage(shop.value));
  const stopWriting = effect(() => {
    const last = lastBackup();
    const isDue = nowMs.value - last.atMs > DAY_MS && shop.value.entries.size > last.entries;
    if (folderState.value === 'ready' && isDue && !isWriting) void backUp();
  });
  return () => {
    stopAsking();
    stopWriting();
  };
}
