import { THRESHOLD_K } from '../../../estimator/read-off';
import { BITE_M } from '../../../estimator/trace';
import { metresToUm, umToMil } from '../../../units';
import { MOMENT_WORDS } from '../../../words/piece/moments';
import { WHY_WORDS } from '../../../words/piece/why';
import { differenceWords, filmWords, percentWords } from '../../../words/quantities';
import { BandChart } from './band-chart';
import type { CurveProps } from './curve-axes';

/** Softer than this is liquid: of no use for reading off when it may be sanded. */
const SOFTEST_K = -60;
const ROOM_ABOVE_K = 4;

/** The solvent that the film still holds, as a thickness. */
export function SolventChart(props: CurveProps) {
  const { piece, units, estimate } = props;
  const { curve, now } = estimate;
  const isUs = units === 'us';
  const toShown = (metres: number): number => (isUs ? umToMil(metresToUm(metres)) : metresToUm(metres));
  const share = percentWords(now.heldM / (now.heldM + now.dryM || 1), 1);
  const high = curve.heldHighM.map(toShown);
  return (
    <>
      <p>
        {WHY_WORDS.solventText(filmWords(now.heldM, units), share)}{' '}
        {WHY_WORDS.sink(percentWords(now.stillToSink, 1))}
      </p>
      <BandChart
        curve={props}
        describe={WHY_WORDS.solventDescribe(piece.name)}
        line={WHY_WORDS.solventLine}
        unit={isUs ? 'mil' : 'µm'}
        decimals={isUs ? 2 : 1}
        min={0}
        max={Math.max(...high)}
        low={curve.heldLowM.map(toShown)}
        likely={curve.heldM.map(toShown)}
        high={high}
      />
    </>
  );
}

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
