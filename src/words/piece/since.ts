// English text of a time axis that runs from the last coat on.

export const SINCE_WORDS = {
  since: 'since the last coat',
  now: 'now',
  ticks: {
    minute: '1 min',
    tenMinutes: '10 min',
    hour: '1 h',
    day: '1 d',
    week: '1 wk',
    month: '1 mo',
    year: '1 y',
  },
} as const;
