// English text of the mix place: its front page and what its pages share.

export const MIX_WORDS = {
  title: 'Mix',
  empty: 'No jars yet',
  emptyText:
    'Say what is in a jar once, and every coat from it knows its solids, thinner and retarder. It takes one tap at common practice.',
  newJar: 'Fill a jar',
  jars: 'Jars',
  emptied: 'Used up',
  filled: (when: string): string => `Filled ${when}`,
  left: (amount: string): string => `${amount} left`,
  solids: (percent: string): string => `${percent} solids`,
  noSuch: 'This is not in the logbook',
  noSuchText: 'It may have been undone, or it is on another phone. Bring in a backup from there.',
  toMix: 'To the mixes',
} as const;
