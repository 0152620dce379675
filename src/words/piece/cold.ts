// English text of what a cold shop does to the times.

/** What hardness is held against, and the rule of thumb of the trade beside our date. */
export const COLD_WORDS = {
  room: (degrees: string, why: string): string => `Hardness is judged for a room of ${degrees}: ${why}.`,
  change: 'Set another room',
  counted: (days: string, likely: string, low: string, high: string): string =>
    `Rule of thumb: ${days} days in this shop count as ${likely} (${low}–${high}) at 21 °C (70 °F), for 8 to 12 °C (14 to 22 °F) colder takes twice as long.`,
  over: (days: number, when: string): string =>
    `By it ${days} such days end about ${when}. Common practice, no source.`,
} as const;
