import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { LIMITS } from '../../../logbook/limits';
import { Button } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { Page } from '../../../parts/blocks/page';
import { Choice, Problem } from '../../../parts/fields/choice';
import { draftProblem, TypedField } from '../../../parts/fields/typed-field';
import { linkTo } from '../../../parts/frame/route';
import { COLOUR_PHOTO_WORDS as WORDS } from '../../../words/match/colour-photo';
import { PHOTO_FAULTS } from '../../../words/match/photo';
import { type ReadOf, readOf } from '../reading/read-of';
import { useDesk } from '../trial/use-advice';
import { NotHere, type OfMatch, pathOfPage, useNames } from '../use-match';
import { unmoved } from './photo-marks';
import { PhotoPicture } from './photo-picture';
import { PhotoResult } from './photo-result';
import { askOf, choosePhoto, leavePhoto, type PhotoDrafts, type PhotoState, usePhoto } from './use-photo';

/** Reads a colour from a photo, for ranking. */
export function ColourPhotoPage({ match }: OfMatch) {
  const of = readOf(match, pathOfPage(), useNames());
  return of ? <PhotoForm match={match} of={of} /> : <NotHere />;
}

function PhotoForm({ match, of }: OfMatch & { readonly of: ReadOf }) {
  const photo = usePhoto();
  const desk = useDesk();
  const { picture, size, against, reflectance, shown, marks } = photo;
  const isTried = useSignal(false);
  const left = isTried.value && picture.value ? unmoved(marks.value) : [];
  const isCardWrong =
    against.value === 'grey-card' && draftProblem(reflectance.value, LIMITS.reflectance) !== undefined;

  async function read(): Promise<void> {
    const ask = askOf(photo);
    isTried.value = true;
    if (!ask || isCardWrong || unmoved(marks.value).length > 0) return;
    const reading: PhotoState = { state: 'reading' };
    shown.value = reading;
    const answer = await desk()
      .readPhoto(ask)
      .then(
        (read): PhotoState => ({ state: 'read', read }),
        (): PhotoState => ({ state: 'lost' }),
      );
    if (shown.value === reading) shown.value = answer; // else the photo or its marks have changed since
  }

  return (
    <Page title={WORDS.title} backTo={linkTo('match', match.id, 'read', of.as, of.id)} backLabel={of.title}>
      <p>{WORDS.intro}</p>
      <Notice kind="note">
        <p>{WORDS.honest}</p>
      </Notice>
      <ChoosePhoto photo={photo} />
      <AgainstFields photo={photo} />
      {picture.value && <Marking photo={photo} picture={picture.value} />}
      {left.length > 0 && (
        <p class="problem" role="alert" tabIndex={-1}>
          {WORDS.unmoved(left.map((i) => markNames(against.value)[i]).join(', '))}
        </p>
      )}
      {picture.value && (
        <div class="acts">
          <Button
            kind="main"
            isWide
            disabled={!size.value || shown.value.state === 'reading'}
            onClick={() => void read()}
          >
            {WORDS.read}
          </Button>
        </div>
      )}
      <div aria-live="polite">
        <PhotoResult match={match} of={of} state={shown.value} against={against.value} />
      </div>
    </Page>
  );
}

/** The marks by name, in their order. */
const markNames = (against: 'chart' | 'grey-card'): readonly string[] => [
  ...(against === 'chart' ? WORDS.marks.chart : WORDS.marks.card),
  WORDS.marks.sample,
];

function ChoosePhoto({ photo }: { readonly photo: PhotoDrafts }) {
  const id = useId();
  const fault = photo.fault.value;
  return (
    <div class="field">
      <label for={id}>{WORDS.choose}</label>
      <input
        id={id}
        type="file"
        accept="image/*"
        aria-describedby={`${id}-problem`}
        onChange={(event) => void choosePhoto(photo, event.currentTarget.files?.[0])}
      />
      <Problem id={`${id}-problem`} text={fault && PHOTO_FAULTS[fault]} />
    </div>
  );
}

function AgainstFields({ photo: { against, edition, reflectance } }: { readonly photo: PhotoDrafts }) {
  return (
    <>
      <Choice
        label={WORDS.against}
        options={[
          { value: 'chart', ...WORDS.chart },
          { value: 'grey-card', ...WORDS.grey },
        ]}
        value={against.value}
        onChange={(value) => {
          against.value = value;
        }}
      />
      {against.value === 'chart' ? (
        <Choice
          label={WORDS.edition}
          options={(['since-2014', 'before-2014'] as const).map((value) => ({
            value,
            label: WORDS.editions[value],
          }))}
          value={edition.value}
          onChange={(value) => {
            edition.value = value;
          }}
        />
      ) : (
        <TypedField
          label={WORDS.reflectance}
          limit={LIMITS.reflectance}
          draft={reflectance.value}
          onDraft={(draft) => {
            reflectance.value = draft;
          }}
        />
      )}
    </>
  );
}

function Marking({ photo, picture }: { readonly photo: PhotoDrafts; readonly picture: Blob }) {
  const { against, marks, sampleSize, size, shown } = photo;
  const names = markNames(against.value);
  return (
    <>
      <PhotoPicture
        picture={picture}
        names={names}
        marks={marks.value}
        onMarks={(next) => {
          marks.value = next;
          shown.value = { state: 'none' };
        }}
        sampleSize={sampleSize.value}
        onSize={(next) => {
          size.value = next;
        }}
        onBroken={() => leavePhoto(photo, 'not-opened')}
      />
      {against.value === 'chart' && <p class="quiet small">{WORDS.chartHint}</p>}
      <Choice
        label={WORDS.size}
        options={(['small', 'medium', 'large'] as const).map((value) => ({
          value,
          label: WORDS.sizes[value],
        }))}
        value={sampleSize.value}
        onChange={(value) => {
          sampleSize.value = value;
        }}
      />
    </>
  );
}
