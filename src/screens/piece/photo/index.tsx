import { documented } from '../../../logbook/fold/piece/zones';
import { route } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { usePiece } from '../use-piece';
import { ComparePage } from './compare-page';
import { PhotoPage } from './photo-page';
import { PhotosPage } from './photos-page';

/** Photos of a piece: all of them, one of them, or two compared: `#/piece/<id>/photos`, `…/photos/<photo>`, `…/photos/compare`. */
export function Photos() {
  const { piece } = usePiece();
  const { photos } = documented(piece.id, useShop().shop.value);
  const [, , which = ''] = route.value.rest;
  const number = photos.findIndex(({ photo }) => photo === which);
  const photo = photos[number];
  if (photo) return <PhotoPage photo={photo} number={number + 1} />;
  return which === 'compare' ? <ComparePage photos={photos} /> : <PhotosPage photos={photos} />;
}
