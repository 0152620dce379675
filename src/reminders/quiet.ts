import { isFireKind } from '../logbook/kinds/shop/reminder-kinds';
import { atLocal, localDay, type ZoneOffset } from '../planner/local-day';
import type { Hours } from '../planner/windows/working-times';
import type { Reminder } from './reminder';

/**
 * The minute at which a reminder may sound: after the quiet hours, or just before them if after them it would be too late.
 * Nothing holds back a reminder about fire.
 */
export function soundsAt({ kind, at, until }: Reminder, quiet: Hours | undefined, zone: ZoneOffset): number {
  if (!quiet || isFireKind(kind)) return at;
  const today = localDay(at, zone);
  const span = [today - 1, today]
    .map((day) => ({ from: atLocal(day, quiet.open, zone), to: atLocal(day, quiet.close, zone) }))
    .find(({ from, to }) => from <= at && at < to);
  if (!span) return at;
  return until !== undefined && until < span.to ? span.from - 1 : span.to;
}
