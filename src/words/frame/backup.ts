// English text of the reminder that a backup is old; on the bench, so apart from the rest of the settings.

export const BACKUP_DUE = {
  title: 'Time for a backup',
  folder: 'The backup folder needs you',
  text: (count: number): string =>
    `${count} ${count === 1 ? 'entry is' : 'entries are'} on this phone alone. A phone can be lost.`,
  act: 'Save a backup',
} as const;
