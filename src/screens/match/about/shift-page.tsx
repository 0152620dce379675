import { LinkButton } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { aimFor, type ReadShift, setsOf, shiftOf, targetOf } from '../../../shop/colour/aim';
import { SHIFT_WORDS as WORDS } from '../../../words/match/tools';
import { TRIAL_WORDS } from '../../../words/match/trial';
import { labText, signedText } from '../colour-text';
import { ReadingSets } from '../reading/reading-sets';
import type { OfMatch } from '../use-match';

/** What clear does to the colour, and where the bare opaque is to be aimed. */
export function ShiftPage({ match }: OfMatch) {
  const read = shiftOf(match);
  return (
    <Page title={WORDS.title} backTo={linkTo('match', match.id)} backLabel={match.name}>
      <p>{WORDS.intro}</p>
      {match.through === 'bare' && <p>{WORDS.bareTarget}</p>}
      {read ? <Shift match={match} read={read} /> : <p class="quiet">{WORDS.none}.</p>}
      <p class="quiet small">{WORDS.usual}</p>
      <div class="acts">
        <LinkButton icon="add" href={linkTo('match', match.id, 'read', 'card')}>
          {read ? TRIAL_WORDS.readAgain : WORDS.readBare}
        </LinkButton>
      </div>
      <p class="quiet small">{WORDS.halves}</p>
      <Section title={TRIAL_WORDS.readings}>
        <ReadingSets sets={setsOf(match, 'card')} />
      </Section>
    </Page>
  );
}

function Shift({ match, read }: OfMatch & { readonly read: ReadShift }) {
  const { shift, on, clearCoats } = read;
  const target = targetOf(match).surface;
  const aim = match.through === 'clear' ? aimFor(match, 'bare') : undefined;
  const parts = [shift.dL, shift.da, shift.db].map((part) => signedText(part, 1)).join(' / ');
  return (
    <>
      <p class="quiet">
        {on === 'card' ? WORDS.onCard : WORDS.onTrial(on)}, {WORDS.coats(clearCoats)}
      </p>
      <dl class="facts wide">
        <div>
          <dt>{WORDS.shift}</dt>
          <dd class="digits">{parts}</dd>
        </div>
        {target && (
          <div>
            <dt>{WORDS.target}</dt>
            <dd class="digits">{labText(target.lab)}</dd>
          </div>
        )}
        {aim && (
          <div>
            <dt>{WORDS.aim}</dt>
            <dd class="digits">{labText(aim.surface.lab)}</dd>
          </div>
        )}
      </dl>
      <p class="quiet small">{WORDS.rest}</p>
    </>
  );
}
