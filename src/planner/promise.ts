import { fail, type Result, succeed } from '../result';

/** Why a date cannot be promised. */
export type PromiseFault =
  | { readonly kind: 'promise-past'; readonly promised: number; readonly now: number }
  | { readonly kind: 'sooner-than-possible'; readonly promised: number; readonly earliest: number };

/** A date as promised, or why it cannot be: it is past, or sooner than the piece can be ready at the very best. */
export function checkPromise(promised: number, now: number, earliest: number): Result<number, PromiseFault> {
  if (promised <= now) return fail({ kind: 'promise-past', promised, now });
  if (promised < earliest) return fail({ kind: 'sooner-than-possible', promised, earliest });
  return succeed(promised);
}
