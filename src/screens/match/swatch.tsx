import type { Lab } from '../../science/colour/lab';
import { labToHex } from '../../shop/colour/screen-colour';
import { STAND_WORDS as WORDS } from '../../words/match/next';
import { labText } from './colour-text';

/** Target and sample side by side, edge to edge; labelled as what it is. */
export function SplitSwatch({ target, sample }: { readonly target: Lab; readonly sample: Lab }) {
  const [left, right] = [labToHex(target), labToHex(sample)];
  return (
    <figure class="split-swatch">
      <svg
        viewBox="0 0 2 1"
        preserveAspectRatio="none"
        role="img"
        aria-label={WORDS.swatchName(labText(target), labText(sample))}
      >
        <rect width="1.01" height="1" fill={left.hex} />
        <rect x="1" width="1" height="1" fill={right.hex} />
      </svg>
      <figcaption class="small quiet">
        {WORDS.swatch} {(left.isClipped || right.isClipped) && WORDS.swatchBent}
      </figcaption>
    </figure>
  );
}

/** A small face for a row: one colour, or two. */
export function ColourFace({ colours: [first, second] }: { readonly colours: readonly Lab[] }) {
  return (
    <svg class="colour-face" viewBox="0 0 2 2" preserveAspectRatio="none" aria-hidden="true">
      {first && <rect width="2.01" height="2" fill={labToHex(first).hex} />}
      {second && <rect x="1" width="1" height="2" fill={labToHex(second).hex} />}
    </svg>
  );
}
