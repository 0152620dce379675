import type { Match } from '../../../logbook/fold/piece/matches';
import { LinkButton } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { linkTo } from '../../../parts/frame/route';
import { COARSE_UNCERTAINTY } from '../../../science/mixing/weigh/weighing';
import type { Suggestion, ToAdd, TooLittle } from '../../../science/pigment/suggest';
import type { Advice } from '../../../shop/colour/advice';
import { painterWords } from '../../../words/match/match';
import { NEXT_WORDS as WORDS } from '../../../words/match/next';
import { percentWords } from '../../../words/quantities';
import { differenceText, gramsText, labText } from '../colour-text';
import { useNames } from '../use-match';

type Given = Extract<Advice, { kind: 'advice' }>;

interface CardProps {
  readonly match: Match;
  readonly advice: Given;
}

/** The advice itself: what to weigh in, or that there is nothing to weigh. */
export function SuggestionCard({ match, advice }: CardProps) {
  const { suggestion } = advice;
  switch (suggestion.kind) {
    case 'add':
      return <Add match={match} advice={advice} suggestion={suggestion} />;
    case 'stop': {
      // Read bare against a target that was seen through clear: the card is still to be coated.
      const isBare = advice.aim.clear === 'unmoved';
      const text = isBare ? WORDS.underClearText : WORDS.stopText;
      return (
        <Notice kind="note" title={isBare ? WORDS.underClear : WORDS.stop}>
          <p>{text(differenceText(suggestion.dE00))}</p>
        </Notice>
      );
    }
    case 'as-near-as-it-gets':
      return (
        <Notice kind="caution" title={WORDS['as-near-as-it-gets']}>
          <p>{WORDS.nearText(differenceText(suggestion.dE00))}</p>
          <AddOther match={match} />
        </Notice>
      );
    case 'out-of-reach':
      return <OutOfReach match={match} suggestion={suggestion} />;
    case 'too-little-to-weigh':
      return <Unweighable match={match} advice={advice} suggestion={suggestion} />;
  }
}

interface Of<Kind extends Suggestion['kind']> extends CardProps {
  readonly suggestion: Extract<Suggestion, { kind: Kind }>;
}

function Add({ match, advice, suggestion }: Of<'add'>) {
  const { additions, predicted, dE00, uncertaintyE00, leftOut } = suggestion;
  const isGuess = advice.trialsUsed <= 1 && advice.strengths.some(isGuessed);
  return (
    <>
      <h3>{WORDS.add}</h3>
      <ul class="to-add">
        {additions.map((addition) => (
          <Line key={String(addition.what)} match={match} advice={advice} addition={addition} />
        ))}
      </ul>
      {leftOut && <LeftOut advice={advice} {...leftOut} />}
      <p>{WORDS.predicted(labText(predicted), differenceText(dE00), differenceText(uncertaintyE00))}</p>
      <p class="quiet small">
        {WORDS.less} {isGuess && WORDS.firstSurely}
      </p>
      <div class="acts">
        <LinkButton
          kind="main"
          icon="check"
          href={`${linkTo('match', match.id, 'mix')}?as=${asQuery(match, advice, additions)}`}
        >
          {WORDS.log}
        </LinkButton>
        <AddOther match={match} />
      </div>
    </>
  );
}

/** Taken for what is common practice, and never tried. */
const isGuessed = ({ from, earlier }: Given['strengths'][number]): boolean =>
  from === 'usual' && earlier.length === 0;

const AddOther = ({ match }: { readonly match: Match }) => (
  <LinkButton kind="plain" href={linkTo('match', match.id, 'mix')}>
    {WORDS.other}
  </LinkButton>
);

/** The suggestion as the mix page reads it out of its address. */
const asQuery = ({ base, division }: Match, { tinters }: Given, additions: readonly ToAdd[]): string =>
  additions
    .map(({ what, form, grams }) =>
      [what === 'white' ? base : tinters[what], form, gramsText(grams, division.si * 1000)].join('*'),
    )
    .join('~');

function Line({ match, advice, addition }: CardProps & { readonly addition: ToAdd }) {
  const name = useNames();
  const { what, form, grams, error } = addition;
  const ingredient = what === 'white' ? match.base : (advice.tinters[what] ?? '');
  return (
    <li>
      <span class="to-add-grams digits">{WORDS.grams(gramsText(grams, match.division.si * 1000))}</span>
      <span>
        <strong>{name(ingredient)}</strong> {what !== 'white' && WORDS.form[form]}
        {error > COARSE_UNCERTAINTY && <small>{WORDS.coarse(percentWords(error))}</small>}
      </span>
    </li>
  );
}

function OutOfReach({ match, suggestion }: Omit<Of<'out-of-reach'>, 'advice'>) {
  const { dE00, nearest, left, missingRoomGrams } = suggestion;
  const [most] = left;
  return (
    <Notice kind="stop" title={WORDS['out-of-reach']}>
      <p>{WORDS.reachText(differenceText(dE00), labText(nearest))}</p>
      {left.length > 0 && <p>{WORDS.left(painterWords(left))}</p>}
      {missingRoomGrams > 0 ? (
        <p>{WORDS.room(gramsText(missingRoomGrams))}</p>
      ) : (
        most && <p>{WORDS.missing[most.direction]}</p>
      )}
      <AddOther match={match} />
    </Notice>
  );
}

function Unweighable({ match, advice, suggestion }: Of<'too-little-to-weigh'>) {
  return (
    <Notice kind="caution" title={WORDS['too-little-to-weigh']}>
      <LeftOut advice={advice} {...suggestion} />
      <p class="quiet">{WORDS.letDown}</p>
      <AddOther match={match} />
    </Notice>
  );
}

function LeftOut({ advice, tinter, neatGrams }: TooLittle & Pick<CardProps, 'advice'>) {
  const name = useNames();
  return <p>{WORDS.tooLittle(gramsText(neatGrams), name(advice.tinters[tinter] ?? ''))}</p>;
}
