import { useSignal } from '@preact/signals';
import type { Said } from '../../../actions/log';
import { parseNumber } from '../../../logbook/as-typed';
import type { OldFinishRecord } from '../../../logbook/fold/piece/old-finishes';
import { COUNTS } from '../../../logbook/limits';
import type { OldFinishSign, UvLook } from '../../../science/old-finish/signs';

type Look = Omit<Said<'old-finish-seen'>, 'piece'>;

/** What the old finish looks like, as it is being filled in; nothing is chosen beforehand but what was saved. */
export function useLookDraft(seen: OldFinishRecord['seen']) {
  const draft = {
    kind: useSignal<'clear' | 'opaque' | undefined>(seen && (seen.opaque ? 'opaque' : 'clear')),
    uv: useSignal<UvLook | 'none'>(seen?.uv ?? 'none'),
    layers: useSignal<'1' | '2' | '3' | 'none'>(layersOf(seen?.layers)),
    layersSeen: useSignal(seen?.layersSeen ?? ''),
    madeAbout: useSignal(seen?.madeAbout === undefined ? '' : String(seen.madeAbout)),
    signs: useSignal<readonly OldFinishSign[]>(seen?.signs ?? []),
  };
  const { kind, uv, layers, layersSeen, madeAbout, signs } = draft;
  const year = madeAbout.value.trim() === '' ? undefined : parseNumber(madeAbout.value);
  const isYear = madeAbout.value.trim() === '' || isWithin(year);
  const look: Look | undefined =
    kind.value === undefined || !isYear
      ? undefined
      : {
          opaque: kind.value === 'opaque',
          signs: [...signs.value],
          ...(uv.value !== 'none' && { uv: uv.value }),
          ...(layers.value !== 'none' && { layers: Number(layers.value) }),
          ...(layersSeen.value.trim() !== '' && { layersSeen: layersSeen.value.trim() }),
          ...(year !== undefined && { madeAbout: year }),
        };
  const isSaved = seen !== undefined && look !== undefined && isAsSaved(look, seen);
  const isTouched =
    kind.value !== undefined ||
    uv.value !== 'none' ||
    layers.value !== 'none' ||
    signs.value.length > 0 ||
    layersSeen.value !== '' ||
    madeAbout.value !== '';
  return { ...draft, look, isYear, isUnsaved: isTouched && !isSaved };
}

const layersOf = (layers: number | undefined) =>
  layers === undefined ? 'none' : layers === 1 ? '1' : layers === 2 ? '2' : '3';

const isWithin = (year: number | undefined): boolean =>
  year !== undefined && Number.isInteger(year) && year >= COUNTS.year.lowest && year <= COUNTS.year.highest;

const isAsSaved = (look: Look, seen: NonNullable<OldFinishRecord['seen']>): boolean =>
  look.opaque === seen.opaque &&
  look.uv === seen.uv &&
  layersOf(look.layers) === layersOf(seen.layers) &&
  look.layersSeen === seen.layersSeen &&
  look.madeAbout === seen.madeAbout &&
  [...look.signs].sort().join() === [...seen.signs].sort().join();
