import { useSignal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect } from 'preact/hooks';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { isDayEndDue, isDayEndPressing } from '../../shop/cautions/day-end-due';
import { NOTICE_LINE } from '../../words/bench-rows';
import { LineLink } from './line-link';

/** The one line above the pieces. It always has its place, so that nothing moves when something comes due; what reminds comes after the first frame. */
export function NoticeLine() {
  const { shop, nowMs } = useShop();
  const Due = useSignal<FunctionComponent | undefined>(undefined);
  useEffect(() => {
    import('./due-line').then(
      ({ DueLine }) => {
        Due.value = DueLine;
      },
      () => undefined, // the bell leads to the same list, and says there what went wrong
    );
  }, [Due]);
  const Shown = Due.value;
  const isDue = isDayEndDue(shop.value, nowMs.value);
  const isPressing = isDayEndPressing(shop.value, nowMs.value);
  return (
    <div class="notice-line">
      {isPressing ? (
        <LineLink kind="fire" icon="fire" href={linkTo('air', 'day-end')} text={NOTICE_LINE.fire} />
      ) : (
        Shown && <Shown />
      )}
      {isDue && !isPressing && (
        <a class="notice-day-end" href={linkTo('air', 'day-end')}>
          {NOTICE_LINE.dayEnd}
        </a>
      )}
    </div>
  );
}
