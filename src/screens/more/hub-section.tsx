import { LinkButton } from '../../parts/blocks/button';
import { Fold } from '../../parts/blocks/fold';
import { linkTo } from '../../parts/frame/route';
import { hubHere } from '../../parts/kept/hub-here';
import { HubLine } from '../../parts/kept/hub-line';
import { HUB_HERE } from '../../words/frame/hub';
import { Leave } from './leave';

/** Whether this phone is one of several, and the way to more of it. */
export function HubSection() {
  const isJoined = hubHere.value !== undefined;
  return (
    <Fold title={HUB_HERE.title} isOpen={isJoined}>
      {isJoined ? <HubLine /> : <p>{HUB_HERE.none}</p>}
      <div class="acts">
        <LinkButton href={linkTo('more', 'hub')}>{isJoined ? HUB_HERE.manage : HUB_HERE.setUp}</LinkButton>
      </div>
      {isJoined && <Leave />}
    </Fold>
  );
}
