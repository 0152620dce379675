import type { Piece } from '../../../logbook/fold/piece/pieces';
import { documented } from '../../../logbook/fold/piece/zones';
import { LinkButton } from '../../../parts/blocks/button';
import { Fold } from '../../../parts/blocks/fold';
import { Row } from '../../../parts/blocks/row';
import { PieceFace } from '../../../parts/film/piece-face';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { standById } from '../../../shop/zone/stands';
import { PHOTO_WORDS } from '../../../words/piece/photo';
import { ZONE_WORDS as WORDS } from '../../../words/piece/zone';
import { zoneLine } from './zone-line';

/** The places marked on a piece, and the way to mark one. */
export function Places({ piece }: { readonly piece: Piece }) {
  const { shop } = useShop();
  const units = useUnits();
  const { zones, photos } = documented(piece.id, shop.value);
  return (
    <Fold title={WORDS.section} brief={WORDS.brief(zones.length, photos.length)}>
      {zones.length === 0 ? (
        <p class="quiet">{WORDS.none}</p>
      ) : (
        <ul class="rows">
          {zones.map((zone) => (
            <Row
              key={zone.zoneId}
              href={linkTo('piece', piece.id, 'zone', zone.zoneId)}
              title={zone.name}
              face={
                <PieceFace piece={standById(zone.zoneId, shop.value)?.piece ?? piece} standId={zone.zoneId} />
              }
            >
              <p class="quiet small digits">{zoneLine(zone, units)}</p>
            </Row>
          ))}
        </ul>
      )}
      <div class="acts">
        {piece.closedMs === undefined && (
          <LinkButton icon="add" href={linkTo('piece', piece.id, 'zone', 'new')}>
            {WORDS.mark}
          </LinkButton>
        )}
        <LinkButton icon="match" href={linkTo('piece', piece.id, 'photos')}>
          {PHOTO_WORDS.link(photos.length)}
        </LinkButton>
      </div>
    </Fold>
  );
}
