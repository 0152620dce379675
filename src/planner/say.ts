import {
  ABSORBED_WORDS,
  BOUND_WORDS,
  CHECK_WORDS,
  FAULT_WORDS,
  STEP_WORDS,
  TASK_WORDS,
  WAIT_WORDS,
  WHY_WORDS,
} from '../words/plan/planner';
import type { Why } from './difference';
import type { Fault } from './fault';
import type { Bound } from './plan';
import type { PromiseFault } from './promise';
import type { Step } from './step';

/** The names that a sentence about a plan needs. */
export interface Names {
  readonly step: (stepId: string) => string;
  readonly piece: (pieceId: string) => string;
}

/** The name of a step as it is written on the bench. */
export function stepName(step: Step): string {
  switch (step.kind) {
    case 'work':
      return TASK_WORDS[step.task];
    case 'wait':
      return WAIT_WORDS[step.until];
    case 'gate':
      return CHECK_WORDS[step.check];
    case 'window':
      return STEP_WORDS.window;
    case 'hold':
      return STEP_WORDS.hold[step.against];
  }
}

/** What a fault is and what to do about it. */
export function faultSentence(fault: Fault | PromiseFault): string {
  switch (fault.kind) {
    case 'step-too-long':
      return FAULT_WORDS[fault.kind](fault.minutes, fault.longestMinutes);
    case 'window-too-short':
      return FAULT_WORDS[fault.kind](fault.windowMinutes, fault.moveMinutes);
    case 'gate-never-passes':
      return FAULT_WORDS[fault.kind](fault.failures);
    default:
      return FAULT_WORDS[fault.kind];
  }
}

/** Why a step begins when it does, to follow its time: "14:20, after Coat". */
export function boundWords(bound: Bound, names: Names): string {
  switch (bound.by) {
    case 'step':
      return BOUND_WORDS.step(names.step(bound.stepId));
    case 'person':
      return BOUND_WORDS.person(names.step(bound.stepId), names.piece(bound.pieceId));
    case 'hold':
      return BOUND_WORDS.hold[bound.against];
    case 'coats-a-day':
      return BOUND_WORDS[bound.by](bound.coatsADay);
    default:
      return BOUND_WORDS[bound.by];
  }
}

/** Why a day more changes nothing, to follow that it does. */
export const absorbedWords = (bound: Bound | undefined): string =>
  ABSORBED_WORDS[bound && bound.by in ABSORBED_WORDS ? (bound.by as keyof typeof ABSORBED_WORDS) : 'other'];

/** Why a step moved, to follow the new time. */
export function whyWords(why: Why, names: Names): string {
  switch (why.by) {
    case 'length':
      return WHY_WORDS.length(names.step(why.stepId), why.minutes);
    case 'done':
      return WHY_WORDS.done(names.step(why.stepId), why.minutes);
    case 'new-step':
      return WHY_WORDS[why.by](names.step(why.stepId));
    case 'order':
      return WHY_WORDS.order;
    default:
      return boundWords(why, names);
  }
}
