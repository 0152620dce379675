// English text of the pages of the hub, which are fetched over the network alone.
import { entryCount } from './hub';

export const HUB_WORDS = {
  toMore: 'Back to the settings',
  lead: 'A hub on a computer in your shop carries what is logged between your phones and a tablet on the wall. Each works alone and catches up when it can. The hub sees sizes and times, never what you log: it does not have the key.',
  demo: 'Leave the demo shop first: only your own logbook goes to a hub.',
  notSecure:
    'This address is not https, so nothing could be sealed. Open the app at its https address to join.',
  phoneName: 'Name of this screen',
  phoneNameHint: 'Shown in the history where more than one logs.',
  usualName: { phone: 'Phone', tablet: 'Tablet' },
  save: 'Save',
  named: 'Name saved.',
  noName: 'Give this screen a name, such as Booth phone.',
} as const;

export const HUB_JOIN = {
  title: 'Join',
  code: 'Code or link',
  codeHint:
    'From the hub’s own screen for the first phone, from a joined phone for the others. Paste the link, or type the code.',
  go: 'Continue',
  looking: 'Asking the hub…',
  scan: 'Scan the code',
  hold: 'Hold the code in the picture.',
  foreign: 'This is not a code for joining a shop.',
  faults: {
    empty: 'Enter the code, or scan it.',
    incomplete: 'This is not the whole code. It has 22 characters from a hub, 54 from a phone.',
    mistyped: 'A character is wrong. Compare it with the code, four at a time.',
  },
  elsewhere: (address: string): string =>
    `This code is for ${address}. Open the app there and join in it; a phone talks only to the address it was opened from.`,
  begin: {
    title: 'Start your shop on this hub',
    text: (here: number): string =>
      `This phone makes the key. ${here === 0 ? 'What you log' : `The ${entryCount(here)} on it, and what you log from now on,`} will go to the hub sealed. Then it shows the code for the others.`,
    act: 'Start the shop',
  },
  join: {
    title: 'Join this shop',
    text: (there: number, here: number): string =>
      here === 0
        ? `${entryCount(there)} on the hub. This phone gets them all.`
        : there === 0
          ? `Nothing on the hub yet. The ${entryCount(here)} on this phone will go there, sealed.`
          : `${entryCount(there)} on the hub, ${entryCount(here)} on this phone. Both become one logbook on every screen. Nothing is overwritten or lost, and it cannot be taken apart again.`,
    act: 'Join',
    actMerge: 'Merge and join',
  },
  other: 'Enter another code',
  again: 'This phone leaves the shop it has joined. Its logbook goes with it.',
  cancel: 'Cancel',
  joined: 'Joined.',
  begun: 'Your shop is on the hub.',
  notFetched: 'The app could not fetch the part that talks to the hub. Check the network and try again.',
} as const;

export const HUB_CODE = {
  open: 'Add a phone or tablet',
  title: 'Add a screen',
  lead: 'Scan it with the other phone’s camera. An app already on its home screen keeps its own logbook: open it there under More, Other screens, and paste, type or scan.',
  caution:
    'Whoever has this code can read and add to everything in your logbook. Show it only to the screen that joins.',
  qr: 'Code to join this shop',
  typed: 'To type',
  copy: 'Copy the link',
  copied: 'Link copied.',
  notCopied: 'The browser did not let the app copy. Type the code instead.',
} as const;

export const HUB_SHOW = {
  title: 'Tablet on the wall',
  label: 'Show only',
  hint: 'Shows the board and logs nothing.',
  open: 'Open the board',
} as const;

export const HUB_LOST = {
  open: 'A phone was lost',
  title: 'A phone was lost',
  lead: 'Two steps lock it out. What it holds already it keeps, as a lost notebook does; nothing new reaches it.',
  one: '1. A new sign-in on the hub',
  oneText: 'On the hub’s computer, in the app’s folder:',
  command: 'npm run hub -- --new-sign-in',
  oneAfter: 'From that moment the lost phone, and every other, is shut out. The hub shows a new code.',
  two: '2. A new key on this phone',
  twoText:
    'Enter the hub’s new code here. This phone makes a new key and sends everything again under it. Then let the others join with the code that this phone shows.',
} as const;
