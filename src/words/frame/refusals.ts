interface Times {
  readonly earliest: string;
  readonly latest: string;
}

/** Why nothing was logged, each saying what to do; times come written out. */
export const FAILURE_WORDS = {
  'in-the-future': ({ latest }: Times) => `Enter a time no later than ${latest}.`,
  'too-early': ({ earliest, latest }: Times) =>
    `Enter a time from ${earliest}, when this was started, to ${latest}. If it was started earlier, correct that entry first.`,
  'ahead-of-clock': ({ earliest, latest }: Times) =>
    `The logbook has work at ${earliest}, but this device’s clock says ${latest}. If the clock is wrong, set it. If that time is wrong, correct that entry first, then log this.`,
  'after-its-work': ({ latest }: Times) =>
    `Work was logged on it at ${latest}. Enter a time no later than that.`,
  'not-correctable': () => 'This cannot be corrected that way. Undo the entry and log it again.',
  'unknown-piece': () => 'This piece is not in the logbook. Choose another, or start it first.',
  'unknown-jar': () => 'This jar is not in the logbook. Choose another, or fill it first.',
  'too-wet': () =>
    'Together the passes come to over 2 mm (79 mil) wet, and that runs. Check how many there were and what each put on.',
  'unknown-air': () => 'This air reading is not in the logbook. Take a new one.',
  'unknown-entry': () => 'This entry is not in the logbook, so there is nothing to undo.',
  'piece-closed': () => 'This piece is finished. Reopen it to go on.',
  'piece-there-already': () => 'This piece is in the logbook already.',
  'jar-there-already': () => 'This jar is in the logbook already.',
  'unknown-ingredient': () => 'This ingredient is not in the shop. Choose another, or add it first.',
  'unknown-recipe': () => 'This recipe is not in the logbook. Choose another, or write it first.',
  'unknown-weigh-up': () => 'This weigh-up is not in the logbook. Begin it again from its recipe.',
  'contains-itself': () =>
    'This ingredient would end up in itself. Remove it, or what is made of it, from what it is made of.',
  'not-last-pour': () => 'Later pours depend on this one. Undo the last pour first.',
  'weigh-up-over': () => 'This weigh-up is finished. Begin a new one from its recipe.',
  'no-such-line': () => 'The plan has no such line. Open the weigh-up again.',
  'unknown-match': () => 'This match is not in the logbook. Choose another, or start it first.',
  'unknown-toner': () => 'This toner is not on this piece. Describe it first.',
  'unknown-trial': () => 'This trial is not in the logbook. Choose another, or mix it first.',
  'trial-there-already': () => 'This trial is in the logbook already.',
  'unknown-zone': () => 'This place is not on this piece. Choose another, or mark it first.',
  'unknown-photo': () => 'This photo is not in the record of this piece. Choose another, or take it first.',
  'photo-there-already': () => 'This photo is in the record already.',
  'outline-crosses': () => 'This outline crosses itself. Draw it again in one loop.',
  'unknown-filter': () => 'This filter is not in the logbook. Choose another, or open it first.',
  'filter-there-already': () => 'This filter is in the logbook already.',
  'unknown-step': () => 'This step is not in the plan any more. Look at the plan again.',
  'unknown-closure': () => 'This closure was removed already.',
  'already-struck': () => 'This entry has been undone already.',
  'still-used': () => 'Later work depends on this entry. Undo that work first.',
  full: () => 'This device is full, so nothing was logged. Make room, then try again.',
  'no-answer': () =>
    'This device did not answer in time. Reload, check whether it was logged, then try again.',
  damaged: () =>
    'The browser cannot use what it keeps for this app. Restart the browser and try again; nothing was logged.',
  unavailable: () =>
    'This browser will not keep anything, so nothing was logged. Leave private browsing, then try again.',
} as const;

/** Why a backup was not restored. */
export const BACKUP_WORDS = {
  'too-large': 'This file is too large for a backup. Nothing was restored.',
  unreadable:
    'This file cannot be read. If it is in a cloud, download it to this phone first. Nothing was restored.',
  'not-json': 'This file is not a backup, or it was cut short. Nothing was restored.',
  'not-a-backup': 'This file is not a backup of this app. Nothing was restored.',
  damaged: 'This backup was changed or damaged on its way. Nothing was restored; try another copy.',
  packed: 'Another program has repacked this file. Restore the file as the app saved it.',
  'newer-backup': 'A newer version of the app wrote this backup. Get the newest version first.',
  'faulty-entries': 'No entry of this backup can be read. Nothing was restored.',
  'too-many-unread':
    'More than 10 000 entries of this backup cannot be read. If a newer version of the app saved it, get that version first. Nothing was restored.',
  stopped: 'Stopped. Nothing was restored.',
} as const;

/** The way to where a refusal is put right. */
export const TO_PLACE = {
  bench: 'To the bench',
  mix: 'Put it right under Mix',
  match: 'To the matches',
  air: 'Put it right under Air',
  plan: 'To the plan',
  more: 'To storage and backups',
} as const;
