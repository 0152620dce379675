import type { Match } from '../../../logbook/fold/piece/matches';
import { LinkButton } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { baseOf, tintsOf } from '../../../shop/colour/model';
import { FORM_WORDS } from '../../../words/match/form';
import { MATCH_WORDS } from '../../../words/match/match';
import { TINTER_WORDS as WORDS } from '../../../words/match/tools';
import { percentWords } from '../../../words/quantities';
import { labText } from '../colour-text';
import { ReadingSets } from '../reading/reading-sets';
import { ColourFace } from '../swatch';
import { type OfMatch, useMatches, useNames } from '../use-match';

/** What is known of each tinter, and its draw-downs. */
export function TintersPage({ match }: OfMatch) {
  const name = useNames();
  const base = baseOf(match, useMatches());
  return (
    <Page title={WORDS.title} backTo={linkTo('match', match.id)} backLabel={match.name}>
      <p>{WORDS.intro}</p>
      <Section title={`${WORDS.base}: ${name(match.base)}`}>
        {base ? (
          <div class="big-colour">
            <ColourFace colours={[base.lab]} />
            <p class="digits">{labText(base.lab)}</p>
          </div>
        ) : (
          <p class="quiet">{WORDS.baseNone}</p>
        )}
      </Section>
      {match.tinters.map((tinter) => (
        <Tinter key={tinter.ingredient} match={match} tinter={tinter} />
      ))}
      <div class="acts">
        <LinkButton kind="plain" href={linkTo('match', match.id, 'change')}>
          {MATCH_WORDS.change}
        </LinkButton>
      </div>
    </Page>
  );
}

function Tinter({ match, tinter }: OfMatch & { readonly tinter: Match['tinters'][number] }) {
  const name = useNames();
  const tints = tintsOf(tinter.ingredient, match, useMatches());
  const own = match.readings.filter(({ of }) => of.as === 'tint' && of.tinter === tinter.ingredient);
  return (
    <Section title={name(tinter.ingredient)}>
      {tints.length > 0 ? (
        <ul class="rungs">
          {tints.map(({ share, surface }) => (
            <li key={share}>
              <ColourFace colours={[surface.lab]} />
              <span class="digits">{WORDS.rung(percentWords(share, 2), labText(surface.lab))}</span>
            </li>
          ))}
        </ul>
      ) : (
        <p>{tinter.like ? WORDS.like(FORM_WORDS.usual[tinter.like]) : WORDS.unknown}</p>
      )}
      {own.length > 0 && <ReadingSets sets={own} />}
      <div class="acts">
        <LinkButton icon="add" href={linkTo('match', match.id, 'read', 'tint', tinter.ingredient)}>
          {WORDS.draw}
        </LinkButton>
      </div>
    </Section>
  );
}
