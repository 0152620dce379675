import { useEffect } from 'preact/hooks';
import { LinkButton } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Page } from '../../parts/blocks/page';
import { useBeside, usePieceId } from '../../parts/frame/beside';
import { Lazy, type LoadScreen } from '../../parts/frame/lazy';
import { linkTo, route } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { PIECE_WORDS } from '../../words/piece/piece';
import { PiecePage } from './piece-page';

/** Pages of a piece that are fetched when asked for. */
const PAGES: Readonly<Record<string, LoadScreen>> = {
  new: async () => (await import('./start/start-page')).StartPage,
  why: async () => (await import('./why/why-page')).WhyPage,
  check: async () => (await import('./sanding/check-page')).CheckPage,
  sand: async () => (await import('./sanding/sand-page')).SandPage,
  ground: async () => (await import('./ground/ground-page')).GroundPage,
  old: async () => (await import('./old-finish/old-finish-page')).OldFinishPage,
  correct: async () => (await import('./coat/correct-page')).CorrectPage,
  change: async () => (await import('./start/change-page')).ChangePage,
  label: async () => (await import('./hanger-page')).HangerPage,
  photos: async () => (await import('./photo')).Photos,
  toner: async () => (await import('./zone/toner-page')).TonerPage,
  zone: async () => (await import('./zone')).Zones,
  words: async () => (await import('./record/words-page')).WordsPage,
  record: async () => (await import('./record/record-page')).RecordPage,
};

/** One piece and its finish, and the pages behind it. */
export function Piece() {
  const { shop, look } = useShop();
  const id = usePieceId();
  const behind = useBeside() ? '' : (route.value.rest[1] ?? '');
  const piece = shop.value.pieces.get(id);
  const page = id === 'new' ? 'new' : behind;
  const load = Object.hasOwn(PAGES, page) ? PAGES[page] : undefined;
  useEffect(() => {
    look(id === 'new' ? undefined : id);
  }, [id, look]);
  if (id !== 'new' && !piece) return <NoSuchPiece />;
  if (load) return <Lazy load={load} />;
  return piece ? <PiecePage piece={piece} /> : null;
}

const NoSuchPiece = () => (
  <Page title={PIECE_WORDS.title} backTo={linkTo('bench')}>
    <EmptyState title={PIECE_WORDS.unknown} text={PIECE_WORDS.unknownText}>
      <LinkButton kind="main" href={linkTo('bench')}>
        {PIECE_WORDS.toBench}
      </LinkButton>
    </EmptyState>
  </Page>
);
