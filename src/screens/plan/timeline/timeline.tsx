import { toInstantMs } from '../../../planner/local-day';
import type { Plan, PlannedPiece, PlannedStep } from '../../../planner/plan';
import type { Bench } from '../../../planner/step';
import { PLAN_WORDS } from '../../../words/plan/plan';
import { dateWords } from '../../../words/times';
import { type DayAxis, dayAxis } from './timeline-axis';
import { TimelineLegend } from './timeline-legend';

const WIDTH = 360;
const EDGE = 10;
/** A day so near the right edge keeps its line and is not named: half of its name would be cut off. */
const NAMED_UNTIL = WIDTH - 46;
const HEAD = 26;
const ROW = 58;
const BAR_Y = 38;
/** The line of now stands beside the bars; it does not strike a name out. */
const NAME_END = 24;

export interface TimelineProps {
  readonly plan: Plan;
  readonly bench: Bench;
  readonly pieces: readonly PlannedPiece[];
  readonly nameOf: (pieceId: string) => string;
}

/** Pieces down, days across: what is worked on when, and the band in which each is ready. */
export function Timeline({ plan, bench, pieces, nameOf }: TimelineProps) {
  const promised = new Map(bench.pieces.flatMap((one) => (one.promised ? [[one.id, one.promised]] : [])));
  const latest = Math.max(plan.now, ...pieces.map(({ promise }) => promise), ...promised.values());
  const axis = dayAxis(plan.now, latest, bench.working.zone);
  const height = HEAD + ROW * pieces.length + 4;
  const x = toX(axis);
  const nowMs = toInstantMs(plan.now);
  return (
    <figure class="timeline">
      <svg
        viewBox={`0 0 ${WIDTH} ${height}`}
        role="img"
        aria-label={PLAN_WORDS.describe(pieces.length, dateWords(toInstantMs(latest), nowMs))}
      >
        <Patterns />
        {axis.ticks.map(({ at, label }) => (
          <g key={at} class="timeline-day">
            <path d={`M${x(at)} ${HEAD - 4}V${height}`} />
            {x(at) < NAMED_UNTIL && (
              <text x={x(at) + 3} y={HEAD - 10}>
                {label}
              </text>
            )}
          </g>
        ))}
        {pieces.map((piece, row) => (
          <g key={piece.pieceId} transform={`translate(0 ${HEAD + row * ROW})`}>
            <PieceRow
              piece={piece}
              name={nameOf(piece.pieceId)}
              steps={plan.steps.filter(({ pieceId }) => pieceId === piece.pieceId)}
              promised={promised.get(piece.pieceId)}
              x={x}
            />
            <path class="timeline-now" d={`M${x(plan.now)} ${NAME_END}V${ROW}`} />
          </g>
        ))}
      </svg>
      <TimelineLegend />
    </figure>
  );
}

const toX =
  ({ from, to }: DayAxis) =>
  (at: number): number =>
    EDGE + Math.min(1, Math.max(0, (at - from) / (to - from))) * (WIDTH - 2 * EDGE);

const Patterns = () => (
  <defs>
    <pattern
      id="timeline-hatch"
      width="6"
      height="6"
      patternUnits="userSpaceOnUse"
      patternTransform="rotate(45)"
    >
      <path class="timeline-hatch" d="M0 0V6" />
    </pattern>
  </defs>
);

interface PieceRowProps {
  readonly piece: PlannedPiece;
  readonly name: string;
  readonly steps: readonly PlannedStep[];
  readonly promised: number | undefined;
  readonly x: (at: number) => number;
}

const LEAST_WIDTH = 3;

function PieceRow({ piece, name, steps, promised, x }: PieceRowProps) {
  const { earliest, likely, promise } = piece;
  const open = steps.filter(({ isDone }) => !isDone);
  const begin = open[0]?.start ?? likely;
  const work = open.filter(({ kind }) => kind === 'work' || kind === 'gate');
  return (
    <>
      <text class="timeline-name" x={EDGE} y={18}>
        {name.length > 38 ? `${name.slice(0, 37)}…` : name}
      </text>
      <path class="timeline-wait" d={`M${x(begin)} ${BAR_Y}H${x(likely)}`} />
      <rect
        class="timeline-band"
        x={x(earliest)}
        y={BAR_Y - 8}
        width={Math.max(LEAST_WIDTH, x(promise) - x(earliest))}
        height={16}
        fill="url(#timeline-hatch)"
      />
      {work.map((step) => (
        <rect
          key={step.stepId}
          class="timeline-work"
          data-kind={step.kind}
          x={x(step.start)}
          y={BAR_Y - 6}
          width={Math.max(LEAST_WIDTH, x(step.end) - x(step.start))}
          height={12}
        />
      ))}
      <circle class="timeline-likely" cx={x(likely)} cy={BAR_Y} r="6" />
      {promised !== undefined && (
        <path class="timeline-promised" d={`M${x(promised)} ${BAR_Y + 12}V${BAR_Y - 14}l9 5l-9 5`} />
      )}
    </>
  );
}
