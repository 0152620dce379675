// English text of the hub: several screens, one shop.

/** "1,204 entries" */
export const entryCount = (entries: number): string =>
  `${entries.toLocaleString('en')} ${entries === 1 ? 'entry' : 'entries'}`;

/** On the settings and the board, beside the pages of the hub. */
export const HUB_HERE = {
  title: 'Other screens',
  none: 'This phone works alone.',
  setUp: 'Join other screens',
  manage: 'Hub, phones and tablet',
  showOnly: 'Show only: nothing is logged here.',
  change: 'Change',
} as const;

/** What stands in the way, and what to do. */
export const HUB_TROUBLE = {
  unreachable:
    'The hub does not answer. It may be off, or this phone is not in its network. Nothing is lost; it goes on by itself.',
  'wrong-sign-in':
    'The hub does not know this sign-in. If it was given a new one, join again with the new code.',
  'no-such-shop':
    'This hub holds no such shop. Check that the code is the newest, and that the phone it came from is at this hub.',
  'foreign-stream':
    'Somebody else uses this shop’s place on the hub, with other rules. Nothing is sent there. Ask who runs the hub.',
  starting: 'The hub is starting, or too few of its computers are up. It goes on by itself.',
  full: 'The hub has no room left. What you log stays on this phone. Give the hub more room; the rest follows.',
  'this-phone-full':
    'This phone has no room for what came. Nothing was saved by halves. Free some space; it goes on by itself.',
} as const;

export const HUB_STATUS = {
  on: (there: number, of: number): string =>
    `${there.toLocaleString('en')} of ${entryCount(of)} ${of === 1 ? 'is' : 'are'} on the hub.`,
  heard: (when: string): string => `Last contact ${when}.`,
  opening: 'Connecting to the hub…',
  notYet: 'The hub has not been reached since the app was opened. What you log waits on this phone.',
  coming: (left: number): string => `${entryCount(left)} still to fetch.`,
  waiting: (left: number): string => `${entryCount(left)} ${left === 1 ? 'waits' : 'wait'} on this phone.`,
  photos: (left: number): string => (left === 1 ? '1 photo waiting.' : `${left} photos waiting.`),
  foreign: (some: number): string =>
    `${some === 1 ? '1 message' : `${some} messages`} on the hub ${some === 1 ? 'was' : 'were'} not sealed by this shop, so left out.`,
  stale: (when: string): string => `Not up to date: the hub was last reached ${when}.`,
  staleNever: 'Not up to date: the hub has not been reached.',
  long: (left: number): string => `${entryCount(left)} not on the hub for over an hour`,
} as const;

export const HUB_LEAVE = {
  title: 'Leave the hub',
  sure: 'Everything stays: on this phone, and on the others. They no longer update each other, and what waits here stays here.',
  yes: 'Yes, leave',
  no: 'Stay',
  left: 'This phone works alone again.',
} as const;
