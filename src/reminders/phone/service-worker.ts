/// <reference lib="webworker" />
import { cacheNames, clientsClaim } from 'workbox-core';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  getCacheKeyForURL,
  type PrecacheEntry,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import type { Answer } from '../reminder';
import { keepAnswer, keepShown, keptAnswers, keptShown, keptUpcoming } from './kept';
import { notificationOptions } from './notification';
import { DUE_TAG } from './periodic';
import { toShow } from './turn';

declare const self: ServiceWorkerGlobalScope & { readonly __WB_MANIFEST: (PrecacheEntry | string)[] };

/** Not in every browser, and not in the compiler's own list. */
interface PeriodicSyncEvent extends ExtendableEvent {
  readonly tag: string;
}

// The first visit is served at once; a later version waits until the page asks for it.
clientsClaim();
cleanupOutdatedCaches();
const keptFiles = self.__WB_MANIFEST;
precacheAndRoute(keptFiles);
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));

self.addEventListener('message', (event: ExtendableMessageEvent) => {
  const { type } = event.data ?? {};
  if (type === 'SKIP_WAITING') void self.skipWaiting();
  if (type === 'LOOK_AT_KEPT') event.waitUntil(fetchMissing());
});

/** Fetches again what a browser short of room has dropped from the cache: else the next start without a network is blank. */
async function fetchMissing(): Promise<void> {
  const cache = await caches.open(cacheNames.precache);
  for (const one of keptFiles) {
    const url = typeof one === 'string' ? one : one.url;
    const key = getCacheKeyForURL(url);
    if (key === undefined || (await cache.match(key))) continue;
    const fresh = await fetch(key, { cache: 'reload' }).catch(() => undefined);
    if (fresh?.ok) await cache.put(key, fresh);
  }
}

(self as EventTarget).addEventListener('periodicsync', (event) => {
  const { tag, waitUntil } = event as PeriodicSyncEvent;
  if (tag === DUE_TAG) waitUntil.call(event, showDue());
});

self.addEventListener('notificationclick', (event) => {
  const { notification, action } = event;
  notification.close();
  event.waitUntil(isAnswer(action) ? answer(notification, action) : openApp(notification));
});

const isAnswer = (action: string): action is Answer => action === 'done' || action === 'later';

/** What came due since the page last said so; the browser wakes the worker when it sees fit. */
async function showDue(): Promise<void> {
  const [upcoming, shown, answers] = await Promise.all([keptUpcoming(), keptShown(), keptAnswers()]);
  for (const one of toShow({ upcoming, shown, answers, nowMs: Date.now() })) {
    await self.registration.showNotification(one.title, notificationOptions(one));
    await keepShown(one.tag);
  }
}

/** Keeps the answer for the logbook, and tells the app if it is open. The phone may stay in the pocket. */
async function answer({ data }: Notification, given: Answer): Promise<void> {
  const ids: readonly string[] = Array.isArray(data?.ids) ? data.ids : [];
  await keepAnswer({ ids, answer: given, atMs: Date.now() });
  for (const open of await windows()) open.postMessage({ kind: 'reminder-answered' });
}

const windows = () => self.clients.matchAll({ type: 'window', includeUncontrolled: true });

/** Brings the app to the front, at the place that the reminder is about. */
async function openApp({ data }: Notification): Promise<void> {
  const address = typeof data?.address === 'string' ? data.address : '#/bench';
  const [open] = await windows();
  if (!open) {
    await self.clients.openWindow(`${self.registration.scope}${address}`);
    return;
  }
  // The message goes first: focus() is refused where the browser saw no tap.
  open.postMessage({ kind: 'reminder-tapped', address });
  await open.focus();
}
