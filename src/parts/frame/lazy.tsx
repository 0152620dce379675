import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useCallback, useEffect } from 'preact/hooks';
import { LAZY } from '../../words/common';
import { Button } from '../blocks/button';
import { Notice } from '../blocks/notice';

export type LoadScreen = () => Promise<ComponentType>;

const loaded = new Map<LoadScreen, ComponentType>();

/** A screen that is fetched when it is first shown. If it cannot be fetched it says so and can be asked again. */
export function Lazy({ load }: { readonly load: LoadScreen }) {
  const hasFailed = useSignal(false);
  const screen = useSignal(loaded.get(load));
  const fetchIt = useCallback(async () => {
    hasFailed.value = false;
    try {
      const fetched = await load();
      loaded.set(load, fetched);
      screen.value = fetched;
    } catch {
      hasFailed.value = true;
    }
  }, [load, hasFailed, screen]);
  useEffect(() => {
    if (!loaded.has(load)) void fetchIt();
  }, [load, fetchIt]);

  if (hasFailed.value) return <CouldNotLoad onRetry={fetchIt} />;
  const Screen = screen.value;
  return Screen ? <Screen /> : <p class="heard">{LAZY.loading}</p>;
}

// After an update the old page's parts are gone; only a reload fetches the new ones.
function CouldNotLoad({ onRetry }: { readonly onRetry: () => void }) {
  return (
    <Notice kind="stop" title={LAZY.failed} isNew>
      <p>{LAZY.whatToDo}</p>
      <div class="acts">
        <Button onClick={onRetry}>{LAZY.retry}</Button>
        <Button kind="plain" onClick={() => location.reload()}>
          {LAZY.reload}
        </Button>
      </div>
    </Notice>
  );
}
