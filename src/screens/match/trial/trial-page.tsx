import type { Match, Trial } from '../../../logbook/fold/piece/matches';
import { Button, LinkButton } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { fromHere, linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { undoWithToast } from '../../../parts/frame/undo';
import { targetOf } from '../../../shop/colour/aim';
import { matchJar } from '../../../shop/colour/jar-content';
import { sidesOf } from '../../../shop/colour/judge';
import { MATCH_WORDS } from '../../../words/match/match';
import { NEXT_WORDS, STAND_WORDS } from '../../../words/match/next';
import { TRIAL_WORDS as WORDS } from '../../../words/match/trial';
import { Yellowness } from '../about/yellowness';
import { gramsText } from '../colour-text';
import { Difference } from '../difference';
import { ReadingSets } from '../reading/reading-sets';
import { NotHere, type OfMatch, pathOfPage, useNames } from '../use-match';
import { AcceptTrial } from './accept-trial';

/** One trial: how it stands on each side, what is in it, and making it a recipe. */
export function TrialPage({ match }: OfMatch) {
  const [id] = pathOfPage();
  const trial = match.trials.find((one) => one.id === id);
  if (!trial) return <NotHere />;
  const sides = sidesOf(match, trial);
  const surface = sides[0]?.surface;
  return (
    <Page title={MATCH_WORDS.trial(trial.number)} backTo={linkTo('match', match.id)} backLabel={match.name}>
      {sides.map((side) => (
        <Section key={side.under} title={side.under === 'bare' ? STAND_WORDS.bare : STAND_WORDS.clear}>
          <Difference match={match} side={side} isWhole />
        </Section>
      ))}
      <div class="acts">
        <LinkButton
          kind={sides.length === 0 ? 'main' : 'usual'}
          icon="add"
          href={linkTo('match', match.id, 'read', 'trial', trial.id)}
        >
          {WORDS.readAgain}
        </LinkButton>
        <AcceptTrial match={match} trial={trial} />
      </div>
      <Section title={WORDS.inJar}>
        <Content match={match} trial={trial} />
      </Section>
      <Section title={WORDS.readings}>
        <ReadingSets sets={trial.readings} />
      </Section>
      {surface && (
        <Section title={WORDS.yellowness}>
          <Yellowness sample={surface.lab} target={targetOf(match).surface?.lab} />
        </Section>
      )}
    </Page>
  );
}

interface OfTrial {
  readonly match: Match;
  readonly trial: Trial;
}

function Content({ match, trial }: OfTrial) {
  const { actions } = useShop();
  const name = useNames();
  const { whiteGrams, tinterGrams, clearGrams, totalGrams } = matchJar(match, trial.number);
  const lines = [
    [name(match.base), whiteGrams] as const,
    ...[...tinterGrams].map(([id, grams]) => [name(id), grams] as const),
    ...(clearGrams > 0 ? [[WORDS.clearOfLetDowns, clearGrams] as const] : []),
  ];
  const isLast = match.trials.at(-1) === trial;
  return (
    <>
      <dl class="facts">
        {lines.map(([label, grams]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd class="digits">{NEXT_WORDS.grams(gramsText(grams))}</dd>
          </div>
        ))}
      </dl>
      <p class="quiet">{WORDS.total(gramsText(totalGrams))}</p>
      {isLast && trial.readings.length === 0 && (
        <Button
          kind="plain"
          icon="undo"
          onClick={async () => {
            const goOn = fromHere();
            await undoWithToast(actions, trial.entry, MATCH_WORDS.trialShort(trial.number));
            goOn(linkTo('match', match.id));
          }}
        >
          {WORDS.undoTrial}
        </Button>
      )}
    </>
  );
}
