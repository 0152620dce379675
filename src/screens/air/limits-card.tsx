import { Icon } from '../../parts/blocks/icons';
import { Notice } from '../../parts/blocks/notice';
import { useUnits } from '../../parts/frame/shop-context';
import type { ShopLimits } from '../../shop/air/shop-limits';
import { SHOP_LIMIT_WORDS as WORDS } from '../../words/air/air';
import { lowestWords, percentWords, temperatureWords } from '../../words/quantities';

/** Whether the shop is warm enough, and dry enough where it minds, for a finish that dries by water or cures, now and overnight. */
export function LimitsCard({ limits, finish }: { readonly limits: ShopLimits; readonly finish: string }) {
  const units = useUnits();
  const { isCold, isDamp, lowestK, highestHumidity, coldNightK } = limits;
  const kind = isCold || isDamp ? 'stop' : 'ready';
  const lowest = lowestWords(lowestK, units);
  return (
    <>
      <div class="margin-card" data-kind={kind}>
        <p class="margin-label">{WORDS.label(finish)}</p>
        <p class="state" data-kind={kind}>
          <Icon name={kind} />
          {isCold
            ? isDamp
              ? WORDS.coldAndDamp
              : WORDS.cold
            : isDamp
              ? WORDS.damp
              : WORDS.fits(highestHumidity !== undefined)}
        </p>
        <p>
          {WORDS.wants(lowest, highestHumidity === undefined ? undefined : percentWords(highestHumidity))}
        </p>
      </div>
      {coldNightK !== undefined && (
        <Notice kind="caution">
          <p>{WORDS.night(temperatureWords(coldNightK, units), lowest)}</p>
        </Notice>
      )}
    </>
  );
}
