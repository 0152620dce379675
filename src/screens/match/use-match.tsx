import type { ComponentType } from 'preact';
import type { Match } from '../../logbook/fold/piece/matches';
import { LinkButton } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Page } from '../../parts/blocks/page';
import { linkTo, route } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import type { LotChanges } from '../../shop/colour/lessons';
import { MATCH_WORDS as WORDS } from '../../words/match/match';

export interface OfMatch {
  readonly match: Match;
}

/** A page of a match that is in the logbook; the way back where it is not. */
export function MatchGiven({
  id,
  page: Shown,
}: {
  readonly id: string;
  readonly page: ComponentType<OfMatch>;
}) {
  const match = useShop().shop.value.matches.get(id);
  return match ? <Shown match={match} /> : <NotHere />;
}

export function NotHere() {
  return (
    <Page title={WORDS.title} backTo={linkTo('match')} backLabel={WORDS.back}>
      <EmptyState title={WORDS.notHere} text={WORDS.notHereText}>
        <LinkButton href={linkTo('match')}>{WORDS.toList}</LinkButton>
      </EmptyState>
    </Page>
  );
}

/** Every match of the shop: the same base may have been read for another. */
export const useMatches = (): readonly Match[] => [...useShop().shop.value.matches.values()];

/** When the tinters of a match came from another lot. */
export function useLotChanges({ tinters }: Match): LotChanges {
  const { ingredients } = useShop().shop.value;
  return Object.fromEntries(
    tinters.map(({ ingredient }) => [ingredient, ingredients.get(ingredient)?.lotChangesMs ?? []]),
  );
}

/** The name of an ingredient as the shop has it. */
export function useNames(): (ingredient: string) => string {
  const { ingredients } = useShop().shop.value;
  return (ingredient) => ingredients.get(ingredient)?.name ?? ingredient;
}

/** The words of the address after the page's own: of `#/match/<id>/read/trial/<id>`, `['trial', '<id>']`. */
export const pathOfPage = (): readonly string[] => route.value.rest.slice(2);
