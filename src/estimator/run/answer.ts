import type { CardRequest } from '../card/card';
import type { CardPlanRequest } from '../card/foretell';
import { foretellCard } from '../card/foretell';
import { weighCard } from '../card/weigh-card';
import type { EstimateRequest } from '../estimate';
import { createKeptStacks } from '../kept-stacks';
import { known, lookInto } from '../known';
import { runEstimate } from '../run-estimate';
import { TooMuchWorkError } from '../simulate';
import type { Answer } from './client';

type AnEstimate = Extract<Answer, { estimate: unknown }>;
const kept = createKeptStacks();

/** What the worker does with one message: an estimate, what a card says, or why neither. No number that is none comes in or goes out. */
export function answer(request: EstimateRequest): Exclude<Answer, { ok: true }> | AnEstimate;
export function answer(request: EstimateRequest | CardRequest | CardPlanRequest): Answer;
export function answer(request: EstimateRequest | CardRequest | CardPlanRequest): Answer {
  try {
    lookInto(request, 'request');
    if ('card' in request) {
      const reading = weighCard(request.card);
      lookInto(reading, 'reading');
      return { ok: true, reading };
    }
    if ('plan' in request) {
      const foretold = foretellCard(request.plan);
      lookInto(foretold, 'foretold');
      return { ok: true, foretold };
    }
    const estimate = runEstimate(request, request.stack === undefined ? undefined : kept);
    return { ok: true, estimate: known(estimate) };
  } catch (error) {
    const why = error instanceof TooMuchWorkError ? 'too-thick' : 'unsolvable';
    return { ok: false, why, message: error instanceof Error ? error.message : String(error) };
  }
}
