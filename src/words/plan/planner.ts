import { MINUTE_MS } from '../../units';
import { spanWords } from '../times';

const plural = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

const durationWords = (minutes: number): string => spanWords(minutes * MINUTE_MS);

/** To the minute, what is needed up and what there is down: rounded, a minute too much would read as enough. */
const neededWords = (minutes: number): string => exactWords(Math.ceil(minutes));
const thereWords = (minutes: number): string => exactWords(Math.max(0, Math.floor(minutes)));
function exactWords(minutes: number): string {
  const hours = minutes < 60 ? '' : `${Math.floor(minutes / 60)} h `;
  return hours && minutes % 60 === 0 ? hours.trim() : `${hours}${minutes % 60} min`;
}

/** What stands in the way of a plan, and what to do about it. */
export const FAULT_WORDS = {
  'no-working-hours': 'The working week has no hours. Set at least one day when you work.',
  'no-booth-hours':
    'This step needs the booth, and the booth is never open. Give it hours within your working hours.',
  'step-too-long': (minutes: number, longest: number) =>
    `This step takes ${neededWords(minutes)}, and the longest stretch it could be done in is ${thereWords(longest)}. Split it, or lengthen a day.`,
  'band-out-of-order': 'Earliest, likely and late must each be a time and come in that order.',
  'window-too-short': (window: number, move: number) =>
    `The window is ${thereWords(window)} long and moving the piece takes ${neededWords(move)}. Check the window on the data sheet.`,
  'window-never-fits':
    'There is no day on which the coats on both sides of this window fit. Check the window, the coats a day and the booth hours.',
  'gate-never-passes': (failures: number) =>
    `This check has not passed ${plural(failures, 'time')}, and waiting has not helped. Look for the cause, then change the step or allow more tries.`,
  'no-coats-a-day': 'No coats a day are allowed for this piece. Allow at least one.',
  'never-open': 'Within two years there is no time for this piece. Check the closures and the forecast.',
  'promise-past': 'That date is already past. Choose a later one and tell the owner.',
  'sooner-than-possible': 'Even if all goes well the piece is not ready by then.',
} as const;

/** Why a step begins when it does. */
export const BOUND_WORDS = {
  done: 'as it was done',
  step: (step: string) => `after ${step}`,
  now: 'as soon as you like',
  'set-date': 'not before the day set',
  person: (step: string, piece: string) => `after ${step} of ${piece}: one pair of hands, one gun`,
  closed: 'when the shop is open again',
  hold: { blush: 'when blush is no longer likely', damp: 'when the air is drier', cold: 'when it is warmer' },
  'coats-a-day': (coats: number) => `the next day: ${plural(coats, 'coat')} a day`,
  window: 'later, so that the next coat falls into its window',
} as const;

/** Why a day more before a step changes nothing. */
export const ABSORBED_WORDS = {
  closed: 'the shop is closed then, as on a weekend',
  person: 'other work comes first',
  hold: 'the air is not right then',
  'coats-a-day': 'the next coat has to wait for the next day',
  'set-date': 'the next step has its own day',
  window: 'the next coat waits for its window',
  other: 'something else holds the piece up',
} as const;

/** Why a step moved from one plan to the next. */
export const WHY_WORDS = {
  length: (step: string, minutes: number) =>
    `${step} takes ${durationWords(Math.abs(minutes))} ${minutes > 0 ? 'longer' : 'less'}`,
  done: (step: string, minutes: number) =>
    minutes === 0
      ? `${step} is done`
      : `${step} ended ${durationWords(Math.abs(minutes))} ${minutes > 0 ? 'later' : 'sooner'}`,
  'new-step': (step: string) => `${step} was added`,
  order: 'the order of the work changed',
} as const;

/** A promise beside the plan. */
export const PROMISE_WORDS = {
  none: '',
  kept: 'The promise is kept, with the reserve.',
  tight: 'The promise is kept if nothing runs late: the reserve is used up.',
  soft: 'It can be handed over by then, but the film is still soft: with care, no case, strap or clamp on it.',
  held: 'A later step is held: the promise is open until that is cleared.',
  missed: 'The piece is likely to be ready after the promised date.',
  past: 'The promised date has passed. Agree on a new one with the owner.',
} as const;

export const TASK_WORDS = {
  clean: 'Clean',
  scuff: 'Scuff',
  'flash-coat': 'Flash coat of thinner',
  coat: 'Coat',
  'toner-coat': 'Toner coat',
  'opaque-coat': 'Opaque coat',
  seal: 'Seal',
  'drop-fill': 'Drop fill',
  pad: 'Pad session',
  'spirit-off': 'Spirit off',
  'pore-fill': 'Pore filler',
  'grain-seal': 'Grain sealer',
  'filler-paste': 'Filler paste of binding scraps',
  glue: 'Glue and clamp',
  'level-sand': 'Level-sand',
  'rub-out': 'Rub out',
  other: 'Work',
} as const;

export const WAIT_WORDS = {
  'flash-off': 'Flash off',
  recoat: 'Wait to recoat',
  'shrink-back': 'Shrink back',
  'level-sand': 'Harden for level-sanding',
  'rub-out': 'Harden for rubbing out',
  cure: 'Cure',
  rest: 'Rest',
  'filler-dry': 'Pore filler dries',
  'paste-soft': 'Scraps soften in acetone',
  clamped: 'Glue sets in the clamps',
} as const;

export const CHECK_WORDS = {
  'no-print': 'Check: no print',
  powders: 'Check: powders, does not gum',
  sink: 'Check: no more sinking',
  colour: 'Check: colour, dry',
  'look-over': 'Check: look over',
} as const;

export const JOB_WORDS = {
  'melt-in': 'Melt-in over an old lacquer',
  'opaque-touch-up': 'Opaque touch-up with drop fill',
  'full-clear': 'Full clear',
  toner: 'Toner',
  waterborne: 'Waterborne',
  shellac: 'Shellac by pad',
  catalysed: 'Catalysed',
  'drop-fill': 'Clear drop fill',
  'coats-on': 'The coats are on already',
} as const;

export const STEP_WORDS = {
  window: 'Recoat window',
  hold: { blush: 'Hold for blush', damp: 'Hold for damp air', cold: 'Hold for cold air' },
} as const;
