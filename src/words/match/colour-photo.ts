// English text of reading a colour from a photo.

import { PHOTO_FAULTS } from './photo';

export const COLOUR_PHOTO_WORDS = {
  title: 'Read by photo',
  intro:
    'Put chart or grey card and the dry sample side by side, in one even light, no gloss, no shadow. The photo stays on this phone and is not kept; only the colour is.',
  honest: 'A photo can rank trials. It never passes one.',
  choose: 'Take or choose a photo',
  against: 'Against',
  edition: 'Chart made',
  editions: { 'since-2014': 'Since Nov 2014', 'before-2014': 'Before' },
  chart: { label: '24-patch chart', hint: 'off by about 1 ΔE00' },
  grey: { label: 'Grey card', hint: 'off by 3 to 4 ΔE00' },
  reflectance: 'Reflectance of the card',
  mark: 'Mark by touch',
  marks: {
    chart: [
      'Brown patch, outer corner',
      'Blue-green patch, outer corner',
      'Black patch, outer corner',
      'White patch, outer corner',
    ],
    card: ['Card, top left', 'Card, top right', 'Card, bottom right', 'Card, bottom left'],
    sample: 'Sample, its middle',
  },
  markHint: 'Choose a mark, then touch the photo where it belongs. The arrows move it finely.',
  chartHint:
    'The brown patch begins the first row, blue-green ends it; white begins the last row, black ends it.',
  nudge: { up: 'Up', down: 'Down', left: 'Left', right: 'Right' },
  size: 'Size of the sample',
  sizes: { small: 'Small', medium: 'Medium', large: 'Large' },
  picture: 'The photo with its marks',
  read: 'Read the colour',
  reading: 'Reading the photo…',
  result: (lab: string): string => `The sample reads ${lab}`,
  under: 'D65, 2°',
  spread: (percent: string): string => `Light over the sample varies by ${percent}.`,
  residual: (median: string, worst: string): string =>
    `On the chart’s own patches the fit is off by ΔE00 ${median} (median), ${worst} at worst.`,
  residualNone: 'A single card cannot tell how far off the fit is: assume 3 to 4 ΔE00.',
  poor: 'The fit is poor. Look at the corners and at the light, or take the photo again.',
  otherLight: (light: string): string =>
    `Carried over to ${light} as the eye adapts (Bradford): good enough to rank by. Rank photos against a photo of the target, taken the same way.`,
  unmoved: (marks: string): string => `Touch the photo where these belong first: ${marks}.`,
  log: 'Log it, for ranking',
  faults: {
    'not-a-picture': PHOTO_FAULTS['not-opened'],
    'reference-outside': 'A corner of the chart or card is outside the photo. Mark it again.',
    'reference-crossed': 'The corners do not go round. Mark them in the order they are named.',
    'reference-too-small': 'The chart or card is too small in the photo. Go nearer.',
    'sample-outside': 'The sample is outside the photo. Mark its middle again.',
    'sample-crossed': 'The sample could not be found. Mark its middle again.',
    'sample-too-small': 'The sample is too small in the photo. Go nearer.',
    'reference-clipped':
      'The light patches are burnt out: their true light is not known. Take the photo again, darker.',
    'sample-clipped': 'The sample is burnt out: its true light is not known. Take the photo again, darker.',
    'no-fit': 'The marked patches do not look like the chart. Look at the corners, or take the photo again.',
  },
  lost: 'The photo could not be read here. Choose a smaller one.',
} as const;
