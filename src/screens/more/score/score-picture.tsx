import type { Told } from '../../../actions/outlook/learn/told-so-far';
import { SCORE_WORDS as WORDS } from '../../../words/piece/score';

interface ScorePictureProps {
  readonly scores: readonly Told[];
}

const WIDTH = 340;
const ROW = 18;
const TOP = 26;
const MIDDLE = WIDTH / 2;
/** From a quarter of the likely time to four times of it. */
const REACH = Math.log(4);

/** One line a date: its band about its likely time, and a dot where it was found. */
export function ScorePicture({ scores }: ScorePictureProps) {
  const height = TOP + ROW * scores.length + 6;
  const at = ({ likely }: Told, time: number): number => {
    const off = Math.max(-REACH, Math.min(REACH, Math.log(Math.max(time, 1) / likely)));
    return Number((MIDDLE + (off / REACH) * (MIDDLE - 12)).toFixed(1));
  };
  return (
    <figure class="chart">
      <svg viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={WORDS.picture}>
        <text x="12" y="14">
          {WORDS.early}
        </text>
        <text x={MIDDLE} y="14" text-anchor="middle">
          {WORDS.likely}
        </text>
        <text x={WIDTH - 12} y="14" text-anchor="end">
          {WORDS.late}
        </text>
        <g class="chart-mark">
          <path d={`M${MIDDLE} ${TOP - 6}V${height}`} />
        </g>
        {scores.map((one, i) => {
          const [from, to] = [at(one, one.earliest), at(one, one.late)];
          const y = TOP + ROW * i;
          return (
            <g key={`${one.stand} ${one.test}`}>
              <rect class="chart-band" x={from} y={y} width={to - from} height="12" rx="3" />
              <circle class="chart-dot" cx={at(one, one.found)} cy={y + 6} r="4.5" />
            </g>
          );
        })}
      </svg>
    </figure>
  );
}
