// English text of the reminder that a backup is old; on the bench, so apart from the rest of the settings.

export const BACKUP_DUE = {
  title: 'Time for a backup',
  text: (count: number): string => `${count} entries are on this phone alone. A phone can be lost.`,
  act: 'Write a backup',
} as const;
