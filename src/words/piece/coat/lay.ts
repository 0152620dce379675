// English text of laying a coat.

export const LAY_WORDS = {
  place: 'Where on it',
  allPlaces: (count: number): string => `All ${count} places`,
  wholePiece: 'All of it',
  title: 'Log a coat',
  back: 'Back to the bench',
  summary: 'This coat',
  lay: 'Log it',
  onPiece: (coat: number, piece: string): string => `Coat ${coat} on ${piece}`,
  from: 'From',
  airNew: 'as typed here',
  airNone: 'not known: 21 °C (70 °F) and gentle movement assumed (common practice)',
  laid: (coat: number, piece: string): string => `Coat ${coat} logged on ${piece}.`,
  piece: 'Piece',
  jar: 'Jar',
  otherJar: 'Fill another jar',
  allPieces: (count: number) => `All ${count} pieces`,
  allJars: (count: number) => `All ${count} jars`,
  how: 'How',
  ways: {
    spray: { label: 'Spray', hint: 'by gun or aerosol' },
    brush: { label: 'Brush', hint: 'a flat coat' },
    pad: { label: 'Pad', hint: 'French polish' },
    'brush-fill': { label: 'Brush fill', hint: 'a drop in a chip' },
    flash: { label: 'Flash', hint: 'thinner alone' },
  },
  film: 'How much went on',
  by: {
    wet: { label: 'Wet film', hint: 'by comb' },
    passes: { label: 'Passes', hint: 'counted' },
    usual: { label: 'Usual build', hint: 'dry' },
  },
  wetFilm: 'Wet film',
  passes: 'Passes',
  perPass: 'Wet film of one pass',
  dryFilm: 'Dry film of one coat',
  hints: {
    wet: 'Common practice: 75–125 µm (3–5 mil) a coat; 150 µm (6 mil) may sag.',
    perPass: 'Common practice: 25–40 µm (1–1.6 mil) a pass.',
    usual: 'Common practice: 8–15 µm (0.3–0.6 mil) sprayed, 1–3 µm (0.04–0.12 mil) a pad session.',
    fill: 'As deep as the chip is filled, when dry.',
    flash: 'Common practice: a light wet pass, 20–40 µm (0.8–1.6 mil).',
  },
  whenLine: 'When',
  airLine: 'Air',
  when: 'When it was done',
  air: 'Air while it goes on',
  airSame: (ago: string): string => `As read ${ago}`,
  airAgain: 'Read again',
  airUnknown: 'Not known',
  temperature: 'Temperature',
  humidity: 'Humidity',
  movement: 'Movement',
  movements: {
    still: { label: 'Still', hint: 'closed room' },
    gentle: { label: 'Gentle', hint: 'open shop' },
    booth: { label: 'Booth', hint: 'fan running' },
    strong: { label: 'Strong', hint: 'fan on it' },
  },
  airOld: (ago: string): string => `This reading is from ${ago}. Read again if the room has changed.`,
} as const;

export const LAY_EMPTY = {
  noPiece: 'First a piece',
  noPieceText: 'A coat goes on a piece. Start one, then come back here.',
  startPiece: 'Start a piece',
  noJar: 'First a jar',
  noJarText:
    'A coat comes from a jar: its solids, thinner and retarder decide how it dries. Describe it once.',
  fillJar: 'Describe the jar',
} as const;

/** Air in a line: "21 °C, 48 %, gentle". */
export const airLine = (temperature: string, humidity: string, movement: string): string =>
  `${temperature}, ${humidity}, ${movement.toLowerCase()}`;

interface Days {
  readonly earliest: number;
  readonly late: number;
}

/** Of a session with the pad. */
export const PAD_WORDS = {
  oil: 'Oil on the pad',
  withOil: { label: 'Yes', hint: 'a drop or two' },
  withoutOil: { label: 'No', hint: 'dry' },
  spiritOff: ({ earliest, late }: Days): string =>
    `Spirit it off 1 to 2 days after the last session; then it rests ${earliest} to ${late} days (common practice).`,
} as const;

/** Of a spray can. */
export const CAN_WORDS = {
  can: 'Can',
  shake:
    'Shake it a minute after the ball rattles, and between passes. Afterwards turn it over and spray till the nozzle is clear.',
  rest: 'Its slow solvents leave late: a heavy build rests 28 to 60 days before it is levelled (common practice).',
} as const;

export const LAY_CARD = 'The test card gets it too';
