import { createStore, get, set } from 'idb-keyval';
import { folderState, setFolderState } from './kept-here';

// The File System Access API, which not every browser has and TypeScript does not yet know whole.
type Access = 'granted' | 'denied' | 'prompt';
interface Folder extends FileSystemDirectoryHandle {
  queryPermission(mode: { mode: 'readwrite' }): Promise<Access>;
  requestPermission(mode: { mode: 'readwrite' }): Promise<Access>;
}
type Picker = (options: { id: string; mode: 'readwrite' }) => Promise<Folder>;

const KEY = 'folder';
const MODE = { mode: 'readwrite' } as const;
const picker = (globalThis as { showDirectoryPicker?: Picker }).showDirectoryPicker;
let folder: Folder | undefined;

const store = () => createStore('coatwait-folder', 'folder');
// Async: a browser that refuses storage throws where others give a promise that fails.
const kept = async () => get<Folder>(KEY, store());
const keep = async (chosen: Folder) => set(KEY, chosen, store());
const name = (error: unknown): string => (error instanceof DOMException ? error.name : '');

async function use(chosen: Folder, ask: boolean): Promise<void> {
  folder = chosen;
  const access = await (ask ? chosen.requestPermission(MODE) : chosen.queryPermission(MODE));
  setFolderState(access === 'granted' ? 'ready' : 'asks');
}

/** Finds the folder that was chosen before. */
export async function findFolder(): Promise<void> {
  if (!picker) return;
  setFolderState('none');
  const chosen = await kept().catch(() => undefined);
  if (chosen) await use(chosen, false).catch(() => setFolderState('gone'));
}

/** Lets the person choose a folder; false when they chose none, or it may not be written to. */
export async function chooseFolder(): Promise<boolean> {
  const chosen = await picker?.({ id: 'coatwait', ...MODE }).catch(unlessAbandoned);
  if (!chosen) return false;
  await use(chosen, true);
  // Where it cannot be kept it serves until the app is closed, and is asked for again.
  await keep(chosen).catch(() => undefined);
  return folderState.value === 'ready';
}

/** Asks the browser for the folder that was chosen before; must follow a tap. */
export async function allowFolder(): Promise<boolean> {
  if (folder) await use(folder, true).catch(unlessAbandoned);
  return folderState.value === 'ready';
}

/** Closed without choosing, or not allowed. */
function unlessAbandoned(error: unknown): undefined {
  if (!(error instanceof DOMException)) throw error;
}

/** Writes the file into the folder; false when it could not. A file of the same name is replaced, once the new one is whole. */
export async function writeToFolder(file: File): Promise<boolean> {
  if (!folder || folderState.value !== 'ready') return false;
  try {
    await write(await folder.getFileHandle(file.name, { create: true }), file);
    return true;
  } catch (error) {
    await dropIfEmpty(folder, file.name).catch(() => undefined); // the folder itself may be gone
    setFolderState(name(error) === 'NotAllowedError' ? 'asks' : 'gone');
    return false;
  }
}

async function write(place: FileSystemFileHandle, file: File): Promise<void> {
  const stream = await place.createWritable();
  try {
    await stream.write(file);
    await stream.close();
  } catch (error) {
    await stream.abort().catch(() => undefined); // it holds the file until it is ended
    throw error;
  }
}

/** A file that was made and then not written must not pass for a backup. */
async function dropIfEmpty(from: Folder, fileName: string): Promise<void> {
  const file = await (await from.getFileHandle(fileName)).getFile();
  if (file.size === 0) await from.removeEntry(fileName);
}
