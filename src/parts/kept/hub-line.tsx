import type { HubStatus } from '../../hub/hub-status';
import { HUB_STATUS, HUB_TROUBLE } from '../../words/frame/hub';
import { agoWords } from '../../words/times';
import { useShop } from '../frame/shop-context';
import { hubHere } from './hub-here';

/** How it stands between this phone and the hub, in a few quiet lines. */
export function HubLine() {
  const { nowMs } = useShop();
  const here = hubHere.value;
  if (!here) return null;
  const lines = here.at ? linesOf(here.at.status.value, nowMs.value) : [HUB_STATUS.notYet];
  return (
    <div role="status">
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

function linesOf(status: HubStatus, nowMs: number): readonly string[] {
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

/** Says on the board that it may not be up to date; nothing while it is. */
export function StaleLine() {
  const { nowMs } = useShop();
  const here = hubHere.value;
  const status = here?.at?.status.value;
  if (!here || status?.line === 'open') return null;
  const heardMs = status?.heardMs;
  return (
    <p role="status">
      {heardMs === undefined ? HUB_STATUS.staleNever : HUB_STATUS.stale(agoWords(nowMs.value - heardMs))}
    </p>
  );
}
