// English text of the settings, the backup, and of what could not be read.

export const STORAGE_WORDS = {
  failed: 'The logbook could not be opened',
  full: 'This device is full. Make room, then try again; what was logged is still there.',
  'no-answer': 'This device did not answer in time. Try again; what was logged is still there.',
  unavailable: 'This browser keeps nothing here. Leave private browsing, or allow storage, then try again.',
  retry: 'Try again',
  aside: (count: number): string =>
    count === 1 ? 'One entry could not be read' : `${count} entries could not be read`,
  asideText:
    'The rest is open. What could not be read is kept as it is, and named under Settings and backup.',
  show: 'Show it',
} as const;

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
    keep: 'Keep it',
    kept: 'Kept.',
  },
  altitude: { label: 'Altitude', hint: 'For the humidity figures. Left empty: sea level.' },
  demo: {
    title: 'Demo shop',
    text: 'Four invented pieces at different stages. Nothing of yours is touched; leaving clears it.',
    enter: 'Open the demo shop',
    leave: 'Leave the demo shop',
  },
  backup: {
    title: 'Backup',
    text: 'One file with every entry. Bringing one in adds what is missing; nothing is overwritten or lost.',
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
    unreadable: 'This file could not be read. Choose it again.',
  },
  aside: {
    title: 'Entries that could not be read',
    text: 'They are kept as they are, and go into every backup. A newer version of the app may read them.',
  },
  about: {
    title: 'About',
    lines: [
      'Everything you log stays on this phone; no account, nothing is sent anywhere.',
      'Times are estimates from a drying model. The data sheet, the safety data sheet, local code and your own hand outrank them.',
      'It works without a network after the first visit.',
    ],
  },
  toBench: 'Back to the bench',
} as const;
