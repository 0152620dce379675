import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import { photographCard } from '../../../actions/mix/card-photo';
import type { Recipe } from '../../../logbook/fold/recipes';
import { checkPicture } from '../../../logbook/picture/check-picture';
import { openPhotos } from '../../../logbook/storage/photos';
import { Problem } from '../../../parts/fields/choice';
import { Icon } from '../../../parts/frame/icons';
import { Section } from '../../../parts/frame/page';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { PHOTO_FAULTS } from '../../../words/match/photo';
import { RECIPE_WORDS as WORDS } from '../../../words/mix/recipe';
import { smallPicture } from './small-picture';

const photos = openPhotos();

/** Photos of the dried card, and a way to take one. */
export function CardPhotos({ recipe }: { readonly recipe: Recipe }) {
  const { needs, actions } = useShop();
  const problem = useSignal<string | undefined>(undefined);
  const id = useId();
  async function keep(file: File | undefined): Promise<void> {
    if (!file) return;
    problem.value = undefined;
    const small = await smallPicture(file);
    if (!small.ok) {
      problem.value = PHOTO_FAULTS[small.failure];
      return;
    }
    const kept = await photographCard(needs, photos, recipe.id, small.value);
    if (kept.ok) showToast({ text: WORDS.photoKept, onUndo: () => void actions.undo(kept.value.id) });
    else problem.value = kept.failure.sentence;
  }
  return (
    <Section title={WORDS.card}>
      {recipe.photos.length > 0 && (
        <div class="photos">
          {[...recipe.photos.entries()].map(([i, photo]) => (
            <Photo key={photo} id={photo} describe={WORDS.photoHere(i + 1)} />
          ))}
        </div>
      )}
      <label class="button file-button" for={id}>
        <Icon name="add" />
        <span>{WORDS.photograph}</span>
        <input
          id={id}
          type="file"
          accept="image/*"
          capture="environment"
          onChange={({ currentTarget }) => {
            void keep(currentTarget.files?.[0]);
            currentTarget.value = ''; // so that the same file can be chosen again
          }}
        />
      </label>
      <Problem id={`${id}-problem`} text={problem.value} />
      <p class="quiet small">{WORDS.photoText}</p>
    </Section>
  );
}

function Photo({ id, describe }: { readonly id: string; readonly describe: string }) {
  const address = useSignal<string | 'away' | undefined>(undefined);
  useEffect(() => {
    let made: string | undefined;
    let isShown = true;
    void readWhole(id).then((picture) => {
      if (!isShown) return;
      made = picture && URL.createObjectURL(picture);
      address.value = made ?? 'away';
    });
    return () => {
      isShown = false;
      if (made) URL.revokeObjectURL(made);
    };
  }, [id, address]);
  if (address.value === 'away') return <p class="quiet">{WORDS.photoAway}</p>;
  return address.value === undefined ? null : <img src={address.value} alt={describe} />;
}

/** The photo, where it is here and is one: a backup may have brought anything. */
async function readWhole(id: string): Promise<Blob | undefined> {
  const picture = await photos.read(id);
  return picture && (await checkPicture(picture)).ok ? picture : undefined;
}
