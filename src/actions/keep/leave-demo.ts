import { type Result, succeed } from '../../result';
import type { ActionNeeds } from '../log';
import { type Refused, refuse } from '../refused';

/** Takes everything of the demo shop away. */
export async function leaveDemo({ store, zone }: ActionNeeds): Promise<Result<void, Refused>> {
  const emptied = await store.empty();
  return emptied.ok ? succeed(undefined) : refuse(emptied.failure, zone());
}
