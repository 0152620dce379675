import { useSignal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect } from 'preact/hooks';

/** What was missed, first on the bench; its code comes after the first screen. */
export function BenchReminders() {
  const List = useSignal<FunctionComponent | undefined>(undefined);
  useEffect(() => {
    import('./missed-reminders').then(
      ({ MissedReminders }) => {
        List.value = MissedReminders;
      },
      () => undefined, // the bell leads to the same list, and says there what went wrong
    );
  }, [List]);
  const Shown = List.value;
  return Shown ? <Shown /> : null;
}
