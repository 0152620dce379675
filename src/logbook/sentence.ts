import { BACKUP_WORDS, FAILURE_WORDS } from '../words/frame/refusals';
import type { BackupFailure } from './backup/content';
import type { Issue } from './entry';
import type { AppendFailure } from './logbook';

type Times = { readonly earliest: string; readonly latest: string };

// A new kind of failure does not compile without its sentence.
const WORDS: Record<Exclude<AppendFailure['kind'], 'faulty'>, (times: Times) => string> = FAILURE_WORDS;
const OF_BACKUP: Record<BackupFailure['kind'], string> = BACKUP_WORDS;

const list = (issues: readonly Issue[]): string =>
  issues.map(({ path, problem }) => `${path}: ${problem}`).join('\n');

/** What to tell the person when nothing was logged. */
export function sentenceFor(failure: AppendFailure, showTime: (instantMs: number) => string): string {
  if (failure.kind === 'faulty') return list(failure.issues);
  const write = (instantMs: number | undefined) => (instantMs === undefined ? '' : showTime(instantMs));
  return WORDS[failure.kind]({
    earliest: write('earliestMs' in failure ? failure.earliestMs : undefined),
    latest: write('latestMs' in failure ? failure.latestMs : undefined),
  });
}

/** What to tell the person when a backup was not taken in; faulty entries are named by their place. */
export function sentenceForBackup(failure: BackupFailure): string {
  const sentence = OF_BACKUP[failure.kind];
  return failure.kind === 'faulty-entries' ? `${sentence}\n${list(failure.issues)}` : sentence;
}
