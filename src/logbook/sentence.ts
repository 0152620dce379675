import { FAILURE_WORDS } from '../words/logbook';
import type { AppendFailure } from './logbook';

type Times = { readonly earliest: string; readonly latest: string };

// A new kind of failure does not compile without its sentence.
const WORDS: Record<Exclude<AppendFailure['kind'], 'faulty'>, (times: Times) => string> = FAILURE_WORDS;

/** What to tell the person when nothing was logged. */
export function sentenceFor(failure: AppendFailure, showTime: (instantMs: number) => string): string {
  if (failure.kind === 'faulty')
    return failure.issues.map(({ path, problem }) => `${path}: ${problem}`).join('\n');
  const write = (instantMs: number | undefined) => (instantMs === undefined ? '' : showTime(instantMs));
  return WORDS[failure.kind]({
    earliest: write('earliestMs' in failure ? failure.earliestMs : undefined),
    latest: write('latestMs' in failure ? failure.latestMs : undefined),
  });
}
