import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

/** Keeps the screen on while the page is open and visible; gives whether the browser does so. */
export function useStayAwake(): boolean {
  const isAwake = useSignal(false);
  useEffect(() => {
    let lock: WakeLockSentinel | undefined;
    let isGone = false;

    async function stayAwake(): Promise<void> {
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      try {
        lock = await navigator.wakeLock.request('screen');
        if (isGone) return void lock.release();
        isAwake.value = true;
        lock.onrelease = () => {
          isAwake.value = false;
        };
      } catch {
        isAwake.value = false; // low battery, or not allowed: the page says so
      }
    }
    // The browser takes the lock away when the page is hidden; it is asked for again when it comes back.
    const ask = (): void => void stayAwake();
    document.addEventListener('visibilitychange', ask);
    ask();
    return () => {
      isGone = true;
      document.removeEventListener('visibilitychange', ask);
      void lock?.release();
    };
  }, [isAwake]);
  return isAwake.value;
}
