import { acceptTrial } from '../../../actions/match/accept-trial';
import { jarFromTrial } from '../../../actions/match/jar-from-trial';
import type { Match, Trial } from '../../../logbook/fold/matches';
import { Button, LinkButton } from '../../../parts/frame/button';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { TRIAL_WORDS as WORDS } from '../../../words/match/match';

interface OfTrial {
  readonly match: Match;
  readonly trial: Trial;
}

/** Makes a trial a recipe with one tap; of one that is, the way to it. */
export function AcceptTrial({ match, trial }: OfTrial) {
  const { needs, actions } = useShop();
  async function accept(): Promise<void> {
    const goOn = fromHere();
    const done = await acceptTrial(needs, match, trial.number);
    if (!done.ok) return showToast({ text: done.failure.sentence });
    const [accepted, written] = done.value.entries;
    showToast({
      text: WORDS.accepted,
      onUndo: () => void actions.undo(accepted).then(() => actions.undo(written)),
    });
    goOn(linkTo('mix', 'recipe', done.value.recipe));
  }
  async function fill(): Promise<void> {
    const goOn = fromHere();
    const done = await jarFromTrial(needs, match, trial.number, match.accepted?.recipe ?? '');
    if (done.ok) goOn(linkTo('mix', 'weigh', done.value));
    else showToast({ text: done.failure.sentence });
  }
  if (match.accepted?.trial === trial.id)
    return (
      <>
        <LinkButton icon="next" href={linkTo('mix', 'recipe', match.accepted.recipe)}>
          {WORDS.openRecipe}
        </LinkButton>
        <Button icon="mix" onClick={fill}>
          {WORDS.jar}
        </Button>
      </>
    );
  return <Button onClick={accept}>{match.accepted ? WORDS.acceptAgain : WORDS.accept}</Button>;
}
