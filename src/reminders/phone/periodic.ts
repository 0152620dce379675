import { MINUTE_MS } from '../../units';
/** The name under which the browser wakes the service worker now and then. */
export const DUE_TAG = 'coatwait-due';

interface PeriodicSync {
  register(tag: string, options: { readonly minInterval: number }): Promise<void>;
}

const QUARTER_OF_AN_HOUR_MS = 15 * MINUTE_MS;

/** Whether this browser can wake the worker while the app is closed. */
export const hasPeriodicSync = (
  registration: object,
): registration is { readonly periodicSync: PeriodicSync } => 'periodicSync' in registration;

/** Asks to be woken; false where the browser cannot or will not. Installed apps that are used get it, at the browser's own pace. */
export async function askForPeriodicSync(registration: object): Promise<boolean> {
  if (!hasPeriodicSync(registration)) return false;
  try {
    await registration.periodicSync.register(DUE_TAG, { minInterval: QUARTER_OF_AN_HOUR_MS });
    return true;
  } catch {
    return false; // not allowed: the page says so
  }
}
