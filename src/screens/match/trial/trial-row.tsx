import type { Match, Trial } from '../../../logbook/fold/piece/matches';
import { Row } from '../../../parts/blocks/row';
import { linkTo } from '../../../parts/frame/route';
import { sidesOf, sideThatCounts } from '../../../shop/colour/judge';
import { MATCH_WORDS as WORDS } from '../../../words/match/match';
import { differenceText, labText } from '../colour-text';
import { ColourFace } from '../swatch';
import { VERDICT_LOOK } from '../verdict-look';

interface TrialRowProps {
  readonly match: Match;
  readonly trial: Trial;
}

/** A trial in a line: its colour, its difference, its verdict. */
export function TrialRow({ match, trial }: TrialRowProps) {
  const side = sideThatCounts(match, sidesOf(match, trial));
  const verdict = side?.judgement?.verdict;
  return (
    <Row
      href={linkTo('match', match.id, 'trial', trial.id)}
      title={WORDS.trial(trial.number)}
      face={<ColourFace colours={side?.surface ? [side.surface.lab] : []} />}
      {...(verdict && { state: VERDICT_LOOK[verdict.kind] })}
    >
      <p class="quiet small">
        {side?.surface ? labText(side.surface.lab) : WORDS.trialUnread}
        {verdict && ` · ΔE00 ${differenceText(verdict.dE00)}`}
      </p>
    </Row>
  );
}
