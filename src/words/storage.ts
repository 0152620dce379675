// English text of what cannot be read from this device.

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
