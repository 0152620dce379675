import { LinkButton } from '../../../parts/blocks/button';
import { EmptyState } from '../../../parts/blocks/empty-state';
import { Page } from '../../../parts/blocks/page';
import { linkTo, route } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { standsOf } from '../../../shop/zone/stands';
import { ZONE_WORDS as WORDS } from '../../../words/piece/zone';
import { ZoneForm } from './zone-form';
import { ZonePage } from './zone-page';

/** A place on a piece, and the pages behind it: `#/piece/<id>/zone/<zone>`, `…/zone/new`, `…/zone/<zone>/change`. */
export function Zones() {
  const { shop } = useShop();
  const [id = '', , zoneId = '', behind] = route.value.rest;
  const piece = shop.value.pieces.get(id);
  if (piece && zoneId === 'new') return <ZoneForm piece={piece} zone={undefined} />;
  const stand = piece && standsOf(piece, shop.value).find(({ zone }) => zone?.zoneId === zoneId);
  if (!piece || !stand?.zone)
    return (
      <Page title={WORDS.section} backTo={linkTo('piece', id)}>
        <EmptyState title={WORDS.unknown} text={WORDS.unknownText}>
          <LinkButton kind="main" href={linkTo('piece', id)}>
            {WORDS.toPiece}
          </LinkButton>
        </EmptyState>
      </Page>
    );
  if (behind === 'change') return <ZoneForm piece={piece} zone={stand.zone} />;
  return <ZonePage stand={stand} zone={stand.zone} />;
}
