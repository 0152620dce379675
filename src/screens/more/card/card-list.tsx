import { LinkButton } from '../../../parts/blocks/button';
import { EmptyState } from '../../../parts/blocks/empty-state';
import { Page, Section } from '../../../parts/blocks/page';
import { Row } from '../../../parts/blocks/row';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { cardsOf, type TestCard } from '../../../shop/card/cards';
import { CARD_WORDS as WORDS } from '../../../words/piece/card';
import { whenWords } from '../../../words/times';

/** Every test card, the newest first. */
export function CardList() {
  const { shop, nowMs } = useShop();
  const cards = [...cardsOf(shop.value).values()].reverse();
  return (
    <Page title={WORDS.title} backTo={linkTo('more')} backLabel={WORDS.toMore} keepsPlace>
      <p>{WORDS.lead}</p>
      {cards.length === 0 ? (
        <EmptyState title={WORDS.none} text={WORDS.noneText} />
      ) : (
        <Section title={WORDS.list}>
          <ul class="rows">
            {cards.map((card) => (
              <CardRow key={card.id} card={card} when={whenWords(card.madeMs, nowMs.value)} />
            ))}
          </ul>
        </Section>
      )}
      <div class="acts">
        <LinkButton kind="main" icon="add" isWide href={linkTo('more', 'cards', 'new')}>
          {WORDS.make}
        </LinkButton>
      </div>
    </Page>
  );
}

function CardRow({ card, when }: { readonly card: TestCard; readonly when: string }) {
  const { shop } = useShop();
  const piece = shop.value.pieces.get(card.pieceId ?? '')?.name;
  return (
    <Row href={linkTo('more', 'cards', card.id)} title={piece ? WORDS.beside(piece) : WORDS.alone}>
      <p class="quiet small digits">
        {[
          when,
          WORDS.coats(card.coats.length),
          WORDS.weighings(card.weighings.length),
          ...(card.endedMs === undefined ? [] : [WORDS.ended]),
        ].join(' · ')}
      </p>
    </Row>
  );
}
