import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

const SECOND_MS = 1000;

/** The clock, moved on every second, for a count-down. */
export function useSecond(now: () => number): number {
  const nowMs = useSignal(now());
  useEffect(() => {
    const timer = setInterval(() => {
      nowMs.value = now();
    }, SECOND_MS);
    return () => clearInterval(timer);
  }, [nowMs, now]);
  return nowMs.value;
}
