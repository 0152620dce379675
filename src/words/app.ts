// English text of the frame: the bar, the update line, the places while they are empty.

export const APP_NAME = 'Coatwait';

export const BAR = {
  label: 'Places',
  bench: 'Bench',
  mix: 'Mix',
  lay: 'Lay a coat',
  match: 'Match',
  air: 'Air',
} as const;

export const SKIP = 'Skip to the page';

export const UPDATE = {
  ready: 'A new version is ready. Nothing changes until you say so.',
  reload: 'Reload now',
  later: 'Later',
} as const;

export const OFFLINE_FAILED =
  'This browser would not keep the app for use without a network. It still works while you are connected.';

/** What each place is for, shown while it is empty. */
export const PLACE_WORDS = {
  bench: {
    title: 'Bench',
    empty: 'Nothing on the bench yet',
    text: 'Put a piece here and mark each coat as it goes on. You are then told when it may be touched again, and how sure that is.',
    act: 'Start a piece',
    picture: 'An example: four coats of clear lacquer on spruce; the last one is still wet.',
    wood: 'Spruce',
    coat: (number: number): string => `Coat ${number}`,
  },
  piece: {
    title: 'Piece',
    empty: 'No such piece',
    text: 'It may have been taken off the bench.',
    act: 'To the bench',
  },
  lay: {
    title: 'Lay a coat',
    empty: 'First a piece',
    text: 'A coat goes on a piece. Start one, then come back here.',
    act: 'Start a piece',
  },
  match: {
    title: 'Match',
    empty: 'No target yet',
    text: 'Give a target colour and your dry trials, and read what to add next.',
  },
  air: {
    title: 'Air',
    empty: 'No reading yet',
    text: 'Note temperature and humidity, and see how far the piece is from its dew point.',
  },
  more: {
    title: 'More',
    empty: 'Nothing here yet',
    text: 'Units, backup and the demo shop will stand here.',
  },
} as const;
