import { Button } from '../../../parts/blocks/button';
import { Icon } from '../../../parts/blocks/icons';
import { useShop } from '../../../parts/frame/shop-context';
import type { Batch } from '../../../science/mixing/ingredient';
import { PLAN_WORDS as WORDS } from '../../../words/mix/weigh';
import { numberWords, percentWords } from '../../../words/quantities';
import { gramsWords, pourWords, scaleWords } from '../grams';
import type { useLetDowns } from './let-downs';
import { lineToThin, type PlanLine } from './plan-lines';

interface PlanRowProps {
  readonly line: PlanLine;
  /** What the scale shows once it is poured, kg. */
  readonly scaleKg: number;
  readonly divisionKg: number;
  readonly batch: Batch;
  readonly letDowns: ReturnType<typeof useLetDowns>;
}

/** A line of the plan: how much, and what the scale can make of it. */
export function PlanRow({ line, scaleKg, divisionKg, batch, letDowns }: PlanRowProps) {
  const { shop } = useShop();
  const nameOf = (id = '') => shop.value.ingredients.get(id)?.name ?? '';
  const taken = letDowns.of(line.ingredient);
  return (
    <li class="plan-line">
      <p class="plan-name">{nameOf(line.ingredient)}</p>
      <p class="plan-grams digits">
        <strong>{pourWords(line.massKg, divisionKg)} g</strong>{' '}
        <span class="quiet">→ {scaleWords(scaleKg, divisionKg)} g</span>
      </p>
      <Judgement line={line} />
      {line.offer && (
        <div class="plan-offer">
          <p>
            {WORDS.letDown(
              percentWords(line.offer.strength),
              gramsWords(line.offer.letDownKg),
              gramsWords(line.offer.clearToLeaveOutKg),
              nameOf(lineToThin(batch, shop.value)?.ingredient),
            )}
          </p>
          <Button onClick={() => line.offer && void letDowns.take(batch, line.ingredient, line.offer)}>
            {WORDS.letDownOn}
          </Button>
        </div>
      )}
      {line.clearShort && (
        <p>
          {line.clearShort.wantedKg !== undefined &&
            WORDS.clearShort(gramsWords(line.clearShort.wantedKg), gramsWords(line.clearShort.thereKg))}
          {WORDS.larger}
        </p>
      )}
      {taken && (
        <Button kind="plain" onClick={() => letDowns.leave(taken.of)}>
          {WORDS.letDownOff}
        </Button>
      )}
    </li>
  );
}

function Judgement({ line: { verdict, uncertainty, drops } }: { readonly line: PlanLine }) {
  const isOff = drops !== undefined && Math.abs(drops.error) > 0.005;
  const off = isOff ? `${drops.error > 0 ? '+' : ''}${numberWords(drops.error * 100, 0)} %` : undefined;
  return (
    <>
      {drops && !off && <p class="quiet">{WORDS.drops(numberWords(drops.drops, 0))}</p>}
      {drops && off && <p class="quiet">{WORDS.wholeDrops(drops.drops, off)}</p>}
      {verdict !== 'fine' && (
        <p class="state" data-kind={verdict === 'coarse' ? 'wait' : 'stop'}>
          <Icon name={verdict === 'coarse' ? 'caution' : 'stop'} />
          {verdict === 'coarse' ? WORDS.coarse(`±${percentWords(uncertainty, 1)}`) : WORDS.notWeighable}
        </p>
      )}
    </>
  );
}
