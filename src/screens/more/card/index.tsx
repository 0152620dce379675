import { EmptyState } from '../../../parts/blocks/empty-state';
import { Page } from '../../../parts/blocks/page';
import { linkTo, route } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { cardsOf } from '../../../shop/card/cards';
import { CARD_WORDS } from '../../../words/piece/card';
import { CardList } from './card-list';
import { CardPage } from './card-page';
import { NewCard } from './new-card';

/** Test cards: all of them, a new one, and one. */
export function Cards() {
  const { shop } = useShop();
  const [, id = ''] = route.value.rest;
  const card = cardsOf(shop.value).get(id);
  if (id === 'new') return <NewCard />;
  if (card) return <CardPage key={id} card={card} />;
  if (id === '') return <CardList />;
  return (
    <Page title={CARD_WORDS.one} backTo={linkTo('more', 'cards')}>
      <EmptyState title={CARD_WORDS.unknown} text={CARD_WORDS.gone} />
    </Page>
  );
}
