import { useSignal } from '@preact/signals';
import { giveCalendar } from '../../../actions/plan/calendar';
import { Button } from '../../../parts/blocks/button';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { PLAN_WORDS } from '../../../words/plan/plan';

/** Gives the bench out as a calendar file. */
export function CalendarAct() {
  const open = useShop();
  const isBusy = useSignal(false);

  async function give(): Promise<void> {
    isBusy.value = true;
    const gave = await giveCalendar(open);
    isBusy.value = false;
    showToast({ text: PLAN_WORDS.gave[gave] });
  }
  return (
    <div class="stack not-printed">
      <Button icon="share" isWide onClick={() => void give()} disabled={isBusy.value}>
        {PLAN_WORDS.calendar}
      </Button>
      <p class="quiet small">{PLAN_WORDS.calendarText}</p>
    </div>
  );
}
