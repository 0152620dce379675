import { awaitedStand, ownOutlooks } from '../../actions/outlook/awaited';
import type { Outlook } from '../../actions/outlook/outlook';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { LinkButton } from '../../parts/blocks/button';
import { Fold } from '../../parts/blocks/fold';
import { Notice } from '../../parts/blocks/notice';
import { Page, Section } from '../../parts/blocks/page';
import { Row } from '../../parts/blocks/row';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { CureNotes } from '../../parts/time/cure-notes';
import { cardsBeside } from '../../shop/card/cards';
import { standsOf } from '../../shop/zone/stands';
import { HANGER_WORDS } from '../../words/piece/hanger';
import { CARD_LINK_WORDS, PIECE_WORDS } from '../../words/piece/piece';
import { ZONE_WORDS } from '../../words/piece/zone';
import { whenWords } from '../../words/times';
import { Acts } from './acts';
import { LoggedTwice } from './coat/logged-twice';
import { Finish } from './finish';
import { Headline } from './headline';
import { History } from './history';
import { Matches } from './matches';
import { MilestoneList } from './milestone-list';
import { OldFinishSummary } from './old-finish/summary';
import { Places } from './zone/places';

/** One piece: when it may be touched, its finish cut through, what may be done, and what was done. */
export function PiecePage({ piece }: { readonly piece: Piece }) {
  const { outlooks, nowMs } = useShop();
  const outlook = outlooks.value.get(piece.id);
  const isOpen = piece.closedMs === undefined;
  const times = isOpen ? outlook?.state : undefined;
  const isToCome =
    isOpen && piece.coats.length > 0 && (times === undefined || times === 'computing' || times === 'kept');
  return (
    <Page title={piece.name} backTo={linkTo('bench')} backLabel={PIECE_WORDS.toBench} columns="two">
      <div class="stack">
        {isOpen ? (
          <Headline piece={piece} outlook={outlook} />
        ) : (
          <Notice kind="note">
            <p>{PIECE_WORDS.closedNote(whenWords(piece.closedMs ?? 0, nowMs.value))}</p>
          </Notice>
        )}
        <LoggedTwice piece={piece} />
        {piece.note && <p class="as-written">{piece.note}</p>}
        {isOpen && <Acts piece={piece} />}
        <WaitsFor piece={piece} />
        {outlook && times === 'ready' && <Times piece={piece} outlook={outlook} />}
        {isToCome && <TimesToCome />}
      </div>
      <div class="stack">
        <Section title={PIECE_WORDS.finish}>
          <Finish piece={piece} outlook={outlook} />
        </Section>
        <div class="folds">
          <History piece={piece} />
          <div class="acts">
            {isOpen && <LinkButton href={linkTo('plan', piece.id)}>{PIECE_WORDS.plan}</LinkButton>}
            {isOpen && (
              <LinkButton href={linkTo('piece', piece.id, 'ground')}>{PIECE_WORDS.ground}</LinkButton>
            )}
            <LinkButton href={`${linkTo('piece', 'new')}?like=${piece.id}`}>{PIECE_WORDS.another}</LinkButton>
          </div>
          <Places piece={piece} />
          <OldFinishSummary piece={piece} />
          <Matches piece={piece} />
          <Papers piece={piece} />
        </div>
      </div>
    </Page>
  );
}

/** The test card beside the piece, or a new one. */
function CardLink({ piece }: { readonly piece: string }) {
  const [card] = cardsBeside(piece, useShop().shop.value);
  return (
    <LinkButton
      icon="check"
      href={card ? linkTo('more', 'cards', card.id) : `${linkTo('more', 'cards', 'new')}?piece=${piece}`}
    >
      {CARD_LINK_WORDS[card ? 'card' : 'make']}
    </LinkButton>
  );
}

/** Its details, and what is printed of it. */
const Papers = ({ piece }: { readonly piece: Piece }) => (
  <Fold title={PIECE_WORDS.details} brief={PIECE_WORDS.detailsBrief}>
    <div class="acts">
      <LinkButton icon="edit" href={linkTo('piece', piece.id, 'change')}>
        {PIECE_WORDS.change}
      </LinkButton>
      <LinkButton icon="print" href={linkTo('piece', piece.id, 'record')}>
        {PIECE_WORDS.record}
      </LinkButton>
      <LinkButton icon="print" href={linkTo('piece', piece.id, 'label')}>
        {HANGER_WORDS.link}
      </LinkButton>
      {piece.closedMs === undefined && <CardLink piece={piece.id} />}
      {piece.closedMs === undefined && (
        <LinkButton icon="match" href={`${linkTo('match', 'new')}?piece=${piece.id}`}>
          {PIECE_WORDS.startMatch}
        </LinkButton>
      )}
    </div>
  </Fold>
);

/** Which place the piece waits for, where places are marked on it. */
function WaitsFor({ piece }: { readonly piece: Piece }) {
  const { shop, outlooks } = useShop();
  const stand = awaitedStand(piece, shop.value, ownOutlooks(piece, outlooks.value));
  if (!stand || standsOf(piece, shop.value).length === 1) return null;
  return <p>{ZONE_WORDS.waitsFor(stand.zone?.name ?? ZONE_WORDS.whole)}</p>;
}

const Times = ({ piece, outlook }: { readonly piece: Piece; readonly outlook: Outlook }) => (
  <Section title={PIECE_WORDS.milestones}>
    <MilestoneList piece={piece} outlook={outlook} />
    <CureNotes piece={piece} outlook={outlook} />
    <ul class="rows folds">
      <Row href={linkTo('piece', piece.id, 'why')} title={PIECE_WORDS.why} />
    </ul>
  </Section>
);

/** Their place, kept free: what stands below must not move away under the thumb. */
const TimesToCome = () => (
  <Section title={PIECE_WORDS.milestones}>
    <div class="times-to-come" />
  </Section>
);
