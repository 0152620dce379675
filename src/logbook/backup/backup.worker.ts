import { readBackupFile } from './backup-file';
import type { Said } from './read-aside';

// Reads a backup off the page's own thread: whatever is in the file, the screen goes on.
addEventListener('message', async ({ data }: MessageEvent<Blob>) => {
  const read = await readBackupFile(data, (done, of) => postMessage({ done, of } satisfies Said));
  postMessage({ read } satisfies Said);
});
