// English text of the spot tests of an old finish.

export const OLD_WORDS = {
  title: 'What is this old finish?',
  choose: 'Which piece?',
  noPieces: 'Start a piece first; its tests are kept with it.',
  how: 'On a hidden spot. One drop, covered with a coin or cup, wiped off after its time. The weakest solvent first: what it answers, the strong one need not be asked.',
  finding: 'What it says',
  confidence: { low: 'not sure', fair: 'fairly sure', good: 'sure' },
  classes: {
    'wax-or-oil': 'Wax or oil',
    shellac: 'Shellac',
    waterborne: 'Waterborne',
    'solvent-lacquer': 'Solvent lacquer',
    'oil-varnish': 'Oil varnish or alkyd',
    cured: 'Cured: polyester, urethane, conversion',
    unknown: 'Unknown',
  },
  texts: {
    'wax-or-oil': 'Lacquer does not hold on wax or fresh oil. Take it off first.',
    shellac:
      'Dissolves in alcohol. A sealer of dewaxed shellac takes lacquer; lacquer thinner wrinkles a thick old one.',
    waterborne: 'Lacquer solvents swell it and it lets go. No melt-in: scuff, or take it off.',
    'solvent-lacquer': 'Re-dissolves: a new coat melts into it. A flash coat of thinner opens a scuffed one.',
    'oil-varnish':
      'Softens and wrinkles under lacquer. No melt-in: a barrier of dewaxed shellac, or take it off.',
    cured: 'Nothing dissolves it. No melt-in: scuff it, and the new coat holds by its tooth alone.',
    unknown:
      'The drops do not agree on a class, or there are too few. Treat it as one that does not re-dissolve.',
  },
  meltIn: 'Melt-in may be planned on it.',
  noMeltIn: 'Melt-in is not offered on it.',
  apply: 'Use this for the piece',
  applied: 'The piece’s base was set.',
  next: (solvent: string): string => `Next drop: ${solvent}`,
  done: 'No further drop would tell more.',
  solvent: 'Drop of',
  solvents: {
    water: 'Water',
    naphtha: 'Naphtha',
    ethanol: 'Alcohol',
    xylene: 'Xylene',
    'lacquer-thinner': 'Lacquer thinner',
    acetone: 'Acetone',
  },
  dwell: 'Left for',
  dwellHint: (time: string): string => `Usual: ${time} (common practice, no source).`,
  reading: 'What happened',
  readings: {
    nothing: { label: 'Nothing' },
    dulls: { label: 'Dulls', hint: 'a ring stays' },
    softens: { label: 'Softens', hint: 'sticky, takes a print' },
    dissolves: { label: 'Dissolves', hint: 'comes off on the cloth' },
    wrinkles: { label: 'Wrinkles', hint: 'lifts or crazes' },
  },
  log: 'Log the drop',
  logged: 'Drop logged.',
  tests: 'Drops so far',
  test: (solvent: string, dwell: string, reading: string): string => `${solvent}, ${dwell}: ${reading}`,
  look: 'How it looks',
  opaque: 'Opaque: white or a colour',
  clear: 'Clear',
  kind: 'The old finish is',
  signs: 'Seen or known',
  sign: {
    polish: 'Polished with silicone',
    crazed: 'Crazed or cracked',
    'drying-agents': 'Colour with drying agents',
    'oily-smell': 'Smells of oil',
  },
  signTexts: {
    polish:
      'Silicone makes fresh lacquer crawl into craters. Wash with naphtha until the water test wets evenly, seal with shellac, and try a corner first.',
    crazed:
      'New lacquer opens old cracks: its solvent swells the edges. Take it down below the cracks, or expect them back.',
    'drying-agents':
      'Pigmented lacquers with drying agents crack and melt in badly. A caution from practice, no source.',
    'oily-smell':
      'Oil under lacquer keeps it soft and lifts it. Wait, seal, or take it off; its rags heat by themselves.',
  },
  saveLook: 'Save',
  savedLook: 'Saved.',
  lead: 'Lead',
  leadNone: 'Not asked for a clear finish.',
  leadState: {
    any: 'No lead was found. The test is in the log.',
    'test-first': 'Dry sanding stays closed until a test, or until you treat it as lead.',
    'wet-only': 'Treated as lead: wet methods only.',
  },
  leadFindings: {
    'none-found': 'Tested: none found',
    found: 'Tested: lead found',
    'treat-as-lead': 'Treat as lead',
  },
  notLookedAt:
    'Say first whether the old finish is opaque: a white or coloured one is treated as lead until tested.',
  leadLogged: 'Logged.',
} as const;
