import { signal } from '@preact/signals';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { beginAtHub, followHub, lookAtHub } from '../../../src/actions/hub/at-the-hub';
import type { ActionNeeds } from '../../../src/actions/log';
import type { CarryNeeds } from '../../../src/hub/carry';
import { HubFailure } from '../../../src/hub/hub-failure';
import type { HubLink } from '../../../src/hub/hub-link';
import { shopKey } from '../../../src/hub/seal';

/** What the hub is asked, and what it says; no line is opened. */
const hub = vi.hoisted(() => ({
  addresses: [] as string[],
  signedIn: [] as unknown[],
  closed: 0,
  wakes: 0,
  isStopped: false,
  trouble: undefined as Error | undefined,
  carried: [] as CarryNeeds[],
  fetched: [] as string[],
}));
vi.mock('../../../src/hub/nats', () => ({
  natsAt: (address: string) => {
    hub.addresses.push(address);
    return async (who: object, aim: string) => {
      if (hub.trouble) throw hub.trouble;
      hub.signedIn.push({ ...who, aim });
      return { look: async () => ({ count: 7 }), close: async () => void hub.closed++ };
    };
  },
}));
const link = signal<HubLink | undefined>(undefined);
vi.mock('../../../src/hub/carry', () => ({
  carry: (needs: CarryNeeds) => {
    hub.carried.push(needs);
    return {
      status: signal('quiet'),
      link,
      wake: () => void hub.wakes++,
      stop: async () => {
        hub.isStopped = true;
      },
    };
  },
}));
vi.mock('../../../src/hub/known-there', () => ({ openKnownThere: async () => ({}) }));
vi.mock('../../../src/logbook/storage/photos', () => ({ openPhotos: () => ({}) }));
vi.mock('../../../src/hub/photos', () => ({
  photosOf: ({ entries }: { entries: ReadonlyMap<string, unknown> }) => [...entries.keys()],
  sendPhotos: async (photos: readonly string[]) => void hub.fetched.push(...photos.map((id) => `sent ${id}`)),
  fetchPhoto: async (id: string) => {
    hub.fetched.push(id);
    if (id === 'gone') throw new Error('the line was cut');
    return new Blob([id]);
  },
}));

const CODE = { password: 'sign-in', secret: 'abcdefghijklmnopqrstuvwxyz' };
let page: EventTarget & { visibilityState: string };
beforeEach(() => {
  Object.assign(hub, {
    addresses: [],
    signedIn: [],
    closed: 0,
    wakes: 0,
    isStopped: false,
    trouble: undefined,
  });
  Object.assign(hub, { carried: [], fetched: [] });
  link.value = undefined;
  page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  const network = new EventTarget();
  vi.stubGlobal('document', page);
  vi.stubGlobal('addEventListener', network.addEventListener.bind(network));
  vi.stubGlobal('removeEventListener', network.removeEventListener.bind(network));
  vi.stubGlobal('dispatch', network.dispatchEvent.bind(network));
  vi.stubGlobal('location', { href: 'https://shop.example/app/?x=hub#/more/hub' });
});
const cameOnline = () =>
  (globalThis as unknown as { dispatch(event: Event): void }).dispatch(new Event('online'));
const needs = (isWhole = signal(true)) =>
  ({
    logbook: { isWhole, shop: signal({ entries: new Map([['one', {}]]) }) },
    now: () => 0,
  }) as unknown as ActionNeeds;

describe('before a phone joins', () => {
  test('the hub is looked at on the address of the app, with the name of the shop and not its secret', async () => {
    expect(await lookAtHub(CODE)).toEqual({ ok: true, value: 7 });
    expect(hub.addresses).toEqual(['wss://shop.example/app/hub']);
    const { name } = await shopKey(CODE.secret);
    expect(hub.signedIn).toEqual([{ password: 'sign-in', shop: name, aim: 'join' }]);
    expect(hub.closed).toBe(1);
  });

  test('of an app without a certificate the line has none either', async () => {
    vi.stubGlobal('location', { href: 'http://127.0.0.1:4180/' });
    await lookAtHub(CODE);
    expect(hub.addresses).toEqual(['ws://127.0.0.1:4180/hub']);
  });

  test('a new shop is begun there, and the line closed', async () => {
    expect(await beginAtHub(CODE)).toEqual({ ok: true, value: undefined });
    expect(hub.signedIn).toMatchObject([{ aim: 'hold' }]);
    expect(hub.closed).toBe(1);
  });

  test.each([
    { thrown: new HubFailure('wrong-sign-in'), trouble: 'wrong-sign-in' },
    { thrown: new Error('cut'), trouble: 'unreachable' },
  ])('where that fails it is told why: $trouble', async ({ thrown, trouble }) => {
    hub.trouble = thrown;
    expect(await lookAtHub(CODE)).toEqual({ ok: false, failure: trouble });
    expect(await beginAtHub(CODE)).toEqual({ ok: false, failure: trouble });
  });
});

describe('a phone that has joined', () => {
  test('carries nothing before its logbook is read whole: what is not read yet would seem lost', async () => {
    const isWhole = signal(false);
    const following = followHub(needs(isWhole), CODE);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(hub.carried).toEqual([]);
    isWhole.value = true;
    await following;
    expect(hub.carried).toHaveLength(1);
    isWhole.value = false;
    isWhole.value = true;
    expect(hub.carried).toHaveLength(1);
  });

  test('tries the line at once when the network is back or the page is seen, until it is stopped', async () => {
    const at = await followHub(needs(), CODE);
    cameOnline();
    page.dispatchEvent(new Event('visibilitychange'));
    expect(hub.wakes).toBe(2);
    page.visibilityState = 'hidden';
    page.dispatchEvent(new Event('visibilitychange'));
    cameOnline();
    expect(hub.wakes).toBe(2);
    page.visibilityState = 'visible';
    await at.stop();
    expect(hub.isStopped).toBe(true);
    cameOnline();
    page.dispatchEvent(new Event('visibilitychange'));
    expect(hub.wakes).toBe(2);
  });

  test('has the photos of the others while the line is open; one that cannot be had is none', async () => {
    const at = await followHub(needs(), CODE);
    expect(await at.photo('one')).toBeUndefined();
    expect(hub.fetched).toEqual([]);
    link.value = {} as HubLink;
    expect(await (await at.photo('one'))?.text()).toBe('one');
    expect(await at.photo('gone')).toBeUndefined();
    const [carried] = hub.carried;
    await carried?.alongside?.({} as HubLink, () => undefined);
    expect(hub.fetched).toContain('sent one');
  });
});
