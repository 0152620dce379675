// English text of the settings and the backup.

const some = (count: number, one: string, more: string): string | undefined =>
  count === 0 ? undefined : count === 1 ? `1 ${one}` : `${count} ${more}`;

export const MORE_WORDS = {
  title: 'Settings and backup',
  units: { title: 'Units', label: 'Units', metric: 'Metric', us: 'US' },
  unitHints: { metric: '°C, µm, cm²', us: '°F, mil, in²' },
  unitsNote: 'Each field can still take the other. What was typed stays as typed.',
  look: { title: 'Appearance', label: 'Light or dark', phone: 'Same as phone', light: 'Light', dark: 'Dark' },
  sanding: {
    title: 'Sanding room',
    label: 'Temperature where you sand',
    hint: 'Left empty: as by day in the forecast.',
  },
  altitude: {
    title: 'Altitude',
    label: 'Altitude',
    hint: 'Up high a wet film cools more and vapour fills more room. Left empty: sea level.',
  },
  keep: 'Save',
  kept: 'Saved.',
  demo: {
    title: 'Demo shop',
    text: 'Four invented pieces at different stages. Nothing of yours is touched; leaving clears it.',
    enter: 'Open the demo shop',
    leave: 'Leave the demo shop',
  },
  backup: {
    title: 'Backup',
    text: 'One file with every entry and photo. Restoring one adds what is missing; nothing is overwritten or lost.',
    write: 'Save a backup',
    read: 'Restore a backup',
    written: (name: string): string => `Saved: ${name}.`,
    taken: (count: number, photos: number, unread: number): string => {
      const restored = [some(count, 'entry', 'entries'), some(photos, 'photo', 'photos')]
        .filter((one) => one !== undefined)
        .join(' and ');
      const whole = restored === '' ? 'Nothing new in this file.' : `${restored} restored.`;
      if (unread === 0) return whole;
      return `${whole} ${unread === 1 ? '1 could not be read; it is' : `${unread} could not be read; they are`} kept as is and named on this page.`;
    },
    photosLeft: 'Not every photo was kept',
    photosLeftText: (count: number): string =>
      `${some(count, 'photo', 'photos')} of this backup did not get onto this phone. If it is full, make room; then restore the same file again.`,
    reading: 'Reading the backup',
    stop: 'Stop',
    refused: 'Nothing was restored',
    unwritten: 'No backup was saved',
    unwrittenText: 'The backup could not be made. Close other apps and try again.',
    unshared: 'Not shared, so no backup was saved. You can save the file on this phone instead.',
    save: 'Save it on this phone',
    last: (when: string): string => `Last backup: ${when}.`,
    none: 'No backup saved on this phone yet.',
    promise: {
      unknown: 'The browser is asked to keep the logbook once there is work in it.',
      promised: 'The browser has promised to keep the logbook even when the phone runs low on space.',
      'not-promised':
        'The browser has not promised to keep the logbook when the phone runs low on space. Putting the app on the home screen often earns that; a backup helps in any case.',
    },
    second: (count: number | undefined): string =>
      count === undefined
        ? 'There is no second copy on this phone: this browser has no place for one.'
        : 'A second copy of the logbook is kept on this phone, in case the browser damages the first. Photos have none.',
    folder: {
      title: 'Automatically, to a folder',
      text: 'When you put the phone away, or log nothing for ten minutes, a backup is saved to a folder you choose, such as one that syncs to your computer. One file a day is kept.',
      choose: 'Choose a folder',
      other: 'Choose another folder',
      asks: 'The browser asks for your permission again before it saves there.',
      allow: 'Allow the folder again',
      ready: 'A folder is chosen; backups go there automatically.',
      gone: 'The last backup could not be saved there. The folder may be gone or full: choose it again, or another.',
      failed: 'No folder to save to. Save a backup file instead, or choose a folder.',
    },
  },
  tables: {
    title: 'Export tables',
    text: 'CSV files for a spreadsheet: what was typed, in its own units.',
    coats: 'Coats',
    recipes: 'Recipes',
    readings: 'Colour readings',
  },
  aside: {
    title: 'Entries that could not be read',
    text: 'They are kept as they are and go into every backup. A newer version of the app may read them.',
    more: (count: number): string => `And ${count} more.`,
  },
  privacy: {
    title: 'Privacy',
    lines: [
      'Everything you log stays on this phone unless you join other screens. There is no account.',
      'Until then the app contacts no other computer once it is here. It does not track you.',
      'Something leaves the phone only when you share it: a backup, a table, a label, a calendar file.',
      'If you join other screens, entries and photos go to the hub in your shop too, sealed with a key that it does not have.',
    ],
  },
  about: {
    title: 'About',
    lines: [
      'Times are estimates from a drying model. The data sheet, the safety data sheet, local code and your own hand come first.',
    ],
  },
  toBench: 'Back to the bench',
} as const;

export const CARD_LINKS = {
  title: 'Learning',
  text: 'Coated foil and a pocket scale tell how fast your own lacquer dries.',
  cards: 'Test cards',
  told: 'How close were the dates?',
} as const;
