/// <reference lib="webworker" />
import { clientsClaim } from 'workbox-core';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  type PrecacheEntry,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

declare const self: ServiceWorkerGlobalScope & { readonly __WB_MANIFEST: (PrecacheEntry | string)[] };

// The first visit is served at once; a later version waits until the page asks for it.
clientsClaim();
cleanupOutdatedCaches();
precacheAndRoute(self.__WB_MANIFEST);
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));

self.addEventListener('message', ({ data }: ExtendableMessageEvent) => {
  if (data?.type === 'SKIP_WAITING') void self.skipWaiting();
});

self.addEventListener('notificationclick', (event) => {
  event.notification.close();
  event.waitUntil(openApp(event.notification));
});

/** Brings the app to the front and tells it which reminder was tapped. */
async function openApp({ tag, data }: Notification): Promise<void> {
  const windows = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  const open = windows[0];
  if (!open) {
    await self.clients.openWindow(typeof data?.address === 'string' ? data.address : '/');
    return;
  }
  // The message goes first: focus() is refused where the browser saw no tap.
  open.postMessage({ kind: 'reminder-tapped', tag, data });
  await open.focus();
}
