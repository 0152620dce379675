import { EmptyState } from '../../parts/blocks/empty-state';
import { Page, Section } from '../../parts/blocks/page';
import { Row } from '../../parts/blocks/row';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { AIR_WORDS } from '../../words/air/air';
import { OLD_WORDS as WORDS } from '../../words/piece/old-finish';

/** Leads to the old finish of a piece. */
export function OldPieces() {
  const open = [...useShop().shop.value.pieces.values()].filter(({ closedMs }) => closedMs === undefined);
  return (
    <Page title={WORDS.what} backTo={linkTo('air')} backLabel={AIR_WORDS.back}>
      {open.length === 0 ? (
        <EmptyState title={WORDS.choose} text={WORDS.noPieces} />
      ) : (
        <Section title={WORDS.choose}>
          <ul class="rows">
            {open.map(({ id, name }) => (
              <Row key={id} href={linkTo('piece', id, 'old')} title={name} />
            ))}
          </ul>
        </Section>
      )}
    </Page>
  );
}
