// English text of the board that hangs over the bench, apart from it: the first screen does without.

export const BOARD_WORDS = {
  title: 'Wall board',
  full: 'Fill the screen',
  outside: 'For a tablet outside the spray area.',
  awake: 'The screen stays on while this page is open.',
  sleeps: 'This browser cannot keep the screen on; set the phone not to sleep.',
  empty: 'Nothing on the bench',
  emptyText: 'Once a coat is logged, its time shows here in large digits.',
  left: (clock: string): string => `in ${clock}`,
} as const;
