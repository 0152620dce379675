import { canShare } from './hand-over';
import { type Permission, permissionNow, registration } from './notify';
import { hasPeriodicSync } from './periodic';

/** What this phone and browser can do to remind. */
export interface Abilities {
  readonly notifications: Permission;
  /** Woken now and then while the app is closed. */
  readonly isWokenClosed: boolean;
  readonly hasSound: boolean;
  readonly hasVibration: boolean;
  /** Done and later can stand on a notification itself. */
  readonly hasAnswers: boolean;
  readonly hasMotion: boolean;
  readonly staysAwake: boolean;
  readonly sharesFiles: boolean;
}

/** Finds out what this phone can do, without asking the person for anything. */
export async function abilities(): Promise<Abilities> {
  return {
    notifications: permissionNow(),
    isWokenClosed: await isWoken(),
    hasSound: 'AudioContext' in globalThis,
    hasVibration: 'vibrate' in navigator,
    hasAnswers: hasAnswers(),
    hasMotion: !matchMedia('(prefers-reduced-motion: reduce)').matches,
    staysAwake: await canStayAwake(),
    sharesFiles: canShare(new File([''], 'bench.ics', { type: 'text/calendar' })),
  };
}

async function isWoken(): Promise<boolean> {
  const worker = await registration();
  if (!worker || !hasPeriodicSync(worker)) return false;
  try {
    // Chromium's own name; other browsers throw.
    const { state } = await navigator.permissions.query({
      name: 'periodic-background-sync' as PermissionName,
    });
    return state === 'granted';
  } catch {
    return false;
  }
}

/** Asked for and given back: some browsers have the name and refuse. */
async function canStayAwake(): Promise<boolean> {
  try {
    const lock = await navigator.wakeLock.request('screen');
    await lock.release();
    return true;
  } catch {
    return false;
  }
}

// Notification.maxActions (WHATWG Notifications): missing or 0 where an engine shows no buttons.
const hasAnswers = (): boolean =>
  ((globalThis.Notification as { readonly maxActions?: number } | undefined)?.maxActions ?? 0) > 0;
