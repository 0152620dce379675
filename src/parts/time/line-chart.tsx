import { CHART } from '../../words/common';
import { HeadRow } from '../blocks/head-row';

export interface ChartAxis {
  /** With its unit: "days", "solvent held, % of the film". */
  readonly label: string;
  readonly min: number;
  readonly max: number;
  readonly ticks: readonly { readonly at: number; readonly label: string }[];
}

export interface ChartLine {
  readonly key: string;
  readonly label: string;
  readonly points: readonly { readonly x: number; readonly y: number }[];
  readonly dash?: 'solid' | 'dashed' | 'dotted' | undefined;
}

export interface LineChartProps {
  /** The finding in a sentence; also the picture's name for a screen reader. */
  readonly describe: string;
  readonly x: ChartAxis;
  readonly y: ChartAxis;
  readonly lines: readonly ChartLine[];
  readonly band?: readonly { readonly x: number; readonly low: number; readonly high: number }[] | undefined;
  /** Single points that were measured. */
  readonly dots?: readonly { readonly x: number; readonly y: number }[] | undefined;
  /** Upright lines with a word: a milestone, now. */
  readonly marks?: readonly { readonly x: number; readonly label: string }[] | undefined;
  /** The same in numbers: head, then rows, as text. */
  readonly table: { readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] };
}

const WIDTH = 340;
const HEIGHT = 220;
const PLOT = { left: 44, right: 328, top: 22, bottom: 180 };
const DASHES = { solid: undefined, dashed: '8 5', dotted: '1.5 5' } as const;

const along = (axis: ChartAxis, from: number, to: number) => (value: number) =>
  Number((from + ((value - axis.min) / (axis.max - axis.min || 1)) * (to - from)).toFixed(1));

/** A small line chart with its band, and the same numbers as a table. */
export function LineChart({ describe, x, y, lines, band, dots = [], marks = [], table }: LineChartProps) {
  const toX = along(x, PLOT.left, PLOT.right);
  const toY = along(y, PLOT.bottom, PLOT.top);
  const pathOf = (points: readonly { x: number; y: number }[]): string =>
    points.map((point, n) => `${n === 0 ? 'M' : 'L'}${toX(point.x)} ${toY(point.y)}`).join('');
  const area = band && [
    ...band.map(({ x, high }) => ({ x, y: high })),
    ...band.toReversed().map(({ x, low }) => ({ x, y: low })),
  ];
  return (
    <figure class="chart">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={describe}>
        <Axes x={x} y={y} toX={toX} toY={toY} />
        {area && <path class="chart-band" d={`${pathOf(area)}Z`} />}
        {marks.map((mark) => (
          <g key={mark.label} class="chart-mark">
            <path d={`M${toX(mark.x)} ${PLOT.top - 4}V${PLOT.bottom}`} />
            <text
              x={toX(mark.x)}
              y={PLOT.top - 9}
              text-anchor={mark.x > (x.min + x.max) / 2 ? 'end' : 'start'}
            >
              {mark.label}
            </text>
          </g>
        ))}
        {lines.map(({ key, points, dash = 'solid' }) => (
          <path key={key} class="chart-line" d={pathOf(points)} stroke-dasharray={DASHES[dash]} />
        ))}
        {dots.map((dot) => (
          <circle key={`${dot.x} ${dot.y}`} class="chart-dot" cx={toX(dot.x)} cy={toY(dot.y)} r="4.5" />
        ))}
      </svg>
      {lines.length > 1 && <Legend lines={lines} />}
      <NumbersTable describe={describe} {...table} />
    </figure>
  );
}

interface AxesProps {
  readonly x: ChartAxis;
  readonly y: ChartAxis;
  readonly toX: (value: number) => number;
  readonly toY: (value: number) => number;
}

function Axes({ x, y, toX, toY }: AxesProps) {
  return (
    <g class="chart-axes">
      {y.ticks.map(({ at, label }) => (
        <g key={at}>
          <path d={`M${PLOT.left} ${toY(at)}H${PLOT.right}`} />
          <text x={PLOT.left - 7} y={toY(at) + 4} text-anchor="end">
            {label}
          </text>
        </g>
      ))}
      {x.ticks.map(({ at, label }) => (
        <g key={at}>
          <path class="chart-tick" d={`M${toX(at)} ${PLOT.bottom}v5`} />
          <text x={toX(at)} y={PLOT.bottom + 18} text-anchor="middle">
            {label}
          </text>
        </g>
      ))}
      <path class="chart-foot" d={`M${PLOT.left} ${PLOT.bottom}H${PLOT.right}`} />
      <text class="chart-label" x={PLOT.right} y={HEIGHT - 5} text-anchor="end">
        {x.label}
      </text>
    </g>
  );
}

function Legend({ lines }: { readonly lines: readonly ChartLine[] }) {
  return (
    <ul class="chart-legend">
      {lines.map(({ key, label, dash = 'solid' }) => (
        <li key={key}>
          <svg viewBox="0 0 28 8" width="28" height="8" aria-hidden="true">
            <path class="chart-line" d="M1 4h26" stroke-dasharray={DASHES[dash]} />
          </svg>
          {label}
        </li>
      ))}
    </ul>
  );
}

function NumbersTable({ describe, head, rows }: LineChartProps['table'] & { readonly describe: string }) {
  return (
    <details class="chart-table">
      <summary>{CHART.asTable}</summary>
      <table class="digits">
        <caption class="heard">{describe}</caption>
        <HeadRow heads={head} />
        <tbody>
          {rows.map((row) => (
            <tr key={row.join('|')}>
              {row.map((cell, column) => (
                <td key={head[column]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
