import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { AtTheHub } from '../../actions/hub/at-the-hub';
import { namePhone } from '../../actions/hub/name-phone';
import type { OpenShop } from '../../actions/shop';
import type { HubTrouble } from '../../hub/hub-failure';
import { type Waiting, waitingAsKnown } from '../../hub/hub-status';
import { type Membership, openKnownDatabase, openMemberships } from '../../hub/membership';
import { fetchOnce } from '../../logbook/fetch-once';
import { markIds } from '../../logbook/ids/new-id';
import { newMark } from '../../logbook/ids/phone-mark';
import { fail, type Result, succeed } from '../../result';
import { goTo, route } from '../frame/route';
import { isYesNo, remembered, type YesNo } from './remembered';

/** Whether this phone has joined a hub: what speaks with one is fetched for no other. */
export const joined = remembered<YesNo>('coatwait-joined', 'no', isYesNo);
/** Whether this is a screen on a wall: it shows the board, and logs nothing. */
export const showOnly = remembered<YesNo>('coatwait-show-only', 'no', isYesNo);

/** This phone at its hub; `at` is undefined until what speaks with a hub has come, and `asKnown` where it cannot be had. */
interface HubHere {
  readonly member: Membership;
  readonly at: AtTheHub | undefined;
  readonly asKnown?: ReadonlySignal<Waiting | undefined>;
}
const here = signal<HubHere | undefined>(undefined);
/** Undefined on a phone that has not joined. */
export const hubHere: ReadonlySignal<HubHere | undefined> = here;

const AGAIN_MS = 10_000;
const memberships = openMemberships();
/** What speaks with the hub; without a network it cannot be had, and is asked for again until there is one. */
export const speaker = fetchOnce(() => import('../../actions/hub/at-the-hub'));

/** Carries between the own logbook and the hub, on a phone that has joined one; gives the function that ends it. */
export function keepAtHub({ needs, shop, isWhole }: OpenShop): () => void {
  // The browser writes some seconds late that this phone has joined. One that died before knows it by its logbook.
  const mayBeJoined = computed(
    () => joined.now.value === 'yes' || (isWhole.value && shop.value.phones.size > 0),
  );
  let isOver = false;
  async function start(): Promise<void> {
    const member = await memberships.read();
    if (!member || isOver || here.peek()?.at) return;
    joined.set('yes');
    markIds(member.phone);
    here.value ??= { member, at: undefined };
    const { followHub } = await speaker();
    const at = await followHub(needs, member);
    if (isOver || here.peek()?.at) return void at.stop();
    here.value = { member, at };
  }
  /** The hub's computer is off, and what speaks with it cannot be had: what waits is told by what was known last. */
  async function tellAsKnown(): Promise<void> {
    const now = here.peek();
    if (!now || now.at || now.asKnown) return;
    const there = new Set(await openKnownDatabase().keys());
    const asKnown = computed(() =>
      isWhole.value ? waitingAsKnown(shop.value.entries, (id) => there.has(id)) : undefined,
    );
    if (here.peek() === now) here.value = { ...now, asKnown };
  }
  let again: ReturnType<typeof setTimeout> | undefined;
  // Nothing says when the hub's computer is up again: it is asked now and then.
  const tryStart = (): void => {
    clearTimeout(again);
    start().catch(() => {
      if (isOver) return;
      again = setTimeout(tryStart, AGAIN_MS);
      tellAsKnown().catch(() => undefined); // the next try asks again
    });
  };
  addEventListener('online', tryStart);
  const stopStarting = effect(() => {
    if (mayBeJoined.value) tryStart();
  });
  const stopShowing = effect(() => {
    const { place, rest } = route.value;
    const isAway = place !== 'board' && !(place === 'more' && rest[0] === 'hub');
    if (showOnly.now.value === 'yes' && isAway) goTo('board');
  });
  end = async () => {
    isOver = true;
    clearTimeout(again);
    removeEventListener('online', tryStart);
    stopStarting();
    stopShowing();
    const at = here.peek()?.at;
    here.value = undefined;
    await at?.stop();
  };
  return () => void end();
}
let end = async (): Promise<void> => undefined;

type Code = Pick<Membership, 'password' | 'secret'>;

/** Joins a shop that is on the hub, or begins a new one there; the phone is known by a name from now on. */
export async function join(
  open: OpenShop,
  code: Code,
  name: string,
  how: 'join' | 'begin',
): Promise<Result<void, HubTrouble>> {
  const { lookAtHub, beginAtHub } = await speaker();
  const found = how === 'join' ? await lookAtHub(code) : await beginAtHub(code);
  if (!found.ok) return found;
  const phone = here.peek()?.member.phone ?? newMark();
  await end();
  try {
    await memberships.keep({ ...code, phone });
  } catch {
    return fail('this-phone-full');
  }
  joined.set('yes');
  markIds(phone);
  if (open.shop.peek().phones.get(phone) !== name) await namePhone(open.needs, phone, name);
  keepAtHub(open);
  return succeed(undefined);
}

/** Leaves the hub. Everything that was logged stays on this phone, and on the others. */
export async function leave(): Promise<void> {
  joined.set('no');
  showOnly.set('no');
  markIds('');
  // A line that is being tried ends late; the code does not stay that long.
  await Promise.all([memberships.drop().catch(() => undefined), end()]);
}
