import { writeBackup } from '../../../src/logbook/backup/backup';
import type { Entry } from '../../../src/logbook/entry';
import { newId } from '../../../src/logbook/ids/new-id';

/** A backup of so many pieces that were started so many days ago. */
export function oldPieces(count: number, daysAgo: number): Promise<string> {
  const at = new Date(Date.now() - daysAgo * 86_400_000).toISOString();
  const entries = Array.from({ length: count }, (_, n) => ({
    id: newId(),
    v: 1,
    at,
    zone: 'Europe/Berlin',
    kind: 'piece-started',
    piece: newId(),
    name: `Box ${n + 1}`,
    base: 'bare-wood',
  })) as Entry[];
  return writeBackup({ entries, setAside: [] }, Date.now());
}
