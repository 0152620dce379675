// English text of the frame: the bar, the update line.

export const BAR = {
  label: 'Places',
  bench: 'Bench',
  mix: 'Mix',
  lay: 'Log a coat',
  match: 'Match',
  air: 'Air',
} as const;

export const SKIP = 'Skip to the page';

export const UPDATE = {
  ready: 'A new version is ready. Nothing changes until you say so.',
  later: 'Later',
} as const;

export const OFFLINE_FAILED =
  'This browser would not keep the app for use without a network. It still works while you are connected.';

/** Said with whatever is logged while the device keeps nothing. */
export const HELD_MARK = 'In memory only.';
