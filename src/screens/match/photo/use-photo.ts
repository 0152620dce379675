import { batch, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { PhotoAsk, PhotoRead } from '../../../actions/match/photo-read';
import { parseNumber } from '../../../logbook/as-typed';
import { checkPicture, type PictureFault } from '../../../logbook/picture/check-picture';
import type { Draft } from '../../../parts/fields/typed-field';
import type { ChartEdition } from '../../../science/colour/photo/chart-24';
import {
  FIRST_MARKS,
  type Marks,
  type PixelSize,
  referenceCorners,
  type SampleSize,
  sampleCorners,
} from './photo-marks';

export type PhotoState =
  | { readonly state: 'none' }
  | { readonly state: 'reading' }
  | { readonly state: 'lost' }
  | { readonly state: 'read'; readonly read: PhotoRead };

/** The photo, what it is held against, and what was marked in it. */
export function usePhoto() {
  return {
    picture: useSignal<Blob | undefined>(undefined),
    /** Why the chosen file was not taken. */
    fault: useSignal<PictureFault | 'not-opened' | undefined>(undefined),
    size: useSignal<PixelSize | undefined>(undefined),
    against: useSignal<'chart' | 'grey-card'>('chart'),
    edition: useSignal<ChartEdition>('since-2014'),
    reflectance: useSignal<Draft<'%'>>({ text: '18', unit: '%' }),
    marks: useSignal<Marks>(FIRST_MARKS),
    sampleSize: useSignal<SampleSize>('medium'),
    shown: useSignal<PhotoState>({ state: 'none' }),
    chosen: useRef<File | undefined>(undefined),
  };
}
export type PhotoDrafts = ReturnType<typeof usePhoto>;

/** Takes a file as the photo once it was looked into; what was chosen in the meantime goes before it. */
export async function choosePhoto(photo: PhotoDrafts, file: File | undefined): Promise<void> {
  leavePhoto(photo, undefined);
  photo.chosen.current = file;
  if (!file) return;
  const checked = await checkPicture(file);
  if (photo.chosen.current !== file) return;
  if (checked.ok) photo.picture.value = file;
  else photo.fault.value = checked.failure;
}

/** Takes the photo away, and says why where it was no good. */
export function leavePhoto(
  { picture, size, shown, fault }: PhotoDrafts,
  why: 'not-opened' | undefined,
): void {
  batch(() => {
    picture.value = undefined;
    size.value = undefined;
    shown.value = { state: 'none' };
    fault.value = why;
  });
}

/** What the worker is asked; undefined while the photo is not there. */
export function askOf({
  picture,
  size,
  against,
  edition,
  reflectance,
  marks,
  sampleSize,
}: PhotoDrafts): PhotoAsk | undefined {
  if (!picture.value || !size.value) return undefined;
  const corners = referenceCorners(marks.value, size.value);
  return {
    picture: picture.value,
    against:
      against.value === 'chart'
        ? { as: 'chart', edition: edition.value, corners }
        : { as: 'grey-card', reflectance: (parseNumber(reflectance.value.text) ?? 18) / 100, corners },
    sample: sampleCorners(marks.value, sampleSize.value, size.value),
  };
}
