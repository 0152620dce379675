import { useSignal } from '@preact/signals';
import { Button } from '../../parts/blocks/button';
import { Notice } from '../../parts/blocks/notice';
import { showToast } from '../../parts/frame/toast';
import { leave } from '../../parts/kept/hub-here';
import { HUB_LEAVE } from '../../words/frame/hub';

/** Leaves the hub, after a second tap. */
export function Leave() {
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
