import { type ChartLine, LineChart } from '../../../parts/time/line-chart';
import { roundTicks } from '../../../parts/time/since-axis';
import { WHY_WORDS } from '../../../words/piece/why';
import { numberWords } from '../../../words/quantities';
import { type CurveProps, timeAlong } from './curve-axes';

/** A quantity of the film over time with its band, in the unit shown. */
export interface BandChartProps {
  readonly curve: CurveProps;
  readonly describe: string;
  readonly line: string;
  readonly unit: string;
  readonly decimals: number;
  readonly min: number;
  readonly max: number;
  readonly low: readonly number[];
  readonly likely: readonly number[];
  readonly high: readonly number[];
  /** Heights to compare with, drawn from side to side. */
  readonly across?: readonly (Pick<ChartLine, 'key' | 'label' | 'dash'> & { readonly at: number })[];
}

/** A curve since the last coat, its band, and the same in numbers. */
export function BandChart(props: BandChartProps) {
  const { curve, describe, unit, decimals, min, max, low, likely, high, across = [] } = props;
  const time = timeAlong(curve);
  const { timeS } = curve.estimate.curve;
  const show = (value: number | undefined): string => numberWords(value ?? 0, decimals);
  const points = likely.map((y, n) => ({ x: time.at(timeS[n] ?? 0), y }));
  const ends = [time.axis.min, time.axis.max];
  return (
    <LineChart
      describe={describe}
      x={time.axis}
      y={{ label: unit, min, max, ticks: roundTicks(min, max, show) }}
      lines={[
        { key: 'likely', label: `${props.line}, ${unit}`, points },
        ...across.map(({ at, ...line }) => ({ ...line, points: ends.map((x) => ({ x, y: at })) })),
      ]}
      band={points.map(({ x, y }, n) => ({ x, low: low[n] ?? y, high: high[n] ?? y }))}
      marks={time.marks}
      table={{
        head: headOf(unit),
        rows: time.rows.map(({ index, label }) => [
          label,
          ...[low, likely, high].map((row) => show(row[index])),
        ]),
      }}
    />
  );
}

function headOf(unit: string): readonly string[] {
  const { time, low, likely, high } = WHY_WORDS.columns;
  return [time, `${low}, ${unit}`, likely, high];
}
