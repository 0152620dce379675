const MINUTE_MS = 60_000;

/** When something happened, as it was said: some minutes ago, or by the clock (`2026-11-25T14:20`, local time). */
export type TimeChoice =
  | { readonly kind: 'ago'; readonly minutes: number }
  | { readonly kind: 'clock'; readonly text: string };

export const NOW: TimeChoice = { kind: 'ago', minutes: 0 };

/** The instant meant, in ms since 1970; undefined while the clock is not filled in. `nowMs` is the instant of the tap. */
export function instantOf(choice: TimeChoice, nowMs: number): number | undefined {
  if (choice.kind === 'ago') return nowMs - choice.minutes * MINUTE_MS;
  const instant = new Date(choice.text).getTime();
  return Number.isNaN(instant) ? undefined : instant;
}

/** An instant as a clock field writes it: local time to the minute. */
export function clockText(instantMs: number): string {
  const at = new Date(instantMs);
  const two = (part: number): string => String(part).padStart(2, '0');
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return `${day}T${two(at.getHours())}:${two(at.getMinutes())}`;
}
