import { type Signal, useSignal } from '@preact/signals';
import { documented, type Photo } from '../../../logbook/fold/piece/zones';
import { Page, Section } from '../../../parts/blocks/page';
import { SelectField } from '../../../parts/fields/select-field';
import { linkTo } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { PHOTO_WORDS as WORDS } from '../../../words/piece/photo';
import { usePiece } from '../use-piece';
import { MarkPoints } from './mark-points';
import { Overlay } from './overlay';
import type { TwoPoints } from './pair';
import { photoLine } from './photo-line';

const CORNERS: TwoPoints = [
  [0.1, 0.1],
  [0.9, 0.9],
];

/** Two photos over each other by two points each, with a slider between them. */
export function ComparePage({ photos }: { readonly photos: readonly Photo[] }) {
  const { piece } = usePiece();
  return (
    <Page title={WORDS.compare} backTo={linkTo('piece', piece.id, 'photos')} backLabel={WORDS.back}>
      {photos.length < 2 ? <p>{WORDS.two}</p> : <Compare photos={photos} />}
    </Page>
  );
}

function Compare({ photos }: { readonly photos: readonly Photo[] }) {
  const { shop, nowMs } = useShop();
  const { piece } = usePiece();
  const underId = useSignal(photos[0]?.photo ?? '');
  const overId = useSignal(photos.at(-1)?.photo ?? '');
  const of = (id: string): Photo | undefined => photos.find(({ photo }) => photo === id);
  const [under, over] = [of(underId.value), of(overId.value)];
  const known = documented(piece.id, shop.value).alignments.findLast(
    (one) => one.under === underId.value && one.over === overId.value,
  );
  const options = photos.map((photo, i) => ({
    value: photo.photo,
    label: WORDS.describe(i + 1, photoLine(photo, nowMs.value)),
  }));
  const choose = (label: string, id: Signal<string>) => (
    <SelectField
      label={label}
      options={options}
      value={id.value}
      onChange={(value) => {
        id.value = value;
      }}
    />
  );
  return (
    <>
      <Section title={WORDS.compare}>
        {choose(WORDS.under, underId)}
        {choose(WORDS.over, overId)}
        {under && over && <Overlay under={under} over={over} marks={known?.marks ?? both(CORNERS)} />}
      </Section>
      {under && over && (
        <MarkPoints
          key={`${under.photo} ${over.photo}`}
          under={under}
          over={over}
          marks={known?.marks ?? both(CORNERS)}
        />
      )}
    </>
  );
}

const both = (marks: TwoPoints) => ({ under: marks, over: marks });
