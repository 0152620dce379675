// English text shared by the drawn parts.

export const BACK = 'Back';

/** What the browser's window is called. */
export const pageTitle = (page: string): string => `${page} · Coatwait`;

export const TIME_FIELD = {
  ago: (minutes: number): string => (minutes === 0 ? 'Now' : `${minutes} min ago`),
  clock: 'By the clock',
  dayAndTime: 'Day and time',
  notGiven: 'Enter the day and the time.',
  whichTurn: 'The clocks went back that night. Which one?',
  turns: {
    first: { label: 'The first', hint: 'before the clocks went back' },
    second: { label: 'The second', hint: 'an hour later' },
  },
} as const;

export const NOTICE_WORDS = {
  note: 'Note',
  caution: 'Caution',
  stop: 'Stop',
  fire: 'Fire',
} as const;

export const TOAST = { undo: 'Undo', close: 'Close this message' } as const;

export const LAZY = {
  loading: 'Opening…',
  failed: 'This page could not be opened',
  whatToDo: 'Nothing you logged is lost. Try again, or reload the app to get its newest version.',
  retry: 'Try again',
  reload: 'Reload now',
} as const;

/** What a tap does could not be fetched, as after an update. */
export const NOT_SENT =
  'The app could not fetch what this needs, so nothing was logged. Try again, or reload the app to get its newest version.';

export const CHART = {
  asTable: 'Show as a table',
} as const;

export const REFUSED = 'Not logged';
/** Said where the reader no longer sees the form. */
export const LEFT_REFUSED = (why: string): string => `${REFUSED}: ${why}`;

export const UNDO = {
  undone: (what: string): string => `Undone: ${what}.`,
  back: (what: string): string => `Back again: ${what}.`,
} as const;

/** Where no piece has a time any more. */
export const MODEL_STOPPED =
  'The drying model stopped. Log or undo something, or reload the app, to try again.';
