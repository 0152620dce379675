import type { WindowStep } from './step';

/** What may be done with a coat that must be followed within a window. */
export type WindowState = 'too-early' | 'open' | 'scuff-tomorrow';

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

/** Whether the next coat may go on at a minute; a minute too late it takes a scuff, the next day. */
export function windowState({ opens, closes }: RecoatWindow, now: number): WindowState {
  if (now < opens) return 'too-early';
  return now <= closes ? 'open' : 'scuff-tomorrow';
}
