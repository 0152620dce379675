import { runEstimate } from '../run-estimate';
import type { Answer } from './client';
import { requestFrom } from './from-plain';
import type { PlainRequest } from './plain';

/** What the worker does with one message: an estimate, or why there is none. */
export function answer(request: PlainRequest): Answer {
  try {
    return { ok: true, estimate: runEstimate(requestFrom(request)) };
  } catch (error) {
    return { ok: false, message: error instanceof Error ? error.message : String(error) };
  }
}
