import { confirmCautions } from '../../actions/air/confirm-cautions';
import { Button } from '../../parts/blocks/button';
import { CautionNotice } from '../../parts/blocks/caution';
import { Page } from '../../parts/blocks/page';
import { Refusal } from '../../parts/fields/form/refusal';
import { useForm } from '../../parts/fields/form/use-form';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { showToast } from '../../parts/frame/toast';
import { dayEndCautions } from '../../shop/cautions/day-end';
import { dayEndRead } from '../../shop/cautions/day-end-due';
import { AIR_WORDS } from '../../words/air/air';
import { CAUTION_WORDS, WHO_DECIDES } from '../../words/air/cautions';
import { DAY_END_WORDS as WORDS } from '../../words/air/room';
import { whenWords } from '../../words/times';

/** Rags, dust and filters before leaving: confirmed and logged, every day anew. */
export function DayEnd() {
  const { shop, needs, nowMs, actions } = useShop();
  const form = useForm();
  const cautions = dayEndCautions(shop.value, nowMs.value);
  const read = dayEndRead(shop.value, nowMs.value);

  async function confirm(): Promise<void> {
    const kept = await form.send(true, () => confirmCautions(needs, 'end-day', cautions));
    if (kept) showToast({ text: WORDS.logged, onUndo: () => void actions.undo(kept.id) });
  }

  return (
    <Page title={WORDS.title} backTo={linkTo('air')} backLabel={AIR_WORDS.back}>
      {read && <p>{WORDS.confirmed(whenWords(read.atMs, nowMs.value))}</p>}
      {cautions.map((caution) => (
        <CautionNotice key={caution.id} caution={caution} />
      ))}
      <p class="quiet">{WHO_DECIDES}</p>
      <Refusal refused={form.refused.value} />
      <div class="acts">
        <Button kind="main" icon="check" isWide onClick={() => void confirm()}>
          {CAUTION_WORDS.done}
        </Button>
      </div>
    </Page>
  );
}
