import { HUB_STATUS } from '../../words/frame/hub';
import { useShop } from '../frame/shop-context';
import { hubHere } from './hub-here';
import { linesOf, staleWords } from './hub-lines';

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

/** Says on the board that it may not be up to date; nothing while it is. */
export function StaleLine() {
  const { nowMs } = useShop();
  const here = hubHere.value;
  const status = here?.at?.status.value;
  if (!here || status?.line === 'open') return null;
  return <p role="status">{staleWords(status?.heardMs, nowMs.value)}</p>;
}
