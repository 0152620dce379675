import type { WindowStep } from '../step';

/** When the next coat may begin, first and last minute, both included. */
export interface RecoatWindow {
  readonly opens: number;
  readonly closes: number;
}

/** The window after a coat that ended at a minute. */
export const recoatWindow = (
  coatEnd: number,
  { fromMinutes, untilMinutes }: Pick<WindowStep, 'fromMinutes' | 'untilMinutes'>,
): RecoatWindow => ({ opens: coatEnd + fromMinutes, closes: coatEnd + untilMinutes });
