// English text of correcting what was logged.

export const CORRECT_WORDS = {
  title: 'Correct an entry',
  gone: 'This entry is not on this piece any more. Look under What was done.',
  when: 'When it was',
  piece: 'On which piece',
  placeStays: 'Its place is not on that piece: there it counts for all of the piece.',
  outlinesStay: 'Outlines drawn on it stay behind: their places are on this piece.',
  jar: 'From which jar',
  wetFilm: 'Wet film',
  perPass: 'Wet film of each pass',
  dryFilm: 'Dry film',
  removed: 'Taken off',
  text: 'The first line stays in the logbook; times are worked out from this one.',
  save: 'Save the correction',
  one: (what: string): string => `Correction of: ${what}`,
  done: (what: string): string => `${what} corrected.`,
  /** Beside an entry that was corrected. */
  mark: 'Corrected',
  /** Lines that are on no piece. */
  lines: { 'air-read': 'Correct a reading', 'jar-weighed': 'Correct a weight', poured: 'Correct a pour' },
  fields: {
    temperature: 'Temperature of the air',
    humidity: 'Humidity, as the hygrometer showed it',
    mass: 'It weighed, without the jar',
    scale: 'The scale showed',
  },
  lineDone: 'Corrected.',
  lineGone: 'This entry is not in the logbook any more.',
  leadLine: (what: string): string => `Correct: ${what}`,
  lead: (what: string, when: string): string => `Correct: ${what}, ${when}`,
} as const;
