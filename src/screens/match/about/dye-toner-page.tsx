import type { Match } from '../../../logbook/fold/piece/matches';
import { LinkButton } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { passDensity, planToner, type TonerPlan } from '../../../science/pigment/dye-toner';
import { setsOf, targetOf, toleranceOf } from '../../../shop/colour/aim';
import { isFirm, type KnownSurface, readSurface } from '../../../shop/colour/surface';
import { TONER_WORDS as WORDS } from '../../../words/match/tools';
import { differenceText, labText } from '../colour-text';
import { ReadingSets } from '../reading/reading-sets';
import type { OfMatch } from '../use-match';

/** How many passes of a dye toner bring a ground to the target. */
export function DyeTonerPage({ match }: OfMatch) {
  const ground = surfaceOf(match, 'ground');
  const after = newestToned(match);
  const target = targetOf(match).surface;
  return (
    <Page title={WORDS.title} backTo={linkTo('match', match.id)} backLabel={match.name}>
      <p>{WORDS.intro}</p>
      <Section title={WORDS.plan}>
        {!target && <p>{WORDS.needsTarget}</p>}
        {target && ground && after ? (
          <Plan
            plan={planToner(
              ground.lab,
              target.lab,
              passDensity(ground.lab, after.surface.lab, after.passes),
              toleranceOf(match),
            )}
            toleranceE00={toleranceOf(match)}
          />
        ) : (
          <p class="quiet">{WORDS.none}.</p>
        )}
      </Section>
      <Section title={WORDS.ground}>
        <ReadingSets sets={setsOf(match, 'ground')} />
        <div class="acts">
          <LinkButton icon="add" href={linkTo('match', match.id, 'read', 'ground')}>
            {WORDS.readGround}
          </LinkButton>
        </div>
      </Section>
      <Section title={WORDS.toned}>
        {after && <p>{WORDS.afterPasses(after.passes)}</p>}
        <ReadingSets sets={setsOf(match, 'toned')} />
        <div class="acts">
          <LinkButton icon="add" href={linkTo('match', match.id, 'read', 'toned')}>
            {WORDS.readToned}
          </LinkButton>
        </div>
      </Section>
    </Page>
  );
}

function surfaceOf(match: Match, as: 'ground'): KnownSurface | undefined {
  const { surface } = readSurface(setsOf(match, as), match.white);
  return isFirm(surface) ? surface : undefined;
}

/** The toned card that was read last, with its passes. */
function newestToned(match: Match): { readonly surface: KnownSurface; readonly passes: number } | undefined {
  const sets = setsOf(match, 'toned');
  const last = sets.at(-1)?.of;
  if (last?.as !== 'toned') return undefined;
  const alike = sets.filter(({ of }) => of.as === 'toned' && of.passes === last.passes);
  const { surface } = readSurface(alike, match.white);
  return isFirm(surface) ? { surface, passes: last.passes } : undefined;
}

function Plan({ plan, toleranceE00 }: { readonly plan: TonerPlan; readonly toleranceE00: number }) {
  switch (plan.kind) {
    case 'passes':
      return (
        <>
          <p class="outcome-figure digits">{WORDS.passes(plan.fullPasses, plan.endsWithHalfPass)}</p>
          <p>{WORDS.expect(labText(plan.predicted), differenceText(plan.dE00))}</p>
          {plan.dE00 > toleranceE00 && <p>{WORDS.hueOff}</p>}
          <p class="quiet small">{WORDS.last}</p>
        </>
      );
    case 'cannot-be-made-lighter':
      return (
        <Notice kind="stop">
          <p>{WORDS['cannot-be-made-lighter']}</p>
        </Notice>
      );
    case 'already-there':
      return <p>{WORDS['already-there'](differenceText(plan.dE00))}</p>;
    case 'another-toner':
      return <p>{WORDS['another-toner']}</p>;
  }
}
