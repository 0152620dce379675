import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { photographCard } from '../../../actions/mix/card-photo';
import type { Recipe } from '../../../logbook/fold/mix/recipes';
import { Fold } from '../../../parts/blocks/fold';
import { Icon } from '../../../parts/blocks/icons';
import { Problem } from '../../../parts/fields/choice';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { CARD, smallPicture } from '../../../parts/photo/small-picture';
import { photos, useKeptPhoto } from '../../../parts/photo/use-kept-photo';
import { PHOTO_FAULTS } from '../../../words/match/photo';
import { RECIPE_WORDS as WORDS } from '../../../words/mix/recipe';

/** Photos of the dried card, and a way to take one. */
export function CardPhotos({ recipe }: { readonly recipe: Recipe }) {
  const { needs, actions } = useShop();
  const problem = useSignal<string | undefined>(undefined);
  const id = useId();
  async function keep(file: File | undefined): Promise<void> {
    if (!file) return;
    problem.value = undefined;
    const small = await smallPicture(file, CARD);
    if (!small.ok) {
      problem.value = PHOTO_FAULTS[small.failure];
      return;
    }
    const kept = await photographCard(needs, photos, recipe.id, small.value.picture);
    if (kept.ok) showToast({ text: WORDS.photoKept, onUndo: () => void actions.undo(kept.value.id) });
    else problem.value = kept.failure.sentence;
  }
  return (
    <Fold title={WORDS.card} brief={WORDS.photos(recipe.photos.length)} isOpen={recipe.photos.length > 0}>
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
    </Fold>
  );
}

function Photo({ id, describe }: { readonly id: string; readonly describe: string }) {
  const address = useKeptPhoto(id);
  if (address === 'away') return <p class="quiet">{WORDS.photoAway}</p>;
  return address === undefined ? null : <img src={address} alt={describe} />;
}
