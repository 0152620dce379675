// English text of the page that says how well the dates have told.

export const SCORE_WORDS = {
  title: 'How close were the dates?',
  working: 'Working out each date as it stood then',
  failed: 'The calculation failed. Open the page again.',
  tooFew: (count: number, fewest: number): string => `${count} of ${fewest} dates so far`,
  tooFewText:
    'A date counts once a check failed before it and one passed after it: try a piece with paper a little too early, then again. Or make a test card.',
  toCards: 'Test cards',
  all: 'All dates',
  inside: (inside: number, count: number): string => `Of ${count} dates, ${inside} fell in their band.`,
  promised: 'Eight in ten is what a band promises.',
  onTime: 'Typically a date came when it was likely.',
  later: (factor: string): string => `Typically it took ${factor} times as long as was likely.`,
  earlier: (factor: string): string => `Typically it came ${factor} times sooner than was likely.`,
  picture: 'Each date: its band about its likely time, and where it was found.',
  early: '4 times sooner',
  likely: 'likely',
  late: '4 times later',
  how: 'Each band as it stood at the last coat, before any check on that coat could move it. Found: midway between the last check that failed and the first that passed.',
  by: 'By finish and product',
  learned: 'Learned so far',
  slower: (jar: string, factor: string, within: string): string =>
    `${jar} dries ${factor} times slower than usual, give or take a factor of ${within}.`,
  faster: (jar: string, factor: string, within: string): string =>
    `${jar} dries ${factor} times faster than usual, give or take a factor of ${within}.`,
  asUsual: (jar: string, within: string): string =>
    `${jar} dries as usual, give or take a factor of ${within}.`,
  dates: 'Date by date',
  tests: { print: 'recoat', gum: 'level-sand', smell: 'rub out' },
  found: 'found',
  said: 'said',
} as const;
