import type { HubStatus } from '../../hub/hub-status';
import { HUB_STATUS, HUB_TROUBLE } from '../../words/frame/hub';
import { agoWords } from '../../words/times';

/** How it stands with the hub, a sentence a line: what is in the way first. */
export function linesOf(status: HubStatus, nowMs: number): readonly string[] {
  const { line, trouble, entries, there, coming, photosWaiting, foreign, heardMs } = status;
  const heard = heardMs === undefined ? '' : ` ${HUB_STATUS.heard(agoWords(nowMs - heardMs))}`;
  return [
    ...(trouble ? [HUB_TROUBLE[trouble]] : line === 'opening' ? [HUB_STATUS.opening] : []),
    line === 'open' || heardMs !== undefined
      ? HUB_STATUS.on(there, entries) + heard
      : HUB_STATUS.waiting(entries - there),
    ...(coming > 0 ? [HUB_STATUS.coming(coming)] : []),
    ...(photosWaiting > 0 ? [HUB_STATUS.photos(photosWaiting)] : []),
    ...(foreign > 0 ? [HUB_STATUS.foreign(foreign)] : []),
  ];
}

/** That a board may not be up to date. */
export const staleWords = (heardMs: number | undefined, nowMs: number): string =>
  heardMs === undefined ? HUB_STATUS.staleNever : HUB_STATUS.stale(agoWords(nowMs - heardMs));
