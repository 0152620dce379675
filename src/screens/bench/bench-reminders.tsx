import { useSignal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { remembered } from '../../parts/kept/remembered';

const isPixels = (text: string): text is `${number}` => /^\d{1,4}$/.test(text);
/** How high the list stood when it was last seen. */
const lastHeight = remembered<`${number}`>('coatwait-missed-height', '0', isPixels);
/** By then the plan is made and the list is whole. */
const WHOLE_AFTER_MS = 3_000;

/**
 * What was missed, first on the bench; its code comes after the first screen. Its place is kept free meanwhile, or the pieces would move
 * away under the thumb.
 */
export function BenchReminders() {
  const List = useSignal<FunctionComponent | undefined>(undefined);
  const isWhole = useSignal(false);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    import('./missed-reminders').then(
      ({ MissedReminders }) => {
        List.value = MissedReminders;
      },
      () => undefined, // the bell leads to the same list, and says there what went wrong
    );
    const timer = setTimeout(() => {
      isWhole.value = true;
    }, WHOLE_AFTER_MS);
    return () => clearTimeout(timer);
  }, [List, isWhole]);
  useEffect(() => {
    if (isWhole.value && place.current) lastHeight.set(`${place.current.offsetHeight}`);
  });
  const Shown = List.value;
  return (
    <div ref={place} style={isWhole.value ? undefined : { minHeight: `${lastHeight.now.peek()}px` }}>
      {Shown && <Shown />}
    </div>
  );
}
