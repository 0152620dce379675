import type { ComponentChildren } from 'preact';
import { PHOTO_WORDS as WORDS } from '../../words/piece/photo';
import { useKeptPhoto } from './use-kept-photo';

type Place = readonly [x: number, y: number];

/** A place drawn on a photo, with its number. */
export interface DrawnZone {
  readonly number: number;
  readonly outline: readonly Place[];
}

interface OutlinedPhotoProps {
  readonly id: string;
  readonly describe: string;
  readonly width: number;
  readonly height: number;
  readonly zones: readonly DrawnZone[];
  readonly children?: ComponentChildren;
}

/** A kept photo with the places drawn on it, each with its number. */
export function OutlinedPhoto({ id, describe, width, height, zones, children }: OutlinedPhotoProps) {
  const address = useKeptPhoto(id);
  if (address === 'away') return <p class="quiet">{WORDS.away}</p>;
  return (
    <svg
      class="outlined-photo"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={describe}
      data-photo={id}
    >
      {address && <image href={address} width={width} height={height} />}
      {zones.map((zone) => (
        <Outlined key={zone.number} zone={zone} width={width} height={height} />
      ))}
      {children}
    </svg>
  );
}

interface OutlinedProps extends Pick<OutlinedPhotoProps, 'width' | 'height'> {
  readonly zone: DrawnZone;
}

function Outlined({ zone: { number, outline }, width, height }: OutlinedProps) {
  const unit = Math.max(width, height) / 100;
  const [x, y] = outline[0] ?? [0, 0];
  const points = outline.map(([px, py]) => `${px * width},${py * height}`).join(' ');
  return (
    <g class="zone-outline">
      <polygon points={points} stroke-width={unit} />
      {number > 0 && (
        <>
          <circle cx={x * width} cy={y * height} r={2.6 * unit} />
          <text x={x * width} y={y * height + 1.2 * unit} font-size={3.6 * unit} text-anchor="middle">
            {number}
          </text>
        </>
      )}
    </g>
  );
}
