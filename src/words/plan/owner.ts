// Drafts of messages to an owner: facts only, to be changed before they are sent.

/** What the plan knows of a piece, written out. */
export interface OwnerFacts {
  readonly piece: string;
  /** The day from which a date may be promised. */
  readonly promiseFrom: string;
  readonly promised: string | undefined;
  /** Whether it is likely to be ready by the day promised. */
  readonly isPromiseKept: boolean;
  readonly earliest: string;
  readonly likely: string;
  readonly coatsDone: number;
  readonly coatsPlanned: number;
  readonly next: string | undefined;
  readonly nextWhen: string | undefined;
  /** Why it is later, in the plan's own words. */
  readonly why: string | undefined;
  /** By when the film is hard, as the record says it; none where the model gives no date. */
  readonly settled: string | undefined;
  /** No date may be promised while something is held. */
  readonly isHeld: boolean;
  /** Holds that were set aside, each with the reason that was written. */
  readonly setAside: readonly string[];
}

export const OWNER_KINDS = ['accepted', 'progress', 'slip', 'ready', 'care'] as const;
export type OwnerKind = (typeof OWNER_KINDS)[number];

export const OWNER_WORDS = {
  title: 'Write to the owner',
  text: 'A draft from the facts of the plan. Read it, change it, then share it. Nothing is sent by the app.',
  kind: 'What about',
  kinds: {
    accepted: 'Accepted',
    progress: 'Progress',
    slip: 'Later than said',
    ready: 'Ready',
    care: 'Care',
  },
  message: 'Message',
  share: 'Share',
  copy: 'Copy',
  again: 'Draft again',
  empty: 'There is nothing to share. Write something, or draft it again.',
  gave: {
    shared: 'Shared.',
    downloaded: 'Saved.',
    copied: 'Copied.',
    'given-up': 'Not shared.',
    failed: 'This browser will not share or copy. Select the text and copy it by hand.',
  },
} as const;

/** A hold that was set aside, and why. */
export const setAsideWords = (hold: string, reason: string): string =>
  `${hold} It is done all the same, for this reason: “${reason}”.`;

const sentences = (...parts: readonly (string | undefined)[]): string =>
  parts.filter((part) => part !== undefined).join(' ');

const promise = ({ isHeld, promiseFrom }: OwnerFacts): string =>
  isHeld ? 'I cannot promise a date yet' : `I can promise ${promiseFrom}`;

const NO_DATE_HOLDS = 'Something has to be cleared first, and no date holds until it is.';

/** What became of the day that was promised. */
function promisedDay({ promised, isHeld, isPromiseKept }: OwnerFacts): string | undefined {
  if (promised === undefined) return isHeld ? NO_DATE_HOLDS : undefined;
  if (isHeld) return `It was promised for ${promised}. ${NO_DATE_HOLDS}`;
  return isPromiseKept
    ? `It is promised for ${promised}.`
    : `It will be later than ${promised}, the promised date.`;
}

const next = ({ next, nextWhen }: OwnerFacts): string | undefined =>
  next === undefined ? undefined : `Next: ${next.toLowerCase()}, ${nextWhen}.`;

const coats = ({ coatsDone, coatsPlanned }: OwnerFacts): string | undefined =>
  coatsPlanned === 0 ? undefined : `${coatsDone} of ${coatsPlanned} coats are on.`;

const softUntil = ({ settled }: OwnerFacts): string | undefined =>
  settled === undefined ? undefined : `Until about ${settled} keep anything heavy or warm off it.`;

/** The draft of each kind of message. */
export const OWNER_DRAFTS: Record<OwnerKind, (facts: OwnerFacts) => string> = {
  accepted: (facts) =>
    sentences(
      `${facts.piece} is accepted.`,
      facts.promised === undefined
        ? `By the present plan it is ready about ${facts.likely}; ${promise(facts)}.`
        : promisedDay(facts),
      ...facts.setAside,
      'Most of that time is the finish drying, and cannot be hurried. I will write if the date moves.',
    ),
  progress: (facts) =>
    sentences(
      `An update on ${facts.piece}.`,
      coats(facts),
      next(facts),
      `It is likely to be ready about ${facts.likely}.`,
      promisedDay(facts),
      ...facts.setAside,
    ),
  slip: (facts) =>
    sentences(
      `${facts.piece} will be later than said.`,
      facts.promised === undefined ? undefined : `It was promised for ${facts.promised}.`,
      facts.why === undefined ? undefined : `The reason: ${facts.why}.`,
      `It is now likely to be ready about ${facts.likely}, and ${promise(facts)}.`,
    ),
  ready: (facts) =>
    facts.next === undefined && !facts.isHeld
      ? sentences(`${facts.piece} is ready and can be collected.`, softUntil(facts))
      : sentences(
          `${facts.piece} is not ready yet.`,
          next(facts),
          `It is likely to be ready about ${facts.likely}.`,
          promisedDay(facts),
        ),
  care: (facts) =>
    sentences(
      `The finish of ${facts.piece} goes on hardening after it leaves the shop.`,
      softUntil(facts) ?? 'Treat it as soft: keep anything heavy or warm off it.',
      'Keep straps, rubber, vinyl and stands with soft plastic away from it: some of them mark lacquer for good.',
      'Dust with a soft dry cloth; no polish with silicone.',
    ),
};
