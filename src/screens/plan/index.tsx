import { LinkButton } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Page } from '../../parts/blocks/page';
import { Lazy, type LoadScreen } from '../../parts/frame/lazy';
import { linkTo, route } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { PIECE_WORDS } from '../../words/piece/piece';
import { PLAN_WORDS } from '../../words/plan/plan';
import { PlanHome } from './plan-home';

/** Pages of the plan that are fetched when asked for. */
const PAGES: Readonly<Record<string, LoadScreen>> = {
  hours: async () => (await import('./hours/hours-page')).HoursPage,
  reminders: async () => (await import('./reminders/reminders-page')).RemindersPage,
};
const OF_A_PIECE: Readonly<Record<string, LoadScreen>> = {
  '': async () => (await import('./piece-plan-page')).PiecePlanPage,
  start: async () => (await import('./start-plan-page')).StartPlanPage,
  owner: async () => (await import('./promise/owner-page')).OwnerPage,
};

/** The plan of the bench, and the pages behind it. */
export function Plan() {
  const { pieces, plans } = useShop().shop.value;
  const [first = '', behind = ''] = route.value.rest;
  if (first === '') return <PlanHome />;
  const page = Object.hasOwn(PAGES, first) ? PAGES[first] : undefined;
  if (page) return <Lazy load={page} />;
  const ofPiece = Object.hasOwn(OF_A_PIECE, behind) ? OF_A_PIECE[behind] : undefined;
  if (!pieces.has(first) || !ofPiece) return <NoSuchPiece />;
  const start = plans.has(first) ? undefined : OF_A_PIECE['start'];
  // The key also changes when the first plan is made, for the address stays as it was.
  return <Lazy key={start ? 'start' : behind} load={start ?? ofPiece} />;
}

const NoSuchPiece = () => (
  <Page title={PLAN_WORDS.title} backTo={linkTo('plan')}>
    <EmptyState title={PIECE_WORDS.unknown} text={PIECE_WORDS.unknownText}>
      <LinkButton kind="main" href={linkTo('plan')}>
        {PLAN_WORDS.toPlan}
      </LinkButton>
    </EmptyState>
  </Page>
);
