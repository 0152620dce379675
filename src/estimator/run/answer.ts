import { createKeptStacks } from '../kept-stacks';
import { known, lookInto } from '../known';
import { runEstimate } from '../run-estimate';
import { TooMuchWorkError } from '../simulate';
import type { Answer } from './client';
import { requestFrom } from './from-plain';
import type { PlainRequest } from './plain';

const kept = createKeptStacks();

/** What the worker does with one message: an estimate, or why there is none. No number that is none comes in or goes out. */
export function answer(request: PlainRequest): Answer {
  try {
    lookInto(request, 'request');
    const estimate = runEstimate(requestFrom(request), request.stack === undefined ? undefined : kept);
    return { ok: true, estimate: known(estimate) };
  } catch (error) {
    const why = error instanceof TooMuchWorkError ? 'too-thick' : 'unsolvable';
    return { ok: false, why, message: error instanceof Error ? error.message : String(error) };
  }
}
