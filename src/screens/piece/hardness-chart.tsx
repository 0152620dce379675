import { THRESHOLD_K } from '../../estimator/read-off';
import { LineChart } from '../../parts/line-chart';
import { MOMENT_WORDS } from '../../words/moments';
import { differenceWords, numberWords } from '../../words/quantities';
import { WHY_WORDS } from '../../words/why';
import { type CurveProps, roundTicks, timeAlong } from './curve-axes';

/** Softer than this is liquid: of no use for reading off when it may be sanded. */
const SOFTEST_K = -60;

/** How hard the top of the film is, against what sanding and rubbing out ask for. */
export function HardnessChart(props: CurveProps) {
  const { piece, units, estimate } = props;
  const { curve } = estimate;
  const time = timeAlong(props);
  const toShown = (kelvin: number | undefined): number => {
    const shown = Math.max(SOFTEST_K, kelvin ?? SOFTEST_K);
    return units === 'us' ? (shown * 9) / 5 : shown;
  };
  const unit = units === 'us' ? '°F' : 'K';
  const min = toShown(Math.min(...curve.hardnessLowK));
  const max = Math.max(toShown(THRESHOLD_K.rubOut + 4), ...curve.hardnessHighK.map(toShown));
  const across = (kelvin: number) => [time.axis.min, time.axis.max].map((x) => ({ x, y: toShown(kelvin) }));
  const columns = WHY_WORDS.columns;
  const cell = (kelvin: number | undefined): string => numberWords(toShown(kelvin), 0);
  return (
    <>
      <p>
        {WHY_WORDS.hardnessText(
          differenceWords(THRESHOLD_K.level, units),
          differenceWords(THRESHOLD_K.rubOut, units),
        )}
      </p>
      <LineChart
        describe={WHY_WORDS.hardnessDescribe(piece.name)}
        x={time.axis}
        y={{ label: unit, min, max, ticks: roundTicks(min, max, (value) => numberWords(value, 0)) }}
        lines={[
          {
            key: 'hardness',
            label: `${WHY_WORDS.hardnessLine}, ${unit}`,
            points: curve.timeS.map((t, n) => ({ x: time.at(t), y: toShown(curve.hardnessK[n]) })),
          },
          { key: 'level', label: MOMENT_WORDS.level, points: across(THRESHOLD_K.level), dash: 'dashed' },
          { key: 'rub-out', label: MOMENT_WORDS.rubOut, points: across(THRESHOLD_K.rubOut), dash: 'dotted' },
        ]}
        band={curve.timeS.map((t, n) => ({
          x: time.at(t),
          low: toShown(curve.hardnessLowK[n]),
          high: toShown(curve.hardnessHighK[n]),
        }))}
        marks={time.marks}
        table={{
          head: [columns.time, `${columns.low}, ${unit}`, columns.likely, columns.high],
          rows: time.rows.map(({ index, label }) => [
            label,
            cell(curve.hardnessLowK[index]),
            cell(curve.hardnessK[index]),
            cell(curve.hardnessHighK[index]),
          ]),
        }}
      />
    </>
  );
}
