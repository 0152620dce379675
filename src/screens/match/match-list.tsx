import type { Match } from '../../logbook/fold/piece/matches';
import { LinkButton } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Page, Section } from '../../parts/blocks/page';
import { Row } from '../../parts/blocks/row';
import { linkTo } from '../../parts/frame/route';
import { targetOf, toleranceOf } from '../../shop/colour/aim';
import { sidesOf, sideThatCounts } from '../../shop/colour/judge';
import { lightWords, MATCH_WORDS as WORDS } from '../../words/match/match';
import { numberWords } from '../../words/quantities';
import { differenceText } from './colour-text';
import { ColourFace } from './swatch';
import { useMatches } from './use-match';
import { VERDICT_LOOK } from './verdict-look';

/** Every match, those in hand first. */
export function MatchList() {
  const matches = useMatches().toReversed();
  const open = matches.filter(({ putAwayMs }) => putAwayMs === undefined);
  const away = matches.filter(({ putAwayMs }) => putAwayMs !== undefined);
  if (matches.length === 0)
    return (
      <Page title={WORDS.title}>
        <EmptyState title={WORDS.empty} text={WORDS.emptyText}>
          <StartButton />
        </EmptyState>
        <p class="quiet">{WORDS.needs}</p>
      </Page>
    );
  return (
    <Page title={WORDS.title}>
      <Section title={WORDS.open}>
        <Rows matches={open} />
        <div class="acts">
          <StartButton />
        </div>
      </Section>
      {away.length > 0 && (
        <Section title={WORDS.away}>
          <Rows matches={away} />
        </Section>
      )}
    </Page>
  );
}

const StartButton = () => (
  <LinkButton kind="main" icon="add" href={linkTo('match', 'new')} isWide>
    {WORDS.start}
  </LinkButton>
);

const Rows = ({ matches }: { readonly matches: readonly Match[] }) => (
  <ul class="rows">
    {matches.map((match) => (
      <MatchRow key={match.id} match={match} />
    ))}
  </ul>
);

function MatchRow({ match }: { readonly match: Match }) {
  const target = targetOf(match).surface;
  const last = match.trials.findLast(({ readings }) => readings.length > 0);
  const side = last && sideThatCounts(match, sidesOf(match, last));
  const colours = [target, side?.surface].flatMap((surface) => (surface ? [surface.lab] : []));
  const verdict = side?.judgement?.verdict;
  return (
    <Row
      href={linkTo('match', match.id)}
      title={match.name}
      face={<ColourFace colours={colours} />}
      {...(verdict && { state: VERDICT_LOOK[verdict.kind] })}
    >
      <p class="quiet small">
        {verdict ? `ΔE00 ${differenceText(verdict.dE00)} · ` : ''}
        {lineOf(match)}
      </p>
    </Row>
  );
}

/** Place, tolerance and light in a line. */
export const lineOf = (match: Match): string =>
  WORDS.line(WORDS.places[match.place], numberWords(toleranceOf(match), 2), lightWords(match.white));
