import { type Signal, useSignal } from '@preact/signals';
import { readTyped } from '../../../logbook/as-typed';
import type { Piece } from '../../../logbook/fold/pieces';
import type { Recipe } from '../../../logbook/fold/recipes';
import { LIMITS } from '../../../logbook/limits';
import { UNITS } from '../../../logbook/unit';
import { SelectField } from '../../../parts/fields/select-field';
import type { Draft } from '../../../parts/fields/typed-field';
import { Button, LinkButton } from '../../../parts/frame/button';
import { Notice } from '../../../parts/frame/notice';
import { linkTo, route } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { PLAN_WORDS as WORDS } from '../../../words/mix/weigh';
import { volumeWords } from '../../../words/volumes';
import { type Need, needOf } from '../amount/amount-draft';
import { draftOfJob, pieceOfJob } from '../amount/job';
import type { SizeUnit } from './use-sized-batch';

interface JobHintProps {
  readonly recipe: Recipe;
  readonly size: Signal<Draft<SizeUnit>>;
}

/** What the job takes against what is to be mixed: said before anything is poured. */
export function JobHint({ recipe, size }: JobHintProps) {
  const shop = useShop().shop.value;
  const isUs = useUnits() === 'us';
  const source = { from: 'recipe', id: recipe.id } as const;
  const asked = useSignal(route.value.query.get('piece'));
  const piece = pieceOfJob(asked.value, source, shop);
  const need = needOf(draftOfJob({ piece, source }, shop, isUs));
  const toJob = `${linkTo('mix', 'amount')}?recipe=${recipe.id}${piece ? `&piece=${piece.id}` : ''}`;
  return (
    <>
      <PieceChoice
        piece={piece}
        onPiece={(id) => {
          asked.value = id;
        }}
      />
      {need && <Enough {...{ need, size, piece }} />}
      <LinkButton kind={need ? 'plain' : 'usual'} href={toJob}>
        {need ? WORDS.changeJob : WORDS.noJob}
      </LinkButton>
    </>
  );
}

interface PieceChoiceProps {
  readonly piece: Piece | undefined;
  readonly onPiece: (id: string) => void;
}

function PieceChoice({ piece, onPiece }: PieceChoiceProps) {
  const open = [...useShop().shop.value.pieces.values()].filter(({ closedMs }) => closedMs === undefined);
  if (open.length === 0 || (open.length === 1 && piece)) return null;
  return (
    <SelectField
      label={WORDS.forPiece}
      prompt={WORDS.choosePiece}
      options={open.map(({ id, name }) => ({ value: id, label: name }))}
      value={piece?.id}
      onChange={onPiece}
    />
  );
}

interface EnoughProps {
  readonly need: Need;
  readonly size: JobHintProps['size'];
  readonly piece: Piece | undefined;
}

function Enough({ need, size, piece }: EnoughProps) {
  const units = useUnits();
  const { unit, text } = size.value;
  const wanted = unit === 'g' ? undefined : readTyped({ text, unit }, LIMITS.volume);
  const job = WORDS.job(need.coats, piece?.name);
  const whole = volumeWords(need.wholeM3, units);
  if (!wanted?.ok || wanted.value >= need.wholeM3 * 0.995)
    return <p class="quiet">{WORDS.enough(job, whole)}</p>;
  return (
    <Notice kind="caution" title={WORDS.notEnough(volumeWords(wanted.value, units), job)}>
      <p>{WORDS.takes(volumeWords(need.most.sprayedM3, units), whole, need.way === 'spray')}</p>
      <div class="acts">
        <Button
          onClick={() => {
            size.value =
              units === 'us'
                ? { text: UNITS['fl-oz-us'].fromSi(need.wholeM3).toFixed(1), unit: 'fl-oz-us' }
                : { text: String(Math.round(need.wholeM3 * 1e6)), unit: 'mL' };
          }}
        >
          {WORDS.takeNeed(whole)}
        </Button>
      </div>
    </Notice>
  );
}
