// What the judge's reasons say: a sentence for each.

/** Figures of a reason as the page writes them: in the units of the shop, beside its clock. */
export interface Told {
  readonly at: string;
  readonly film: string;
  readonly limitFilm: string;
  readonly temperature: string;
  readonly limitTemperature: string;
  readonly share: string;
  readonly limitShare: string;
}

/** A sentence for each reason: what is so, and what to do. */
export const REASON_WORDS = {
  computing: () => 'Its times are being worked out.',
  notWorkedOut: () => 'Its times could not be worked out: go by a check.',
  estimate: ({ at }: Told) =>
    `By the estimate the film is still soft for it: likely from ${at}. Sooner, it may sag, trap solvent or gum up the paper.`,
  estimateFar: () => 'By the estimate the film stays too soft for it in this air.',
  filmPrints: ({ at }: Told) =>
    `A thumb left a print. Give it a week and try again, from about ${at}. A check that passes clears this.`,
  filmGums: ({ at }: Told) =>
    `It gummed the paper. Give it a week and try again, from about ${at}. A check that passes clears this.`,
  leadUntested: () => 'Old opaque paint: test it for lead before any of it is sanded.',
  leadFound: () =>
    'Lead in the old paint, or treated as lead: no dry sanding; wet methods only, children and pregnant women kept out, the waste collected. Removal is work for licensed people.',
  leadTold: () => 'Lead in the old paint: tell the owner in writing.',
  baseLifts: () =>
    'Lacquer lifts this old finish. First a barrier coat of dewaxed shellac, or take the old finish off.',
  baseRepels: () => 'Lacquer does not hold on wax or fresh oil. Take it off first, then test again.',
  windowClosed: () =>
    'The recoat window is over. Scuff it first, so that the next coat has something to hold on.',
  filmOver: ({ film, limitFilm }: Told) =>
    `The film is ${film} thick; more than ${limitFilm} of this finish may crack.`,
  filmWouldBeOver: ({ film, limitFilm }: Told) =>
    `Another coat makes ${film}; more than ${limitFilm} of this finish may crack.`,
} as const satisfies Record<string, (told: Told) => string>;

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
  'spot-test': 'Test the old finish',
  barrier: 'Log a barrier coat',
  check: 'Log a check',
  scuff: 'Log the scuffing',
  look: 'Say how it looks',
} as const;

/** Holds that the person sets aside in writing. */
export const OVERRIDE_WORDS = {
  setAside: (when: string, reason: string): string => `Set aside ${when}: “${reason}”`,
} as const;
