// English text of what cannot be read from this device.

export const STORAGE_WORDS = {
  failed: 'The logbook could not be opened',
  full: 'This device is full. Make room, then try again; what was logged is still there.',
  'no-answer':
    'This device did not answer in time. Close other tabs of this app and try again; what was logged is still there.',
  damaged:
    'The browser cannot use what it keeps for this app. Restart the browser and try again. If that does not help, clear the data of this app in the browser’s settings and restore your last backup.',
  unavailable: 'This browser keeps nothing here. Leave private browsing, or allow storage, then try again.',
  retry: 'Try again',
  held: (count: number): string =>
    count === 1 ? '1 entry is not saved on this device' : `${count} entries are not saved on this device`,
  heldWhy: {
    full: 'This device is full.',
    'no-answer': 'This device does not answer. Another tab of this app may hold it up.',
    damaged: 'The browser cannot use what it keeps for this app.',
    unavailable:
      'This browser keeps nothing here: it may be a private window, or storage may be switched off.',
  },
  heldText:
    'What you log from now on is in memory only, and is lost when this page is closed. You can go on working. Save it as a file now, or make room and try again.',
  heldSave: 'Save it as a file',
  kept: 'Everything is saved now.',
  puttingBack: (count: number): string =>
    count === 1
      ? 'The browser has lost 1 entry; it is being put back'
      : `The browser has lost ${count} entries; they are being put back`,
  puttingBackText: 'They come from the second copy on this phone. Keep this page open.',
  mended: (count: number): string =>
    count === 1
      ? 'The browser had lost 1 entry; it is back'
      : `The browser had lost ${count} entries; they are back`,
  mendedText:
    'They came from the second copy on this phone. Photos have no second copy. Save a backup now, and keep it off this phone.',
  alone: 'The browser’s database cannot be used',
  aloneText:
    'The second copy on this phone has the logbook, and what you log is saved there. Save a backup now, then restart the browser. If that does not help, clear the data of this app in the browser’s settings and restore the backup.',
  noSecond: 'The second copy on this phone cannot be used any more',
  noSecondText:
    'The logbook is whole, but nothing on this phone stands by if the browser damages it. Save a backup now, and keep it off this phone. Restart the browser; if this stays, clear the data of this app in the browser’s settings and restore the backup.',
  mendedRead: 'Read and done',
  toBackup: 'Save a backup',
  clock: 'Is this phone’s clock right?',
  clockText: (now: string, said: string): string =>
    `It says ${now}, but the logbook goes on to ${said}. If the clock is wrong now, set it in the phone’s settings. If it was wrong before, correct those times: open the piece, and under What was done tap the pencil beside the entry.`,
  clockFarText: (now: string, said: string): string =>
    `It says ${now}, but the last entry is from ${said}. If the clock is wrong, set it in the phone’s settings before you log anything.`,
  clockIsRight: 'It is right now',
  aside: (count: number): string =>
    count === 1 ? 'One entry could not be read' : `${count} entries could not be read`,
  asideText:
    'The rest is open. What could not be read is kept as it is, and named under Settings and backup.',
  newer: (count: number): string =>
    count === 1
      ? 'A newer version of this app logged 1 entry'
      : `A newer version of this app logged ${count} entries`,
  newerText:
    'This version cannot show them. They are kept. Reload the app to get its newest version; what is typed in a form goes with the reload.',
  show: 'Show it',
} as const;
