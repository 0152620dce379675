import { lightFormat } from 'date-fns/lightFormat';
import { MINUTE_MS } from '../../../units';

/** Which of two: on the night the clocks go back an hour comes twice. */
export type Turn = 'first' | 'second';

/** When something happened, as it was said: some minutes ago, or by the clock (`2026-11-25T14:20`, local time). */
export type TimeChoice =
  | { readonly kind: 'ago'; readonly minutes: number }
  | { readonly kind: 'clock'; readonly text: string; readonly turn?: Turn };

export const NOW: TimeChoice = { kind: 'ago', minutes: 0 };

// Clocks go back by an hour; on Lord Howe Island by half of one.
const STEPS_BACK_MS = [60 * MINUTE_MS, 30 * MINUTE_MS];

/** Every instant that a clock text may mean, in order: none, one, or two on the night the clocks go back. */
export function instantsOf(text: string): readonly number[] {
  const read = new Date(text).getTime();
  if (Number.isNaN(read)) return [];
  const near = STEPS_BACK_MS.flatMap((step) => [read - step, read + step]);
  const also = near.filter((instant) => clockText(instant) === clockText(read));
  return [read, ...also].sort((one, other) => one - other);
}

/** From the first instant that one clock text may mean to the last of the other: nobody is asked where a span may as well cover both. */
export const widestSpan = (from: string, to: string): { readonly fromMs: number; readonly toMs: number } => ({
  fromMs: instantsOf(from)[0] ?? Number.NaN,
  toMs: instantsOf(to).at(-1) ?? Number.NaN,
});

/** The instant meant, in ms since 1970; undefined while the clock is not filled in, or may mean two. `nowMs` is the instant of the tap. */
export function instantOf(choice: TimeChoice, nowMs: number): number | undefined {
  if (choice.kind === 'ago') return nowMs - choice.minutes * MINUTE_MS;
  const instants = instantsOf(choice.text);
  if (instants.length < 2) return instants[0];
  if (choice.turn === undefined) return undefined;
  return choice.turn === 'first' ? instants[0] : instants[1];
}

/** An instant as a clock field writes it: local time to the minute. */
export const clockText = (instantMs: number): string => lightFormat(instantMs, "yyyy-MM-dd'T'HH:mm");
