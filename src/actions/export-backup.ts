import { writeBackup } from '../logbook/backup';
import type { ActionNeeds } from './log';

/** The text of a backup of everything in this logbook, and the name of its file. */
export async function exportBackup({ logbook, now }: ActionNeeds): Promise<{ text: string; name: string }> {
  const { shop, setAside } = logbook;
  const kept = { entries: [...shop.value.entries.values()], setAside: setAside.value };
  const day = new Date(now()).toISOString().slice(0, 10);
  return { text: await writeBackup(kept, now()), name: `coatwait-${day}.json` };
}
