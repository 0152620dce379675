// English text of the settings and the backup.

export const MORE_WORDS = {
  title: 'Settings and backup',
  units: { title: 'Units', label: 'Shown and asked for in', metric: 'Metric', us: 'US' },
  unitHints: { metric: '°C, µm, cm²', us: '°F, mil, in²' },
  unitsNote: 'Each field can still take the other. What was typed stays as typed.',
  look: { title: 'Look', label: 'Light or dark', phone: 'As the phone', light: 'Light', dark: 'Dark' },
  sanding: {
    title: 'Sanding room',
    label: 'Temperature where you sand',
    hint: 'Left empty: as by day in the forecast.',
  },
  altitude: {
    title: 'Height of the shop',
    label: 'Altitude',
    hint: 'Thin air cools a wet film and a wet wick more, and a vapour takes more room in it. Left empty: sea level.',
  },
  keep: 'Keep it',
  kept: 'Kept.',
  demo: {
    title: 'Demo shop',
    text: 'Four invented pieces at different stages. Nothing of yours is touched; leaving clears it.',
    enter: 'Open the demo shop',
    leave: 'Leave the demo shop',
  },
  backup: {
    title: 'Backup',
    text: 'One file with every entry and photo. Bringing one in adds what is missing; nothing is overwritten or lost.',
    write: 'Write a backup file',
    read: 'Bring in a backup file',
    written: (name: string): string => `Written: ${name}.`,
    taken: (count: number): string =>
      count === 0
        ? 'Nothing new in this file.'
        : count === 1
          ? '1 entry brought in.'
          : `${count} entries brought in.`,
    refused: 'Nothing was brought in',
    unwritten: 'No backup was written',
    unwrittenText: 'The backup could not be put together. Close other apps and try again.',
    unshared: 'Not shared, so no backup was written. You can save the file on this phone instead.',
    save: 'Save it on this phone',
    last: (when: string): string => `Last backup: ${when}.`,
    none: 'No backup was written on this phone yet.',
    promise: {
      unknown: '',
      promised: 'The browser has promised to keep the logbook even when the phone runs short of room.',
      'not-promised':
        'The browser has not promised to keep the logbook when the phone runs short of room. Putting the app on the home screen often earns that; a backup helps in any case.',
    },
    folder: {
      title: 'Into a folder, by itself',
      text: 'When you put the phone away, or log nothing for ten minutes, a backup file is written into a folder of your choice, such as one that goes to your computer. One file stays of each day.',
      choose: 'Choose a folder',
      other: 'Choose another folder',
      asks: 'The browser wants your word again before it writes there.',
      allow: 'Allow the folder again',
      ready: 'A folder is chosen; backups go there by themselves.',
      gone: 'The last backup could not be written there. The folder may be gone or full: choose it again, or another.',
      failed: 'No folder to write to. Write a backup file instead, or choose a folder.',
    },
  },
  tables: {
    title: 'As tables',
    text: 'CSV files for a spreadsheet: what was typed, in its own units.',
    coats: 'Coats',
    recipes: 'Recipes',
    readings: 'Colour readings',
  },
  aside: {
    title: 'Entries that could not be read',
    text: 'They are kept as they are, and go into every backup. A newer version of the app may read them.',
  },
  privacy: {
    title: 'Privacy',
    lines: [
      'Everything you log stays on this phone. There is no account and no server that holds it.',
      'The app asks no other computer for anything once it is here, and counts nothing.',
      'Something leaves the phone only when you share it: a backup, a table, a label, a calendar file.',
    ],
  },
  about: {
    title: 'About',
    lines: [
      'Times are estimates from a drying model. The data sheet, the safety data sheet, local code and your own hand outrank them.',
      'It works without a network after the first visit.',
    ],
  },
  toBench: 'Back to the bench',
} as const;
