import { acceptTrial } from '../../../actions/match/accept-trial';
import type { Match, Trial } from '../../../logbook/fold/piece/matches';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { sayRefused } from '../../../parts/frame/say-refused';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { jarsOfMatch } from '../../../shop/colour/jars-of-match';
import { TRIAL_WORDS as WORDS } from '../../../words/match/trial';

interface OfTrial {
  readonly match: Match;
  readonly trial: Trial;
  /** Accepting is the next thing to do. */
  readonly isMain?: boolean;
}

/** Makes a trial a recipe with one tap, and goes on to its jar; of one that is, the way to both. */
export function AcceptTrial({ match, trial, isMain = true }: OfTrial) {
  const { needs, actions, shop } = useShop();
  const toJar = linkTo('match', match.id, 'jar', trial.id);
  async function accept(): Promise<void> {
    const goOn = fromHere();
    const done = await acceptTrial(needs, match, trial.number);
    if (!done.ok) return sayRefused(done.failure);
    const [accepted, written] = done.value.entries;
    showToast({
      text: WORDS.accepted,
      onUndo: () => void actions.undo(accepted).then(() => actions.undo(written)),
    });
    goOn(toJar);
  }
  if (match.accepted?.trial !== trial.id)
    return (
      <Button kind={isMain ? 'main' : 'usual'} icon="check" isWide onClick={accept}>
        {match.accepted ? WORDS.acceptAgain : WORDS.accept}
      </Button>
    );
  const [jar] = jarsOfMatch(match, shop.value);
  return (
    <>
      {jar ? (
        <LinkButton kind="main" icon="mix" href={linkTo('mix', 'jar', jar.id)} isWide>
          {WORDS.openJar(jar.name)}
        </LinkButton>
      ) : (
        <LinkButton kind="main" icon="mix" href={toJar} isWide>
          {WORDS.jar}
        </LinkButton>
      )}
      <LinkButton icon="next" href={linkTo('mix', 'recipe', match.accepted.recipe)}>
        {WORDS.openRecipe}
      </LinkButton>
    </>
  );
}
