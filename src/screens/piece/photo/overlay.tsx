import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import { useKeptPhoto } from '../../../parts/photo/use-kept-photo';
import { alignment } from '../../../science/align';
import { PHOTO_WORDS as WORDS } from '../../../words/piece/photo';
import { inPixels, type Pair } from './pair';

/** Two photos over each other, with a slider between them. */
export function Overlay({ under, over, marks }: Pair) {
  const id = useId();
  const shown = useSignal(50);
  const [below, above] = [useKeptPhoto(under.photo), useKeptPhoto(over.photo)];
  const laid = alignment(inPixels(over, marks.over), inPixels(under, marks.under));
  const { width, height } = under;
  if (below === 'away' || above === 'away') return <p class="quiet">{WORDS.away}</p>;
  const edge = (width * shown.value) / 100;
  return (
    <>
      <svg class="outlined-photo" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={WORDS.compare}>
        <clipPath id={`${id}-clip`}>
          <rect width={edge} height={height} />
        </clipPath>
        {below && <image href={below} width={width} height={height} />}
        {above && laid && (
          <g clip-path={`url(#${id}-clip)`}>
            <image
              href={above}
              width={over.width}
              height={over.height}
              transform={`matrix(${laid.a} ${laid.b} ${-laid.b} ${laid.a} ${laid.e} ${laid.f})`}
            />
          </g>
        )}
        <line class="compare-edge" x1={edge} x2={edge} y2={height} stroke-width={width / 200} />
      </svg>
      {!laid && <p>{WORDS.samePoint}</p>}
      <label class="field" for={`${id}-slider`}>
        <span>{WORDS.slider}</span>
        <input
          id={`${id}-slider`}
          class="compare-slider"
          type="range"
          min="0"
          max="100"
          value={shown.value}
          onInput={({ currentTarget }) => {
            shown.value = Number(currentTarget.value);
          }}
        />
      </label>
    </>
  );
}
