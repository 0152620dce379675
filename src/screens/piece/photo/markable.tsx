import type { Photo } from '../../../logbook/fold/piece/zones';
import { OutlinedPhoto } from '../../../parts/photo/outlined-photo';
import { PHOTO_WORDS as WORDS } from '../../../words/piece/photo';
import type { PhotoPoint, TwoPoints } from './pair';

const STEP = 0.01;
const KEYS: Readonly<Record<string, PhotoPoint>> = {
  ArrowLeft: [-STEP, 0],
  ArrowRight: [STEP, 0],
  ArrowUp: [0, -STEP],
  ArrowDown: [0, STEP],
};
const within01 = (share: number): number => Math.min(1, Math.max(0, share));

interface MarkableProps {
  readonly photo: Photo;
  /** Where the chosen point is now. */
  readonly at: PhotoPoint;
  readonly side: string;
  readonly marks: TwoPoints;
  readonly onPut: (place: PhotoPoint) => void;
}

/** A photo on which the chosen point is put with a tap, or moved with the arrows. */
export function Markable({ photo, at, side, marks, onPut }: MarkableProps) {
  const { width, height } = photo;
  const unit = Math.max(width, height) / 100;
  return (
    <button
      type="button"
      class="markable"
      aria-label={WORDS.markOn(WORDS.point, side)}
      onKeyDown={(event) => {
        const [dx, dy] = KEYS[event.key] ?? [0, 0];
        if (dx === 0 && dy === 0) return;
        event.preventDefault();
        onPut([within01(at[0] + dx), within01(at[1] + dy)]);
      }}
      onClick={(event) => {
        if (event.detail === 0) return; // by key: the arrows move the point
        const box = event.currentTarget.getBoundingClientRect();
        onPut([(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height]);
      }}
    >
      <OutlinedPhoto id={photo.photo} describe={side} width={width} height={height} zones={[]}>
        {marks.map(([x, y], i) => (
          <Mark
            key={i === 0 ? 'first' : 'second'}
            x={x * width}
            y={y * height}
            unit={unit}
            isFirst={i === 0}
          />
        ))}
      </OutlinedPhoto>
    </button>
  );
}

interface MarkProps {
  readonly x: number;
  readonly y: number;
  readonly unit: number;
  readonly isFirst: boolean;
}

/** A ring for the first point, a diamond for the second. */
function Mark({ x, y, unit, isFirst }: MarkProps) {
  const r = 2.6 * unit;
  const shape = isFirst
    ? `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`
    : `M${x} ${y - 1.3 * r}l${1.3 * r} ${1.3 * r}l${-1.3 * r} ${1.3 * r}l${-1.3 * r} ${-1.3 * r}z`;
  return <path class="compare-mark" d={shape} stroke-width={unit * 0.8} />;
}
