import { effect } from '@preact/signals';
import type { OpenShop } from '../../actions/shop';
import { MINUTE_MS } from '../../units';
import { findFolder, writeToFolder } from './backup-folder';
import { keepAtHub } from './hub-here';
import { askForStorage, folderState, lastBackup, noteBackup, setFolderState } from './kept-here';

/** Who has logged nothing for so long has put the gun down. */
const REST_MS = 10 * MINUTE_MS;

/**
 * Guards the own logbook while it is open: asks the browser to keep it once there is work in it, writes a backup into the
 * chosen folder whenever the work rests, and carries to and from the hub where the phone has joined one. Gives the function that ends it.
 */
export function guardLogbook(open: OpenShop): () => void {
  const { shop, isWhole, nowMs, actions } = open;
  let isWriting = false;
  let loggedMs = 0;

  async function backUp(): Promise<void> {
    isWriting = true;
    const entries = shop.peek().entries.size;
    try {
      if (await writeToFolder(await actions.exportBackup())) noteBackup(nowMs.peek(), entries);
    } catch {
      setFolderState('gone'); // said where the backup is, and not tried again before a tap
    }
    isWriting = false;
  }
  function backUpIfNew(): void {
    const isNew = isWhole.peek() && shop.peek().entries.size > lastBackup().entries;
    if (folderState.peek() === 'ready' && isNew && !isWriting) void backUp();
  }
  const onHidden = (): void => {
    if (document.visibilityState === 'hidden') backUpIfNew();
  };

  void findFolder();
  document.addEventListener('visibilitychange', onHidden);
  const stops = [
    keepAtHub(open),
    effect(() => void askForStorage(shop.value)),
    shop.subscribe(() => {
      if (isWhole.peek()) loggedMs = nowMs.peek();
    }),
    effect(() => {
      if (isWhole.value && folderState.value === 'ready') backUpIfNew();
    }),
    effect(() => {
      if (nowMs.value - loggedMs > REST_MS) backUpIfNew();
    }),
  ];
  return () => {
    document.removeEventListener('visibilitychange', onHidden);
    for (const stop of stops) stop();
  };
}
