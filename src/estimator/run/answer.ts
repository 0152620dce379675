import { foretellCard } from '../card/foretell';
import { weighCard } from '../card/weigh-card';
import { createKeptStacks } from '../kept-stacks';
import { known, lookInto } from '../known';
import { runEstimate } from '../run-estimate';
import { TooMuchWorkError } from '../simulate';
import type { Answer } from './client';
import { cardFrom, requestFrom } from './from-plain';
import type { PlainCardPlan, PlainCardRequest, PlainRequest } from './plain';

type AnEstimate = Extract<Answer, { estimate: unknown }>;
const kept = createKeptStacks();

/** What the worker does with one message: an estimate, what a card says, or why neither. No number that is none comes in or goes out. */
export function answer(request: PlainRequest): Exclude<Answer, { ok: true }> | AnEstimate;
export function answer(request: PlainRequest | PlainCardRequest | PlainCardPlan): Answer;
export function answer(request: PlainRequest | PlainCardRequest | PlainCardPlan): Answer {
  try {
    lookInto(request, 'request');
    if ('card' in request) {
      const reading = weighCard(cardFrom(request.card));
      lookInto(reading, 'reading');
      return { ok: true, reading };
    }
    if ('plan' in request) {
      const foretold = foretellCard(cardFrom(request.plan));
      lookInto(foretold, 'foretold');
      return { ok: true, foretold };
    }
    const estimate = runEstimate(requestFrom(request), request.stack === undefined ? undefined : kept);
    return { ok: true, estimate: known(estimate) };
  } catch (error) {
    const why = error instanceof TooMuchWorkError ? 'too-thick' : 'unsolvable';
    return { ok: false, why, message: error instanceof Error ? error.message : String(error) };
  }
}
