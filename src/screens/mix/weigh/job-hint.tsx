import type { Signal } from '@preact/signals';
import { readTyped } from '../../../logbook/as-typed';
import type { Recipe } from '../../../logbook/fold/recipes';
import { LIMITS } from '../../../logbook/limits';
import type { Draft } from '../../../parts/fields/typed-field';
import { Button, LinkButton } from '../../../parts/frame/button';
import { Notice } from '../../../parts/frame/notice';
import { linkTo, route } from '../../../parts/frame/route';
import { useUnits } from '../../../parts/frame/shop-context';
import { PLAN_WORDS as WORDS } from '../../../words/mix/weigh';
import { volumeWords } from '../../../words/volumes';
import type { SizeUnit } from './use-plan';

interface JobHintProps {
  readonly recipe: Recipe;
  readonly size: Signal<Draft<SizeUnit>>;
}

/** What the job takes against what is to be mixed: said before anything is poured. */
export function JobHint({ recipe, size }: JobHintProps) {
  const units = useUnits();
  const needMl = Number(route.value.query.get('need') ?? Number.NaN);
  const toJob = `${linkTo('mix', 'amount')}?recipe=${recipe.id}`;
  if (!(needMl > 0)) return <LinkButton href={toJob}>{WORDS.noJob}</LinkButton>;
  const need = volumeWords(needMl / 1e6, units);
  const { unit, text } = size.value;
  const wanted = unit === 'g' ? undefined : readTyped({ text, unit }, LIMITS.volume);
  const isShort = wanted?.ok === true && wanted.value * 1e6 < needMl * 0.995;
  if (!isShort) return <p class="quiet">{WORDS.enough(need)}</p>;
  return (
    <Notice kind="caution">
      <p>{WORDS.notEnough(volumeWords(wanted.value, units), need)}</p>
      <div class="acts">
        <Button
          onClick={() => {
            size.value = { text: String(Math.round(needMl)), unit: 'mL' };
          }}
        >
          {WORDS.takeNeed(need)}
        </Button>
      </div>
    </Notice>
  );
}
