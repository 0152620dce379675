import type { Upcoming } from '../upcoming';
import { keepShown } from './kept';
import { notificationOptions } from './notification';

/** Whether notifications are allowed, refused, not asked for yet, or unknown to this browser. */
export type Permission = NotificationPermission | 'none';

const WORKER_PATIENCE_MS = 5000;

export const permissionNow = (): Permission =>
  'Notification' in globalThis && 'serviceWorker' in navigator ? Notification.permission : 'none';

/** Asks for notifications; must follow a tap. */
export async function askPermission(): Promise<Permission> {
  if (permissionNow() === 'none') return 'none';
  return Notification.requestPermission();
}

/** The service worker's registration; undefined where none comes up in time. */
export function registration(): Promise<ServiceWorkerRegistration | undefined> {
  if (!('serviceWorker' in navigator)) return Promise.resolve(undefined);
  const tooLate = new Promise<undefined>((resolve) => setTimeout(resolve, WORKER_PATIENCE_MS));
  return Promise.race([navigator.serviceWorker.ready, tooLate]);
}

/** Shows a notification; false where this phone shows none. */
export async function notify(one: Upcoming): Promise<boolean> {
  if (permissionNow() !== 'granted') return false;
  const worker = await registration();
  if (!worker) return false;
  try {
    await worker.showNotification(one.title, notificationOptions(one));
  } catch {
    return false; // refused meanwhile: the line on the page says the same
  }
  await keepShown(one.tag);
  return true;
}

/** Takes notifications back whose reminders are answered. */
export async function withdraw(ids: readonly string[]): Promise<void> {
  const worker = permissionNow() === 'granted' ? await registration() : undefined;
  const shown = (await worker?.getNotifications()) ?? [];
  for (const notification of shown) {
    const own: unknown = notification.data?.ids;
    if (Array.isArray(own) && own.some((id) => ids.includes(id))) notification.close();
  }
}
