import { type ReadonlySignal, signal } from '@preact/signals';

/** A call that comes while the worker in use is busy may wait for minutes (seen in Chromium 156); a reload frees that one at once. */
const PATIENCE_MS = 3000;

const offered = signal<(() => void) | undefined>(undefined);

/** Brings in the new version; undefined while there is none. */
export const newVersion: ReadonlySignal<(() => void) | undefined> = offered;

/**
 * Keeps the app for use without a network, and says when a newer one waits. The first version ever kept is no news: it takes over
 * by itself. Whatever the browser dropped of the version in use is fetched again.
 * @param onFailed the browser would not keep it
 */
export async function keepForOffline(onFailed: () => void): Promise<void> {
  const { serviceWorker: workers } = navigator;
  if (!workers) return; // not served over https, or a browser without: said elsewhere
  const isFirst = workers.controller === null;
  let isAsked = false;
  workers.addEventListener('controllerchange', () => {
    if (isAsked) location.reload();
    // Another tab brought the new version in: this one keeps its form, and reloads when asked.
    else if (!isFirst) offered.value = () => location.reload();
  });
  try {
    const registration = await workers.register('./service-worker.js');
    const offer = (waiting: ServiceWorker): void => {
      const isWaiting = (): boolean => waiting.state === 'installed';
      offered.value = () => {
        isAsked = true;
        if (!isWaiting()) return location.reload(); // it has taken over meanwhile
        waiting.postMessage({ type: 'SKIP_WAITING' });
        setTimeout(() => isWaiting() && location.reload(), PATIENCE_MS);
      };
    };
    const follow = (fresh: ServiceWorker | null): void =>
      fresh?.addEventListener('statechange', () => {
        if (fresh.state === 'installed' && registration.active) offer(fresh);
      });
    if (registration.waiting && registration.active) offer(registration.waiting);
    follow(registration.installing);
    registration.addEventListener('updatefound', () => follow(registration.installing));
    registration.active?.postMessage({ type: 'LOOK_AT_KEPT' });
  } catch {
    onFailed();
  }
}
