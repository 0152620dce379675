import { type Result, succeed } from '../../result';
import type { Reason } from '../../verdicts/reason';
import { type ActionNeeds, log, type Said } from '../log';
import type { Refused } from '../refused';

/** Sets holds on an act aside, in writing: an entry for each. What nobody may set aside is logged too, and clears nothing. */
export async function overrideHolds(
  needs: ActionNeeds,
  said: Omit<Said<'hold-overridden'>, 'rule'>,
  holds: readonly Pick<Reason, 'rule'>[],
): Promise<Result<void, Refused>> {
  for (const { rule } of holds) {
    const kept = await log(needs, 'hold-overridden', { ...said, rule });
    if (!kept.ok) return kept;
  }
  return succeed(undefined);
}
