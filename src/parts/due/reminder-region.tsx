import { useSignal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect } from 'preact/hooks';

/** The place where what is due speaks up. It stands in the page from the start, so that it is read out; what fills it comes after the first screen. */
export function ReminderRegion() {
  const Due = useSignal<FunctionComponent | undefined>(undefined);
  useEffect(() => {
    // Without its code nothing rings; the bench shows the pieces all the same, and the next opening tries again.
    import('./due-reminders').then(
      ({ DueReminders }) => {
        Due.value = DueReminders;
      },
      () => undefined,
    );
  }, [Due]);
  const Shown = Due.value;
  return <div role="alert">{Shown && <Shown />}</div>;
}
