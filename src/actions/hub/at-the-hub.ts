import type { ReadonlySignal } from '@preact/signals';
import { carry } from '../../hub/carry';
import { type HubTrouble, troubleOf } from '../../hub/hub-failure';
import type { HubStatus } from '../../hub/hub-status';
import { openKnownThere } from '../../hub/known-there';
import type { Membership } from '../../hub/membership';
import { natsAt } from '../../hub/nats';
import { fetchPhoto, photosOf, sendPhotos } from '../../hub/photos';
import { shopKey } from '../../hub/seal';
import { openPhotos } from '../../logbook/storage/photos';
import { fail, type Result, succeed } from '../../result';
import type { ActionNeeds } from '../log';

// Everything that speaks with the hub, in one chunk that only a phone which joins one fetches. Without a network it is of no use, so it is
// not kept for offline.

/** What is carried for this phone. */
export interface AtTheHub {
  readonly status: ReadonlySignal<HubStatus>;
  /** A photo that is on another phone, where the hub has it. */
  photo(id: string): Promise<Blob | undefined>;
  stop(): Promise<void>;
}

type Code = Pick<Membership, 'password' | 'secret'>;

/** The hub lies beside the app, on its own address: the page's policy lets nothing else through. */
function hubAddress(): string {
  const address = new URL('hub', location.href.replace(/[?#].*$/, ''));
  address.protocol = address.protocol === 'https:' ? 'wss:' : 'ws:';
  return address.href;
}

/** How many entries of a shop are on the hub, or why they cannot be had; nothing is taken in. */
export async function lookAtHub({ password, secret }: Code): Promise<Result<number, HubTrouble>> {
  try {
    const { name } = await shopKey(secret);
    const link = await natsAt(hubAddress())({ password, shop: name }, 'join');
    const { count } = await link.look();
    await link.close();
    return succeed(count);
  } catch (error) {
    return fail(troubleOf(error));
  }
}

/** Begins to hold a new shop on the hub: so the sign-in is found right before anything is kept. */
export async function beginAtHub({ password, secret }: Code): Promise<Result<void, HubTrouble>> {
  try {
    const { name } = await shopKey(secret);
    await (await natsAt(hubAddress())({ password, shop: name }, 'hold')).close();
    return succeed(undefined);
  } catch (error) {
    return fail(troubleOf(error));
  }
}

/** Carries between the logbook and the hub, from when the logbook is whole until it is stopped. */
export async function followHub(
  { logbook, now }: ActionNeeds,
  { password, secret }: Code,
): Promise<AtTheHub> {
  const [shop, known] = await Promise.all([shopKey(secret), openKnownThere(), untilWhole(logbook)]);
  const photos = openPhotos();
  const carrier = carry({
    book: logbook,
    password,
    shop,
    connect: natsAt(hubAddress()),
    known,
    now,
    alongside: (link, tell) => sendPhotos(photosOf(logbook.shop.peek()), { link, shop, known, photos }, tell),
  });
  const wake = (): void => {
    if (document.visibilityState === 'visible') carrier.wake();
  };
  addEventListener('online', wake);
  document.addEventListener('visibilitychange', wake);
  return {
    status: carrier.status,
    async photo(id) {
      const link = carrier.link.peek();
      return link && fetchPhoto(id, link, shop).catch(() => undefined);
    },
    stop() {
      removeEventListener('online', wake);
      document.removeEventListener('visibilitychange', wake);
      return carrier.stop();
    },
  };
}

/** What is not read yet would seem to be lost. */
function untilWhole({ isWhole }: ActionNeeds['logbook']): Promise<void> {
  return new Promise((resolve) => {
    const stop = isWhole.subscribe((whole) => {
      if (!whole) return;
      resolve();
      queueMicrotask(() => stop());
    });
  });
}
