import { useSignal } from '@preact/signals';
import type { PhotoAsk, PhotoRead } from '../../actions/match/photo-read';
import { parseNumber } from '../../logbook/typed';
import type { Draft } from '../../parts/typed-field';
import type { ChartEdition } from '../../science/colour/chart-24';
import {
  FIRST_MARKS,
  type Marks,
  referenceCorners,
  type SampleSize,
  type Size,
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
    size: useSignal<Size | undefined>(undefined),
    against: useSignal<'chart' | 'grey-card'>('chart'),
    edition: useSignal<ChartEdition>('since-2014'),
    reflectance: useSignal<Draft<'%'>>({ text: '18', unit: '%' }),
    marks: useSignal<Marks>(FIRST_MARKS),
    sampleSize: useSignal<SampleSize>('medium'),
    shown: useSignal<PhotoState>({ state: 'none' }),
  };
}
export type PhotoDrafts = ReturnType<typeof usePhoto>;

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
