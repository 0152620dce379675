import { type OnProgress, readEntries } from '../../../src/logbook/backup/backup';
import { readContent } from '../../../src/logbook/backup/content';

/** Both looks that the app takes at a logbook's text, without the file around it. */
export async function readBackup(text: string, onProgress?: OnProgress) {
  const content = await readContent(text);
  return content.ok ? readEntries(content.value, onProgress) : content;
}
