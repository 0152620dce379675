import { LinkButton } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { setsOf, targetOf } from '../../../shop/colour/aim';
import { MATCH_WORDS } from '../../../words/match/match';
import { STAND_WORDS } from '../../../words/match/next';
import { TRIAL_WORDS as WORDS } from '../../../words/match/trial';
import { labText } from '../colour-text';
import { AsideNotes, ReadingsLine } from '../difference';
import { ReadingSets } from '../reading/reading-sets';
import { ColourFace } from '../swatch';
import type { OfMatch } from '../use-match';
import { Yellowness } from './yellowness';

/** The target as it was read. */
export function TargetPage({ match }: OfMatch) {
  const { surface, leftAside } = targetOf(match);
  return (
    <Page title={MATCH_WORDS.target} backTo={linkTo('match', match.id)} backLabel={match.name}>
      {surface ? (
        <div class="stack">
          <div class="big-colour">
            <ColourFace colours={[surface.lab]} />
            <p class="outcome-figure digits">{labText(surface.lab)}</p>
          </div>
          <ReadingsLine surface={surface} />
          {!surface.isDry && <p>{STAND_WORDS.wetNote}</p>}
          {surface.by === 'camera' && <p>{STAND_WORDS.cameraNote}</p>}
        </div>
      ) : (
        <p>{MATCH_WORDS.targetNone}.</p>
      )}
      <AsideNotes leftAside={leftAside} match={match} />
      <div class="acts">
        <LinkButton
          kind={surface ? 'usual' : 'main'}
          icon="add"
          href={linkTo('match', match.id, 'read', 'target')}
          isWide
        >
          {surface ? WORDS.readAgain : MATCH_WORDS.readTarget}
        </LinkButton>
      </div>
      <Section title={WORDS.readings}>
        <ReadingSets sets={setsOf(match, 'target')} />
      </Section>
      {surface && (
        <Section title={WORDS.yellowness}>
          <Yellowness sample={surface.lab} target={undefined} />
        </Section>
      )}
    </Page>
  );
}
