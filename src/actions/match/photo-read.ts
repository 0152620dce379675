import type { Lab } from '../../science/colour/lab';
import {
  cameraLab,
  chartXyz,
  clippedPatches,
  fitCamera,
  fitGreyCard,
} from '../../science/colour/photo/camera-fit';
import { CHART_COLUMNS, CHART_ROWS, type ChartEdition } from '../../science/colour/photo/chart-24';
import {
  type Corners,
  cornersFault,
  type PatchSample,
  type Photo,
  samplePatches,
  scaleThatServes,
} from '../../science/colour/photo/photo-patch';

/** What a photograph is held against. */
export type Against =
  | { readonly as: 'chart'; readonly edition: ChartEdition; readonly corners: Corners }
  | { readonly as: 'grey-card'; readonly reflectance: number; readonly corners: Corners };

/** A photograph with what was marked in it, in pixels of the photograph. */
export interface PhotoAsk {
  readonly picture: Blob;
  readonly against: Against;
  readonly sample: Corners;
}

/** What was wrong with the photograph or with what was marked. */
export type PhotoFault =
  | 'not-a-picture'
  | 'reference-outside'
  | 'reference-crossed'
  | 'reference-too-small'
  | 'sample-outside'
  | 'sample-crossed'
  | 'sample-too-small'
  | 'reference-clipped'
  | 'sample-clipped'
  | 'no-fit';

export type PhotoRead =
  | {
      readonly kind: 'read';
      readonly lab: Lab<'D65/2'>;
      /** Standard deviation of the light over the sample, a fraction. */
      readonly spread: number;
      /** deltaE00 on the chart's own patches; a grey card cannot tell. */
      readonly residualE00: { readonly median: number; readonly worst: number } | undefined;
      readonly tookMs: number;
    }
  | { readonly kind: 'fault'; readonly fault: PhotoFault };

const fault = (which: PhotoFault): PhotoRead => ({ kind: 'fault', fault: which });

const patchesOf = ({ as }: Against): readonly [columns: number, rows: number] =>
  as === 'chart' ? [CHART_COLUMNS, CHART_ROWS] : [1, 1];

/** How much smaller the photograph may be drawn for {@link readPhoto} without its seeing less. */
export const scaleToRead = (against: Against, sample: Corners): number =>
  Math.max(scaleThatServes(against.corners, ...patchesOf(against)), scaleThatServes(sample, 1, 1));

/** The colour of the marked sample, from a decoded photograph. Pure; the clock is the caller's. */
export function readPhoto(photo: Photo, against: Against, sample: Corners): PhotoRead {
  const [columns, rows] = patchesOf(against);
  const referenceFault = cornersFault(photo, against.corners, columns, rows);
  if (referenceFault) return fault(`reference-${referenceFault}`);
  const sampleFault = cornersFault(photo, sample, 1, 1);
  if (sampleFault) return fault(`sample-${sampleFault}`);
  const reference = samplePatches(photo, against.corners, columns, rows);
  const [patch] = samplePatches(photo, sample, 1, 1);
  if (!patch) return fault('sample-outside');
  if (clippedPatches(reference).length > 0) return fault('reference-clipped');
  if (clippedPatches([patch]).length > 0) return fault('sample-clipped');
  const fit = fitOf(reference, against);
  if (!fit) return fault('no-fit');
  return {
    kind: 'read',
    lab: cameraLab(fit, patch.rgb),
    spread: patch.spread,
    residualE00: fit.residualE00,
    tookMs: 0,
  };
}

function fitOf(reference: readonly PatchSample[], against: Against) {
  const light = reference.map(({ rgb }) => rgb);
  if (against.as === 'chart') return fitCamera(light, chartXyz(against.edition));
  const [card] = light;
  return card && fitGreyCard(card, against.reflectance);
}
