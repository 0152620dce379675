import { type ReadonlySignal, signal } from '@preact/signals';
import { keepText, keptText } from '../../actions/keep/kept-text';

/** A small choice of this phone that is no part of the logbook: the theme, which shop is on screen. */
export interface Remembered<Value extends string> {
  readonly now: ReadonlySignal<Value>;
  set(value: Value): void;
}

export type YesNo = 'yes' | 'no';
export const isYesNo = (text: string): text is YesNo => text === 'yes' || text === 'no';

/** Reads and keeps a small choice on this phone. Where the browser keeps nothing it lasts as long as the page. */
export function remembered<Value extends string>(
  key: string,
  fallback: Value,
  isValue: (text: string) => text is Value,
): Remembered<Value> {
  const kept = keptText(key);
  const now = signal<Value>(kept !== null && isValue(kept) ? kept : fallback);
  return {
    now,
    set(value) {
      now.value = value;
      keepText(key, value);
    },
  };
}
