import { type Result, succeed } from '../../result';
import type { ActionNeeds } from '../log';
import { type Refused, refuse } from '../refused';
import { dropDemoPhotos } from './demo-photos';

/** Takes everything of the demo shop away. */
export async function leaveDemo({ logbook, store, zone }: ActionNeeds): Promise<Result<void, Refused>> {
  await dropDemoPhotos(logbook.shop.value.entries.values());
  const emptied = await store.empty();
  return emptied.ok ? succeed(undefined) : refuse(emptied.failure, zone());
}
