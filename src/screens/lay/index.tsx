import { LinkButton } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Page } from '../../parts/blocks/page';
import { linkTo } from '../../parts/frame/route';
import { useShop } from '../../parts/frame/shop-context';
import { LAY_EMPTY, LAY_WORDS } from '../../words/piece/coat/lay';
import { LayForm } from './lay-form';

/** Marks a coat; without a piece or a jar it says which comes first. */
export function Lay() {
  const { pieces, jars } = useShop().shop.value;
  const hasPiece = [...pieces.values()].some(({ closedMs }) => closedMs === undefined);
  const hasJar = [...jars.values()].some(({ emptiedMs }) => emptiedMs === undefined);
  return (
    <Page title={LAY_WORDS.title} backTo={linkTo('bench')} backLabel={LAY_WORDS.back}>
      {!hasPiece && (
        <EmptyState title={LAY_EMPTY.noPiece} text={LAY_EMPTY.noPieceText}>
          <LinkButton kind="main" icon="add" href={linkTo('piece', 'new')}>
            {LAY_EMPTY.startPiece}
          </LinkButton>
        </EmptyState>
      )}
      {hasPiece && !hasJar && (
        <EmptyState title={LAY_EMPTY.noJar} text={LAY_EMPTY.noJarText}>
          <LinkButton
            kind="main"
            icon="mix"
            href={`${linkTo('mix', 'jar', 'new')}?back=${encodeURIComponent(location.hash || linkTo('lay'))}`}
          >
            {LAY_EMPTY.fillJar}
          </LinkButton>
        </EmptyState>
      )}
      {hasPiece && hasJar && <LayForm />}
    </Page>
  );
}
