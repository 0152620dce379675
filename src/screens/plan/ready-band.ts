import { toInstantMs } from '../../planner/local-day';
import type { PlannedPiece } from '../../planner/plan';
import { type BandWords, bandWords } from '../../words/times';

/** The band in which a piece is ready, in words: at best, likely, and with its reserve. */
export const readyBand = ({ earliest, likely, promise }: PlannedPiece, nowMs: number): BandWords =>
  bandWords(
    {
      earliestMs: toInstantMs(earliest),
      likelyMs: toInstantMs(likely),
      lateMs: toInstantMs(Math.max(promise, likely)),
    },
    nowMs,
  );
