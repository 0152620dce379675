import { type Photo, type Zone, zonesOf } from '../../../logbook/fold/piece/zones';
import { LinkButton } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { type DrawnZone, OutlinedPhoto } from '../../../parts/photo/outlined-photo';
import { PHOTO_WORDS as WORDS } from '../../../words/piece/photo';
import { ZONE_WORDS } from '../../../words/piece/zone';
import { DrawZone } from './draw-zone';
import { photoLine } from './photo-line';

interface PhotoPageProps {
  readonly photo: Photo;
  readonly number: number;
}

/** One photo, with the places drawn on it, and the way to draw one. */
export function PhotoPage({ photo, number }: PhotoPageProps) {
  const { shop, nowMs } = useShop();
  const zones = zonesOf(photo.piece, shop.value);
  const line = photoLine(photo, nowMs.value);
  return (
    <Page
      title={WORDS.describe(number, WORDS.stages[photo.stage].label)}
      backTo={linkTo('piece', photo.piece, 'photos')}
      backLabel={WORDS.back}
    >
      <figure class="stack">
        <OutlinedPhoto
          id={photo.photo}
          describe={WORDS.describe(number, line)}
          width={photo.width}
          height={photo.height}
          zones={drawnOn(photo, zones)}
        />
        <figcaption>{[line, photo.text].filter(Boolean).join('. ')}</figcaption>
      </figure>
      <Section title={WORDS.draw}>
        {zones.length > 0 ? (
          <DrawZone photo={photo} zones={zones} />
        ) : (
          <>
            <p>{WORDS.noPlaces}</p>
            <div class="acts">
              <LinkButton icon="add" href={linkTo('piece', photo.piece, 'zone', 'new')}>
                {ZONE_WORDS.mark}
              </LinkButton>
            </div>
          </>
        )}
      </Section>
    </Page>
  );
}

/** The places drawn on a photo, numbered as on the piece. */
export const drawnOn = ({ photo }: Photo, zones: readonly Zone[]): readonly DrawnZone[] =>
  zones.flatMap(({ outlines }, i) => {
    const outline = outlines.get(photo);
    return outline ? [{ number: i + 1, outline }] : [];
  });
