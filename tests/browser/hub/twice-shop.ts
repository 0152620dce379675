import { writeBackup } from '../../../src/logbook/backup/backup';
import type { Entry } from '../../../src/logbook/entry';
import { entry, fillJar, id, layCoat, PIECE, startPiece } from '../../logbook/entries';

/** A backup with a coat that two phones logged within a minute, an hour ago. */
export async function twiceShop(): Promise<{ readonly backup: string; readonly piece: string }> {
  const atMs = Date.now() - 3_600_000;
  const entries: Entry[] = [entry(1, startPiece(), atMs - 60_000), entry(2, fillJar(), atMs - 60_000)];
  for (const [n, phone] of ['b0071b0071', 'be7c4be7c4'].entries()) {
    const idOf = (at: number): string => id(at).slice(0, -10) + phone;
    const name = n === 0 ? 'Spray room phone' : 'Bench phone';
    entries.push({ ...entry(3, { kind: 'phone-named', phone, name }, atMs - 60_000), id: idOf(3) });
    entries.push({ ...entry(4, layCoat(), atMs + n * 20_000), id: `019caa02${idOf(4).slice(8)}` });
  }
  return { backup: await writeBackup({ entries, setAside: [] }, Date.now()), piece: PIECE };
}
