import { type ReadonlySignal, signal } from '@preact/signals';
import { createStore, get, set } from 'idb-keyval';

// The File System Access API, which not every browser has and TypeScript does not yet know whole.
type Access = 'granted' | 'denied' | 'prompt';
interface Folder extends FileSystemDirectoryHandle {
  queryPermission(mode: { mode: 'readwrite' }): Promise<Access>;
  requestPermission(mode: { mode: 'readwrite' }): Promise<Access>;
}
type Picker = (options: { id: string; mode: 'readwrite' }) => Promise<Folder>;

/** `asks`: chosen, but the browser wants a tap before it writes there again. */
export type FolderState = 'unsupported' | 'none' | 'asks' | 'ready';

const KEY = 'folder';
const MODE = { mode: 'readwrite' } as const;
const picker = (globalThis as { showDirectoryPicker?: Picker }).showDirectoryPicker;
const state = signal<FolderState>(picker ? 'none' : 'unsupported');
let folder: Folder | undefined;

/** Whether backups are written into a folder by themselves. */
export const folderState: ReadonlySignal<FolderState> = state;

const store = () => createStore('coatwait-folder', 'folder');

async function use(chosen: Folder, ask: boolean): Promise<void> {
  folder = chosen;
  const access = await (ask ? chosen.requestPermission(MODE) : chosen.queryPermission(MODE));
  state.value = access === 'granted' ? 'ready' : 'asks';
}

/** Finds the folder that was chosen before. */
export async function findFolder(): Promise<void> {
  if (!picker) return;
  const chosen = await get<Folder>(KEY, store()).catch(() => undefined);
  if (chosen) await use(chosen, false);
}

/** Lets the person choose a folder, or allow the one chosen before; false when they chose none. */
export async function chooseFolder(): Promise<boolean> {
  try {
    if (state.value === 'asks' && folder) await use(folder, true);
    else if (picker) {
      const chosen = await picker({ id: 'coatwait', ...MODE });
      await use(chosen, true);
      await set(KEY, chosen, store());
    }
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
    return false; // closed without choosing, or not allowed
  }
  return state.value === 'ready';
}

/** Writes the file into the folder; false when it could not. A file of the same name is replaced, once the new one is whole. */
export async function writeToFolder(file: File): Promise<boolean> {
  if (!folder || state.value !== 'ready') return false;
  try {
    const place = await folder.getFileHandle(file.name, { create: true });
    const stream = await place.createWritable();
    await stream.write(file);
    await stream.close();
    return true;
  } catch {
    state.value = 'asks'; // the folder was moved, or the permission taken back
    return false;
  }
}
