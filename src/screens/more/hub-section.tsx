import { useSignal } from '@preact/signals';
import { Button, LinkButton } from '../../parts/blocks/button';
import { Fold } from '../../parts/blocks/fold';
import { Notice } from '../../parts/blocks/notice';
import { linkTo } from '../../parts/frame/route';
import { showToast } from '../../parts/frame/toast';
import { hubHere, leave } from '../../parts/kept/hub-here';
import { HubLine } from '../../parts/kept/hub-line';
import { HUB_HERE, HUB_LEAVE } from '../../words/frame/hub';

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

/** Leaves the hub, after a second tap. */
function Leave() {
  const isAsked = useSignal(false);
  async function go(): Promise<void> {
    await leave();
    showToast({ text: HUB_LEAVE.left });
  }
  const ask = (asked: boolean) => () => {
    isAsked.value = asked;
  };
  return isAsked.value ? (
    <Notice kind="caution" title={HUB_LEAVE.title} isNew>
      <p>{HUB_LEAVE.sure}</p>
      <div class="acts">
        <Button kind="danger" onClick={() => void go()}>
          {HUB_LEAVE.yes}
        </Button>
        <Button onClick={ask(false)}>{HUB_LEAVE.no}</Button>
      </div>
    </Notice>
  ) : (
    <div class="acts">
      <Button onClick={ask(true)}>{HUB_LEAVE.title}</Button>
    </div>
  );
}
