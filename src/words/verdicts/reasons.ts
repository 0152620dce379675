// What the judge's reasons say: a sentence for each.

/** Figures of a reason as the page writes them: in the units of the shop, beside its clock. */
export interface ReasonFigures {
  readonly at: string;
  readonly film: string;
  readonly limitFilm: string;
  readonly temperature: string;
  readonly limitTemperature: string;
  readonly share: string;
  readonly limitShare: string;
  readonly jar: string;
}

/** A sentence for each reason: what is so, and what to do. */
export const REASON_WORDS = {
  computing: () => 'Its times are being worked out.',
  notWorkedOut: () => 'Its times could not be worked out: go by a check.',
  estimate: ({ at }: ReasonFigures) =>
    `The film is still soft for it: likely from ${at}. Sooner, it may sag, trap solvent or gum up the paper.`,
  estimateFar: () => 'The film stays too soft for it in this air.',
  filmPrints: ({ at }: ReasonFigures) =>
    `A thumb left a print. Give it a week and try again, from about ${at}. A check that passes clears this.`,
  filmGums: ({ at }: ReasonFigures) =>
    `It gummed the paper. Give it a week and try again, from about ${at}. A check that passes clears this.`,
  leadUntested: () => 'Old opaque paint: test it for lead before any of it is sanded.',
  leadFound: () =>
    'Lead in the old paint, or treated as lead: no dry sanding; wet methods only, children and pregnant women kept out, the waste collected. Stabilise it and tell the owner in writing, or decline and refer: removal is work for licensed people.',
  leadUnasked: () =>
    'Say first whether the old finish is opaque: a white or coloured one is treated as lead until tested.',
  leadTold: () => 'Lead in the old paint: tell the owner in writing.',
  baseLifts: () =>
    'Lacquer lifts this old finish. First a barrier coat of dewaxed shellac, or take the old finish off.',
  baseRepels: () => 'Lacquer does not hold on wax or fresh oil. Take it off first, then test again.',
  baseUnknown: () =>
    'Nobody has tested this old finish yet. Three drops on a hidden spot tell whether a coat melts in, holds or lifts it.',
  noMelt: () =>
    'Melt-in is held: the finish below does not re-dissolve, so thinner alone does nothing or lifts it. Scuff it instead.',
  silicone: () =>
    'Polished with silicone: fresh lacquer crawls into craters. Wash it with naphtha, seal it with dewaxed shellac, and try a corner first.',
  throughColour: ({ film, limitFilm }: ReasonFigures) =>
    `Only ${film} lies over the colour, and this may take ${limitFilm}: it may cut through, and that shows.`,
  throughOld: ({ film, limitFilm }: ReasonFigures) =>
    `Only ${film} of your finish lies over the old one, and this may take ${limitFilm}.`,
  throughWood: ({ film, limitFilm }: ReasonFigures) =>
    `Only ${film} lies over the wood, and this may take ${limitFilm}: it may cut through.`,
  scuffFirst: () => 'This finish does not melt in: scuff the coat of an earlier day before the next one.',
  witnessLines: () =>
    'The last two coats went on on different days: cut through the top one and a witness line shows. Put two more on in one day, or sand lightly.',
  oneDay: () =>
    'This finish does not melt in: where a coat is cut through, its edge shows as a witness line.',
  stillSoft: ({ at }: ReasonFigures) =>
    `It is still soft until about ${at}: handle it with care, and tell the owner.`,
  softForLong: () =>
    'In this air it stays soft for longer than the model can say: handle it with care, and tell the owner.',
  untried: () =>
    'Try it first where it will not show: a thumb, then paper. Or weigh it twice, 48 h apart: when it loses no more, it is dry.',
  potOver: ({ jar }: ReasonFigures) =>
    `${jar} is past its pot life: it does not cure as it should. Mix fresh.`,
  jarOld: ({ jar }: ReasonFigures) =>
    `${jar} is past its time. Try it on glass first: it must dry as it always did.`,
  shellacOld: ({ jar }: ReasonFigures) =>
    `${jar}: shellac dissolved so long ago may never harden. Try it on glass first: dry and not sticky in 15 to 30 min, or mix fresh.`,
  isocyanate: () =>
    'Isocyanate: only with training and supplied air, as its safety data sheet and your local code ask. No cartridge shows when it is spent.',
  aerosolCoat: () => 'From a spray can: light passes, for it cannot be thinned and its solvent is slow.',
  aerosolSoft: () =>
    'From a spray can: a heavy build takes 28 to 60 days at 21 °C (70 °F) before it is levelled or rubbed out.',
  tooCold: ({ temperature, limitTemperature }: ReasonFigures) =>
    `${temperature} is too cold for this finish: it needs ${limitTemperature} or warmer.`,
  coldNight: ({ temperature, limitTemperature }: ReasonFigures) =>
    `The night gets down to ${temperature}; this finish needs ${limitTemperature} or warmer while it dries. Keep the room warm, or coat early.`,
  tooDamp: ({ share, limitShare }: ReasonFigures) =>
    `${share} humidity is too damp for this finish: it needs ${limitShare} or less.`,
  dampNight: ({ temperature, share, limitShare }: ReasonFigures) =>
    `At ${temperature} overnight this air comes to ${share}; this finish needs ${limitShare} or less while it dries. Keep the room warm, or coat early.`,
  blushes: () =>
    'In this air it will turn white: the film cools below the dew point. Wait for drier or warmer air.',
  mayBlush: () => 'In this air it may turn white. Warm the piece, or wait for drier air.',
  coldShock: ({ temperature }: ReasonFigures) =>
    `It stood at ${temperature}. Warm it gradually, over a day: a sudden change cracks lacquer.`,
  coldShipping: ({ temperature }: ReasonFigures) =>
    `It may meet ${temperature} on its way. Ship it only above freezing, or insulated; leave it in its closed case for 12 to 24 h before it is opened in the warm.`,
  windowClosed: () =>
    'The recoat window is over. Scuff it first, so that the next coat has something to hold on.',
  'pore-filler': ({ at }: ReasonFigures) =>
    `The pore filler is drying: 24 to 72 h as a rule, likely until ${at}. Finish over wet filler wrinkles and sinks.`,
  'filler-paste': ({ at }: ReasonFigures) =>
    `The filler paste still holds acetone: likely until ${at}. Then the next application, or level it.`,
  'grain-sealer': ({ at }: ReasonFigures) => `The grain sealer is drying: likely until ${at}.`,
  glue: ({ at }: ReasonFigures) => `The glue is setting: the clamps stay on until about ${at}.`,
  dropWaits: ({ at }: ReasonFigures) => `At least 3 h between drops: wait until ${at}.`,
  fillerProud: () =>
    'Filler lies on this wood and no sanding is logged since: sand it back to the wood, or level it, before the first coat.',
  filmOver: ({ film, limitFilm }: ReasonFigures) =>
    `The film is ${film} thick; more than ${limitFilm} of this finish may crack.`,
  filmWouldBeOver: ({ film, limitFilm }: ReasonFigures) =>
    `Another coat makes ${film}; more than ${limitFilm} of this finish may crack.`,
} as const satisfies Record<string, (told: ReasonFigures) => string>;

/** Where a reason is from. */
export const SOURCE_WORDS = {
  log: 'From your log.',
  estimate: 'By the estimate.',
  sheet: 'From the data sheet.',
  practice: 'Common practice, no source.',
} as const;

/** What leads to the act that clears a hold. */
export const CLEARS_WORDS = {
  'lead-test': 'Test for lead',
  'lead-found': 'See what was found',
  'spot-test': 'Test the old finish',
  barrier: 'Log a barrier coat',
  check: 'Log a check',
  scuff: 'Log the scuffing',
  look: 'Say how it looks',
  air: 'Read the air',
  jar: 'Mix fresh',
} as const;

/** Holds that the person sets aside in writing. */
export const OVERRIDE_WORDS = {
  open: 'Set it aside in writing',
  text: 'Your reason is logged. It stands in the record and in what you write to the owner.',
  reason: 'Your reason',
  why: 'Why all the same?',
  whyHint:
    'This is held. It is logged either way; a reason of ten characters or more sets the hold aside and stands in the record.',
  tooShort: (least: number): string => `Write at least ${least} characters, or nothing.`,
  log: 'Log the reason',
  logged: 'The reason is logged.',
  event: 'Hold set aside',
  eventText: (hold: string, reason: string): string => `${hold}: “${reason}”`,
  setAside: (when: string, reason: string): string => `Set aside ${when}: “${reason}”`,
} as const;

const RULE_WORDS: Readonly<Record<string, string>> = {
  lead: 'Lead',
  'base-lifts': 'Old finish that lifts',
  'no-melt': 'No melt-in',
  'film-prints': 'A thumb left a print',
  'film-gums': 'It gummed the paper',
  'window-closed': 'Recoat window over',
  'film-limit': 'Film too thick',
  'sands-through': 'Sanding through',
  'jar-past': 'Jar past its pot life',
};

/** What a hold is called in a history; one that a newer app set aside goes by its own name. */
export const ruleWords = (rule: string): string => RULE_WORDS[rule] ?? rule;
