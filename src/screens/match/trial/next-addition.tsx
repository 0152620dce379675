import { Button, LinkButton } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import type { Advice, Missing } from '../../../shop/colour/advice';
import { matchJar } from '../../../shop/colour/jar-content';
import { MATCH_WORDS } from '../../../words/match/match';
import { MISSING_WORDS, NEXT_WORDS as WORDS } from '../../../words/match/next';
import { percentWords } from '../../../words/quantities';
import { gramsText } from '../colour-text';
import { type OfMatch, useLotChanges, useMatches, useNames } from '../use-match';
import { Strengths } from './strengths';
import { SuggestionCard } from './suggestion-card';
import { useAdvice } from './use-advice';

/** What to add next, worked out from everything read so far. */
export function NextAddition({ match }: OfMatch) {
  const { shown, retry } = useAdvice(match, useMatches(), useLotChanges(match));
  return (
    <Section title={MATCH_WORDS.next}>
      <div class="stack" aria-live="polite">
        {shown.state === 'working' && <p class="quiet">{WORDS.working}</p>}
        {shown.state === 'lost' && (
          <Notice kind="stop">
            <p>{WORDS.lost}</p>
            <Button onClick={retry}>{WORDS.retry}</Button>
          </Notice>
        )}
        {shown.state === 'ready' && <Shown match={match} advice={shown.advice} />}
      </div>
    </Section>
  );
}

function Shown({ match, advice }: OfMatch & { readonly advice: Advice }) {
  const name = useNames();
  if (advice.kind === 'missing') return <FirstThis match={match} missing={advice.missing} />;
  return (
    <>
      {advice.aim.clear === 'unmoved' && advice.suggestion.kind === 'add' && (
        <p>
          {WORDS.shiftFirst} <a href={linkTo('match', match.id, 'shift')}>{WORDS.toShift}</a>
        </p>
      )}
      <SuggestionCard match={match} advice={advice} />
      <Carried match={match} />
      <Strengths advice={advice} name={name} />
    </>
  );
}

/** Where to go for what is missing. */
function pathFor({ trials }: OfMatch['match'], missing: Missing): readonly string[] {
  if (missing.what === 'target' || missing.what === 'firm-target') return ['read', 'target'];
  if (missing.what === 'white') return ['mix'];
  if (missing.what === 'trial-reading') return ['read', 'trial', missing.trial];
  if (missing.what === 'base-reading' && trials[0]) return ['read', 'trial', trials[0].id];
  return ['tinters'];
}

function FirstThis({ match, missing }: OfMatch & { readonly missing: Missing }) {
  const { text, act } = MISSING_WORDS[missing.what];
  return (
    <>
      <p>{text}</p>
      <div class="acts">
        <LinkButton
          kind="main"
          icon="next"
          href={linkTo('match', match.id, ...pathFor(match, missing))}
          isWide
        >
          {act}
        </LinkButton>
      </div>
    </>
  );
}

/** Clear that came in with let-downs makes the mix hide less. */
function Carried({ match }: OfMatch) {
  const { clearGrams, totalGrams } = matchJar(match);
  if (clearGrams < 0.005 * totalGrams) return null;
  return (
    <p class="quiet small">
      {WORDS.carried(gramsText(clearGrams), percentWords(clearGrams / totalGrams, 1))}
    </p>
  );
}
