import { type Lab, labToXyz } from '../../../science/colour/lab';
import { hasYellowness, yellownessE313 } from '../../../science/colour/yellowness';
import { TRIAL_WORDS as WORDS } from '../../../words/match/trial';

interface YellownessProps {
  readonly sample: Lab;
  readonly target: Lab | undefined;
}

const indexOf = (lab: Lab): string | undefined => {
  const xyz = labToXyz(lab);
  return hasYellowness(xyz) ? yellownessE313(xyz).toFixed(1) : undefined;
};

/** Yellowness of sample and target, and what the years will do. */
export function Yellowness({ sample, target }: YellownessProps) {
  const ofSample = indexOf(sample);
  return (
    <>
      {ofSample !== undefined && (
        <>
          <p class="outcome-figure digits">{WORDS.yellownessOf(ofSample, target && indexOf(target))}</p>
          <p class="quiet small">{WORDS.yellownessNote}</p>
        </>
      )}
      <p>{WORDS.drift}</p>
    </>
  );
}
