import { isDayEndPressing } from '../../shop/cautions/day-end-due';
import { DAY_END_NOTICE as WORDS } from '../../words/air/day-end';
import { LinkButton } from '../frame/button';
import { Notice } from '../frame/notice';
import { linkTo } from '../frame/route';
import { useShop } from '../frame/shop-context';

/** Asks for the end of the day once the work has rested: rags, dust and filters. It cannot be switched off. */
export function DayEndNotice() {
  const { shop, nowMs } = useShop();
  if (!isDayEndPressing(shop.value, nowMs.value)) return null;
  return (
    <Notice kind="fire" title={WORDS.title}>
      <p>{WORDS.text}</p>
      <div class="acts">
        <LinkButton href={linkTo('air', 'day-end')}>{WORDS.act}</LinkButton>
      </div>
    </Notice>
  );
}
