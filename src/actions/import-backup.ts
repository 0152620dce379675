import { readBackup } from '../logbook/backup';
import { sentenceForBackup } from '../logbook/sentence';
import { fail, type Result, succeed } from '../result';
import type { ActionNeeds } from './log';
import { type Refused, refuse } from './refused';

/** Adds what a backup holds to this logbook, all or nothing; gives how many entries were new. */
export async function importBackup(
  { logbook, now, zone }: ActionNeeds,
  text: string,
): Promise<Result<number, Refused>> {
  const read = await readBackup(text, now());
  if (!read.ok) return fail({ sentence: sentenceForBackup(read.failure), fields: {} });
  const before = logbook.shop.value.entries.size;
  const taken = await logbook.take(read.value);
  return taken.ok ? succeed(logbook.shop.value.entries.size - before) : refuse(taken.failure, zone());
}
