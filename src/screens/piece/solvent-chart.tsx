import { LineChart } from '../../parts/line-chart';
import { metresToUm, umToMil } from '../../units';
import { filmWords, numberWords, percentWords } from '../../words/quantities';
import { WHY_WORDS } from '../../words/why';
import { type CurveProps, roundTicks, timeAlong } from './curve-axes';

/** The solvent that the film still holds, as a thickness. */
export function SolventChart(props: CurveProps) {
  const { piece, units, estimate } = props;
  const { curve, now } = estimate;
  const time = timeAlong(props);
  const toShown = (metres: number): number =>
    units === 'us' ? umToMil(metresToUm(metres)) : metresToUm(metres);
  const decimals = units === 'us' ? 2 : 1;
  const unit = units === 'us' ? 'mil' : 'µm';
  const max = Math.max(...curve.heldHighM.map(toShown));
  const columns = WHY_WORDS.columns;
  const cell = (metres: number | undefined): string => numberWords(toShown(metres ?? 0), decimals);
  return (
    <>
      <p>
        {WHY_WORDS.solventText(
          filmWords(now.heldM, units),
          percentWords(now.heldM / (now.heldM + now.dryM || 1), 1),
        )}{' '}
        {WHY_WORDS.sink(percentWords(now.stillToSink, 1))}
      </p>
      <LineChart
        describe={WHY_WORDS.solventDescribe(piece.name)}
        x={time.axis}
        y={{
          label: unit,
          min: 0,
          max,
          ticks: roundTicks(0, max, (value) => `${numberWords(value, decimals)}`),
        }}
        lines={[
          {
            key: 'held',
            label: `${WHY_WORDS.solventLine}, ${unit}`,
            points: curve.timeS.map((t, n) => ({ x: time.at(t), y: toShown(curve.heldM[n] ?? 0) })),
          },
        ]}
        band={curve.timeS.map((t, n) => ({
          x: time.at(t),
          low: toShown(curve.heldLowM[n] ?? 0),
          high: toShown(curve.heldHighM[n] ?? 0),
        }))}
        marks={time.marks}
        table={{
          head: [columns.time, `${columns.low}, ${unit}`, columns.likely, columns.high],
          rows: time.rows.map(({ index, label }) => [
            label,
            cell(curve.heldLowM[index]),
            cell(curve.heldM[index]),
            cell(curve.heldHighM[index]),
          ]),
        }}
      />
    </>
  );
}
