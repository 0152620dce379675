import { type Signal, useSignal } from '@preact/signals';
import type { Recipe } from '../../../logbook/fold/mix/recipes';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { UNITS } from '../../../logbook/unit';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { named, SelectField } from '../../../parts/fields/select-field';
import type { Draft } from '../../../parts/fields/typed-field';
import { linkTo, route } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { PLAN_WORDS as WORDS } from '../../../words/mix/weigh';
import { volumeWords } from '../../../words/volumes';
import { type Need, needOf } from '../amount/amount-draft';
import { draftOfJob, pieceOfJob } from '../amount/amount-job';
import type { SizeUnit } from './use-sized-batch';

interface JobHintProps {
  readonly recipe: Recipe;
  readonly size: Signal<Draft<SizeUnit>>;
  /** What the batch comes to; undefined while its volume is not known. */
  readonly mixedM3: number | undefined;
}

/** What the job takes against what is to be mixed: said before anything is poured. */
export function JobHint({ recipe, size, mixedM3 }: JobHintProps) {
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
      {need && <Enough {...{ need, size, mixedM3, piece }} />}
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
      options={named(open)}
      value={piece?.id}
      onChange={onPiece}
    />
  );
}

interface EnoughProps extends Pick<JobHintProps, 'size' | 'mixedM3'> {
  readonly need: Need;
  readonly piece: Piece | undefined;
}

function Enough({ need, size, mixedM3, piece }: EnoughProps) {
  const units = useUnits();
  const job = WORDS.job(need.coats, piece?.name);
  const whole = volumeWords(need.wholeM3, units);
  if (mixedM3 === undefined) return <p class="quiet">{WORDS.need(job, whole)}</p>;
  if (mixedM3 >= need.wholeM3 * 0.995) return <p class="quiet">{WORDS.enough(job, whole)}</p>;
  return (
    <Notice kind="caution" title={WORDS.notEnough(volumeWords(mixedM3, units), job)}>
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
