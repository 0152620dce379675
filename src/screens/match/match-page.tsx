import { putMatchAway } from '../../actions/match/describe-match';
import type { Trial } from '../../logbook/fold/piece/matches';
import { Button, LinkButton } from '../../parts/blocks/button';
import { Fold } from '../../parts/blocks/fold';
import { Page, Section } from '../../parts/blocks/page';
import { Row } from '../../parts/blocks/row';
import { linkTo } from '../../parts/frame/route';
import { sayOutcome } from '../../parts/frame/say-refused';
import { useShop } from '../../parts/frame/shop-context';
import { targetOf } from '../../shop/colour/aim';
import { jarsOfMatch } from '../../shop/colour/jars-of-match';
import { sidesOf, sideThatCounts } from '../../shop/colour/judge';
import { coatedFrom } from '../../shop/recipe/what-it-made';
import { MATCH_WORDS as WORDS } from '../../words/match/match';
import { labText } from './colour-text';
import { Difference } from './difference';
import { FurtherRows } from './further-rows';
import { lineOf } from './match-list';
import { ColourFace } from './swatch';
import { AcceptTrial } from './trial/accept-trial';
import { NextAddition } from './trial/next-addition';
import { TrialRow } from './trial/trial-row';
import type { OfMatch } from './use-match';

/** The newest trials stand open; the others are folded. */
const OPEN_TRIALS = 2;

/** One match: how it stands, what to add next, and everything read for it. */
export function MatchPage({ match }: OfMatch) {
  const shop = useShop();
  const newest = match.trials.toReversed();
  const row = (trial: Trial) => <TrialRow key={trial.id} match={match} trial={trial} />;
  const piece = match.piece === undefined ? undefined : shop.shop.value.pieces.get(match.piece);
  return (
    <Page title={match.name} backTo={linkTo('match')} backLabel={WORDS.back}>
      <p class="quiet">
        {lineOf(match)}, {WORDS.through[match.through]}.{' '}
        {piece && <a href={linkTo('piece', piece.id)}>{WORDS.onPiece(piece.name)}</a>}
      </p>
      <Stand match={match} />
      <NextAddition match={match} />
      <Section title={WORDS.trials}>
        <ul class="rows">
          <TargetRow match={match} />
          {newest.slice(0, OPEN_TRIALS).map(row)}
        </ul>
        {newest.length > OPEN_TRIALS && (
          <details class="folded">
            <summary>{WORDS.earlierTrials(newest.length - OPEN_TRIALS)}</summary>
            <ul class="rows">{newest.slice(OPEN_TRIALS).map(row)}</ul>
          </details>
        )}
      </Section>
      <CameOfIt match={match} />
      <Fold title={WORDS.more}>
        <FurtherRows match={match} />
        {match.putAwayMs === undefined && <PutAway match={match} />}
      </Fold>
    </Page>
  );
}

/** The newest trial that was read against the target; nothing before there is one. It is read again only while no newer one waits to be read. */
function Stand({ match }: OfMatch) {
  const newest = match.trials.at(-1);
  const last = match.trials.findLast(({ readings }) => readings.length > 0);
  const side = last && sideThatCounts(match, sidesOf(match, last));
  if (!last || !side?.judgement) return null;
  const isPassed = side.judgement.verdict.kind === 'pass';
  const toReadUnderClear = isPassed && side.aim?.clear === 'unmoved';
  return (
    <Section title={WORDS.stand}>
      <p>
        <a href={linkTo('match', match.id, 'trial', last.id)}>{WORDS.trial(last.number)}</a>
      </p>
      <Difference match={match} side={side} />
      <div class="acts">
        {newest === last && (
          <LinkButton
            kind={toReadUnderClear ? 'main' : 'usual'}
            href={linkTo('match', match.id, 'read', 'trial', last.id)}
            icon="add"
          >
            {WORDS.readTrialAgain(last.number)}
          </LinkButton>
        )}
        {(isPassed || match.accepted?.trial === last.id) && (
          <AcceptTrial match={match} trial={last} isMain={!toReadUnderClear} />
        )}
      </div>
    </Section>
  );
}

function TargetRow({ match }: OfMatch) {
  const { surface } = targetOf(match);
  return (
    <Row
      href={linkTo('match', match.id, 'target')}
      title={WORDS.target}
      face={<ColourFace colours={surface ? [surface.lab] : []} />}
    >
      <p class="quiet small">{surface ? labText(surface.lab) : WORDS.targetNone}</p>
    </Row>
  );
}

function PutAway({ match }: OfMatch) {
  const { needs, actions } = useShop();
  async function putAway(): Promise<void> {
    sayOutcome(await putMatchAway(needs, match.id), ({ id }) => ({
      text: WORDS.putAwayDone,
      onUndo: () => void actions.undo(id),
    }));
  }
  return (
    <Button kind="plain" onClick={putAway}>
      {WORDS.putAway}
    </Button>
  );
}

/** The recipe that a match became, its jars, and the pieces they are on. */
function CameOfIt({ match }: OfMatch) {
  const shop = useShop().shop.value;
  const recipe = shop.recipes.get(match.accepted?.recipe ?? '');
  if (!recipe) return null;
  const jars = jarsOfMatch(match, shop);
  return (
    <Section title={WORDS.cameOfIt}>
      <ul class="rows">
        <Row href={linkTo('mix', 'recipe', recipe.id)} title={WORDS.recipe(recipe.name, recipe.version)} />
        {jars.map(({ id, name }) => (
          <Row key={id} href={linkTo('mix', 'jar', id)} title={WORDS.jar(name)} />
        ))}
        {coatedFrom(jars, shop).map(({ piece, coats }) => (
          <Row key={piece.id} href={linkTo('piece', piece.id)} title={WORDS.coatsOn(piece.name, coats)} />
        ))}
      </ul>
    </Section>
  );
}
