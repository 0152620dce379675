import { type ReadonlySignal, signal } from '@preact/signals';

export const PLACES = ['bench', 'piece', 'lay', 'mix', 'match', 'air', 'more', 'plan', 'board'] as const;
export type Place = (typeof PLACES)[number];

/** Where the reader is: `#/piece/<id>` is place `piece`, rest `['<id>']`. */
export interface Route {
  readonly place: Place;
  readonly rest: readonly string[];
  readonly query: URLSearchParams;
}

/** Reads a hash address. An unknown one leads to the bench. */
export function parseHash(hash: string): Route {
  const [path = '', search = ''] = hash.replace(/^#?\/?/, '').split('?');
  const [first = '', ...rest] = path.split('/').map(decode);
  const place = PLACES.find((known) => known === first) ?? 'bench';
  return {
    place,
    rest: place === first ? rest.filter((part) => part !== '') : [],
    query: new URLSearchParams(search),
  };
}

function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part; // a broken escape is kept as it stands
  }
}

/** The address of a place, for `href`: `linkTo('piece', id)` is `#/piece/<id>`. */
export function linkTo(place: Place, ...rest: readonly string[]): string {
  return `#/${[place, ...rest].map(encodeURIComponent).join('/')}`;
}

/** The whole address of a place, for a label: it leads back here under whatever address the app is served. */
export const addressOf = (place: Place, ...rest: readonly string[]): string =>
  new URL(linkTo(place, ...rest), location.href).href;

const current = signal(parseHash(''));
const byReader = signal(0);
const BENCH = linkTo('bench');
let shownHash = '';
let moves = 0;
/** How far down each page was read when it was left. */
const left = new Map<string, number>();

/** Where the reader is now. */
export const route: ReadonlySignal<Route> = current;

/** Where the reader was sent from to put something right; undefined where nobody was. */
export function sentFrom(): string | undefined {
  const back = current.value.query.get('back');
  return back?.startsWith('#/') ? back : undefined;
}

/** Goes to a place, as a tap on its link would. */
export const goTo = (place: Place, ...rest: readonly string[]): void => goToAddress(linkTo(place, ...rest));

/** The page changes at once, together with what was just done. */
function goToAddress(address: string): void {
  location.hash = address;
  follow();
}

/** Asked before a wait: tells, after it, whether the reader is still on the page. */
export function stillHere(): () => boolean {
  const { hash } = location;
  return () => location.hash === hash;
}

/** Asked before a wait: goes on to an address after it, unless the reader has gone elsewhere meanwhile. */
export function fromHere(): (address: string) => void {
  const isHere = stillHere();
  return (address) => {
    if (isHere()) goToAddress(address);
  };
}

/** How often the reader has gone elsewhere; where an action leads does not count. */
export const readerMoves: ReadonlySignal<number> = byReader;

/** Whether the reader has moved since the app opened; on opening nothing takes the focus. */
export const arrivedByLink = (): boolean => moves > 0;

/** How far down this page was read when it was left. */
export const leftAt = (): number => left.get(shownHash || BENCH) ?? 0;

/** Every page is read from its top again: what stands on it has become another thing. */
export function readAfresh(): void {
  left.clear();
  scrollTo(0, 0);
}

/** Begins to follow the address. Called once, by the door. */
export function followAddress(): void {
  history.scrollRestoration = 'manual'; // the pages say where they are read from
  shownHash = location.hash;
  current.value = parseHash(shownHash);
  addEventListener('hashchange', () => {
    if (follow()) byReader.value++;
  });
}

/** Shows what the address says; the browser speaks of a change only after a while, and speaks of each. */
function follow(): boolean {
  if (location.hash === shownHash) return false;
  left.set(shownHash || BENCH, scrollY);
  shownHash = location.hash;
  moves++;
  current.value = parseHash(shownHash);
  return true;
}
