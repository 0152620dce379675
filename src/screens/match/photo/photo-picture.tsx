import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Button } from '../../../parts/blocks/button';
import { Choice } from '../../../parts/fields/choice';
import { COLOUR_PHOTO_WORDS as WORDS } from '../../../words/match/colour-photo';
import { type Marks, moved, type PixelSize, SAMPLE_MARK, SAMPLE_SIZES, type SampleSize } from './photo-marks';

export interface PictureProps {
  readonly picture: Blob;
  readonly names: readonly string[];
  readonly marks: Marks;
  readonly onMarks: (marks: Marks) => void;
  readonly sampleSize: SampleSize;
  readonly onSize: (size: PixelSize) => void;
  readonly onBroken: () => void;
}

const NUDGE = 0.004;
const WAYS = { left: [-1, 0], up: [0, -1], down: [0, 1], right: [1, 0] } as const;

/** The photo with its marks: choose a mark, touch where it belongs, move it finely. */
export function PhotoPicture(props: PictureProps) {
  const { picture, names, marks, onMarks } = props;
  const address = useSignal('');
  const chosen = useSignal(0);
  useEffect(() => {
    const made = URL.createObjectURL(picture);
    address.value = made;
    return () => URL.revokeObjectURL(made);
  }, [picture, address]);

  function touch(event: MouseEvent & { currentTarget: HTMLElement }): void {
    const box = event.currentTarget.getBoundingClientRect();
    const place = { x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.height };
    onMarks(moved(marks, chosen.value, place));
    if (chosen.value < SAMPLE_MARK) chosen.value++;
  }
  function nudge([dx, dy]: readonly [number, number]): void {
    const { x, y } = marks[chosen.value as 0] ?? { x: 0, y: 0 };
    onMarks(moved(marks, chosen.value, { x: x + dx * NUDGE, y: y + dy * NUDGE }));
  }

  return (
    <div class="stack">
      <Choice
        label={WORDS.mark}
        options={names.map((label, i) => ({ value: String(i), label: `${i + 1}. ${label}` }))}
        value={String(chosen.value)}
        onChange={(mark) => {
          chosen.value = Number(mark);
        }}
      />
      <p class="quiet small">{WORDS.markHint}</p>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents lint/a11y/noStaticElementInteractions: the arrows below move the marks by key */}
      <div class="photo" onClick={touch}>
        {address.value !== '' && (
          <img
            src={address.value}
            alt={WORDS.picture}
            onLoad={({ currentTarget: { naturalWidth, naturalHeight } }) =>
              props.onSize({ width: naturalWidth, height: naturalHeight })
            }
            onError={props.onBroken}
          />
        )}
        <MarksOver marks={marks} chosen={chosen.value} sampleSize={props.sampleSize} />
      </div>
      <div class="acts nudges">
        {(['left', 'up', 'down', 'right'] as const).map((way) => (
          <Button key={way} onClick={() => nudge(WAYS[way])}>
            {WORDS.nudge[way]}
          </Button>
        ))}
      </div>
    </div>
  );
}

/** The marks drawn over the photo, each with its number. */
function MarksOver({
  marks,
  chosen,
  sampleSize,
}: Pick<PictureProps, 'marks' | 'sampleSize'> & { readonly chosen: number }) {
  const corners = marks.slice(0, SAMPLE_MARK).map(({ x, y }) => `${100 * x},${100 * y}`);
  const { x, y } = marks[SAMPLE_MARK];
  const half = 100 * SAMPLE_SIZES[sampleSize];
  return (
    <>
      <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
        {['photo-line-under', 'photo-line'].map((look) => (
          <g key={look} class={look}>
            <polygon points={corners.join(' ')} />
            <rect x={100 * x - half} y={100 * y - half} width={2 * half} height={2 * half} />
          </g>
        ))}
      </svg>
      {marks.map((mark, i) => (
        <span
          // biome-ignore lint/suspicious/noArrayIndexKey: a mark is its number
          key={i}
          class="photo-mark digits"
          data-chosen={i === chosen || undefined}
          style={{ left: `${100 * mark.x}%`, top: `${100 * mark.y}%` }}
          aria-hidden="true"
        >
          {i + 1}
        </span>
      ))}
    </>
  );
}
