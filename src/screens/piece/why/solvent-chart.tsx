import { metresToUm, umToMil } from '../../../units';
import { WHY_WORDS } from '../../../words/piece/why';
import { filmWords, percentWords } from '../../../words/quantities';
import { BandChart } from './band-chart';
import type { CurveProps } from './curve-axes';

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
