import { useSignal } from '@preact/signals';
import { takePhoto } from '../../../actions/photo/take-photo';
import { type Photo, zonesOf } from '../../../logbook/fold/piece/zones';
import { PHOTO_LIGHTS, PHOTO_STAGES, RAKING_FROM } from '../../../logbook/kinds/piece/photo';
import { LinkButton } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { Problem } from '../../../parts/fields/choice';
import { OneOf, Words } from '../../../parts/fields/form/form-fields';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { SelectField } from '../../../parts/fields/select-field';
import { linkTo, route } from '../../../parts/frame/route';
import { useShop } from '../../../parts/frame/shop-context';
import { sayLogged } from '../../../parts/frame/undo';
import { OF_PIECE, smallPicture } from '../../../parts/photo/small-picture';
import { photos as store, useKeptPhoto } from '../../../parts/photo/use-kept-photo';
import { PHOTO_FAULTS } from '../../../words/match/photo';
import { PHOTO_WORDS as WORDS } from '../../../words/piece/photo';
import { usePiece } from '../use-piece';
import { PhotoButton } from './photo-button';
import { photoLine } from './photo-line';

const options = <Value extends string>(
  values: readonly Value[],
  words: Record<Value, { readonly label: string; readonly hint?: string }>,
) => values.map((value) => ({ value, ...words[value] }));
const STAGES = options(PHOTO_STAGES, WORDS.stages);
const LIGHTS = options(PHOTO_LIGHTS, WORDS.lights);
const FROMS = options(RAKING_FROM, WORDS.froms);
const WHOLE = 'whole';

/** Every photo of a piece, and the way to take one. */
export function PhotosPage({ photos }: { readonly photos: readonly Photo[] }) {
  const { piece, home } = usePiece();
  return (
    <Page title={WORDS.title} backTo={home} backLabel={piece.name}>
      <TakePhoto stage={photos.at(-1)?.stage ?? 'before'} />
      <Section title={piece.name}>
        {photos.length === 0 && <p class="quiet">{WORDS.none}</p>}
        <ul class="photo-list">
          {photos.map((photo, i) => (
            <Thumbnail key={photo.photo} photo={photo} number={i + 1} />
          ))}
        </ul>
        {photos.length > 1 && (
          <div class="acts">
            <LinkButton icon="match" href={linkTo('piece', piece.id, 'photos', 'compare')}>
              {WORDS.compare}
            </LinkButton>
          </div>
        )}
      </Section>
    </Page>
  );
}

function Thumbnail({ photo, number }: { readonly photo: Photo; readonly number: number }) {
  const nowMs = useShop().nowMs.value;
  const address = useKeptPhoto(photo.photo);
  const line = photoLine(photo, nowMs);
  return (
    <li>
      <a href={linkTo('piece', photo.piece, 'photos', photo.photo)}>
        {address && address !== 'away' && <img src={address} alt={WORDS.describe(number, line)} />}
        {address === 'away' && <span class="quiet">{WORDS.away}</span>}
        <span class="small">{line}</span>
        {photo.text && <span class="small quiet">{photo.text}</span>}
      </a>
    </li>
  );
}

function TakePhoto({ stage: usual }: { readonly stage: Photo['stage'] }) {
  const { shop } = useShop();
  const { piece } = usePiece();
  const stage = useSignal<Photo['stage']>(usual);
  const light = useSignal<Photo['light']>('plain');
  const from = useSignal<NonNullable<Photo['rakingFrom']>>('left');
  const zone = useSignal<string>(route.value.query.get('zone') ?? WHOLE);
  const text = useSignal('');
  const said = () => ({
    piece: piece.id,
    stage: stage.value,
    light: light.value,
    ...(light.value === 'raking' && { rakingFrom: from.value }),
    ...(zone.value !== WHOLE && { zoneId: zone.value }),
    ...(text.value.trim() && { text: text.value.trim() }),
  });
  const { form, problem, keep } = useTaking(said, () => {
    text.value = ''; // it was about that photo
  });
  const zones = zonesOf(piece.id, shop.value);
  return (
    <Section title={WORDS.take}>
      <OneOf label={WORDS.stage} of={stage} options={STAGES} />
      <OneOf label={WORDS.light} of={light} options={LIGHTS} />
      {light.value === 'raking' && <OneOf label={WORDS.from} of={from} options={FROMS} />}
      {zones.length > 0 && (
        <SelectField
          label={WORDS.of}
          options={[
            { value: WHOLE, label: WORDS.whole },
            ...zones.map(({ zoneId, name }) => ({ value: zoneId, label: name })),
          ]}
          value={zone.value}
          onChange={(value) => {
            zone.value = value;
          }}
        />
      )}
      <Words label={WORDS.words} hint={WORDS.wordsHint} of={text} form={form} at="text" />
      <Refusal refused={form.refused.value} />
      <PhotoButton onFile={(file) => void keep(file)} disabled={form.isBusy.value}>
        {WORDS.choose}
      </PhotoButton>
      <Problem id="photo-problem" text={problem.value} />
      <p class="quiet small">{WORDS.text}</p>
    </Section>
  );
}

function useTaking(said: () => Parameters<typeof takePhoto>[2], onKept: () => void) {
  const { needs, actions } = useShop();
  const form = useForm();
  const problem = useSignal<string | undefined>(undefined);

  async function keep(file: File): Promise<void> {
    problem.value = undefined;
    const small = await smallPicture(file, OF_PIECE);
    if (!small.ok) {
      problem.value = PHOTO_FAULTS[small.failure];
      return;
    }
    const kept = await form.send(true, () =>
      takePhoto(needs, store, said(), { ...small.value, original: file }),
    );
    if (!kept) return;
    onKept();
    sayLogged(actions, kept.id, WORDS.photo, WORDS.kept);
  }

  return { form, problem, keep };
}
