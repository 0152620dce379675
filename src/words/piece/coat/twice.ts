// English text of a coat that two people may have logged.

export const TWICE_WORDS = {
  title: 'Is this the same coat?',
  by: (phone: string, when: string): string => `${phone} at ${when}`,
  text: (first: string, second: string): string =>
    `Two phones logged a coat from one jar within a minute: ${first}, ${second}. Both count until you say.`,
  keepBoth: 'Keep both',
  isOne: 'It is one',
  second: 'The second coat',
  answer: 'Keep both',
  event: 'Two coats, not one',
  kept: 'Both coats kept.',
} as const;
