import { THRESHOLD_K } from '../../../estimator/read-off';
import { BITE_M } from '../../../estimator/trace';
import { MOMENT_WORDS } from '../../../words/piece/moments';
import { WHY_WORDS } from '../../../words/piece/why';
import { differenceWords, filmWords } from '../../../words/quantities';
import { BandChart } from './band-chart';
import type { CurveProps } from './curve-axes';

/** Softer than this is liquid: of no use for reading off when it may be sanded. */
const SOFTEST_K = -60;
const ROOM_ABOVE_K = 4;

/** How hard the top of the film is, against what sanding and rubbing out ask for. */
export function HardnessChart(props: CurveProps) {
  const { piece, units, estimate } = props;
  const { hardnessLowK, hardnessK, hardnessHighK } = estimate.curve;
  const isUs = units === 'us';
  const toShown = (kelvin: number): number => Math.max(SOFTEST_K, kelvin) * (isUs ? 9 / 5 : 1);
  const high = hardnessHighK.map(toShown);
  const { level, rubOut } = THRESHOLD_K;
  return (
    <>
      <p>
        {WHY_WORDS.hardnessText(
          filmWords(BITE_M, units),
          differenceWords(level, units),
          differenceWords(rubOut, units),
        )}
      </p>
      <BandChart
        curve={props}
        describe={WHY_WORDS.hardnessDescribe(piece.name)}
        line={WHY_WORDS.hardnessLine}
        unit={isUs ? '°F' : '°C'}
        decimals={0}
        min={toShown(Math.min(...hardnessLowK))}
        max={Math.max(toShown(rubOut + ROOM_ABOVE_K), ...high)}
        low={hardnessLowK.map(toShown)}
        likely={hardnessK.map(toShown)}
        high={high}
        across={[
          { key: 'level', label: MOMENT_WORDS.level, at: toShown(level), dash: 'dashed' },
          { key: 'rub-out', label: MOMENT_WORDS.rubOut, at: toShown(rubOut), dash: 'dotted' },
        ]}
      />
    </>
  );
}
