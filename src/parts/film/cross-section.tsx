import { FilmCoats } from './film-coats';
import { FilmGrounds } from './film-grounds';
import { FilmHandles } from './film-handles';
import type { FilmMark } from './film-marks';
import { type FilmLayer, type Frame, type GroundMark, stackBands } from './film-picture';
import { FilmScale } from './film-scale';
import { FilmWood } from './film-wood';

export interface CrossSectionProps {
  /** In the order they were laid, first coat first. */
  readonly layers: readonly FilmLayer[];
  /** What lies in the wood and on it, below the first coat. */
  readonly grounds?: readonly GroundMark[] | undefined;
  /** Name of the wood, written on it ("Spruce"). */
  readonly woodLabel: string;
  /** The whole picture in one sentence, for who cannot see it. */
  readonly describe: string;
  /** What the film would measure to fill the picture's height; the film itself when left out. */
  readonly scaleUmMax?: number | undefined;
  /** How thick it was as laid, with the words for it: the picture keeps that scale while it dries. */
  readonly asLaid?: { readonly um: number; readonly label: string } | undefined;
  /** Sandings and flash coats, where they were. */
  readonly marks?: readonly FilmMark[] | undefined;
  readonly unit?: { readonly label: string; readonly um: number } | undefined;
  readonly selectedKey?: string | undefined;
  readonly onPick?: ((key: string) => void) | undefined;
  /** The small face of a row: no scale, no names, nothing moves. */
  readonly compact?: boolean | undefined;
}

const FULL = { width: 244, height: 222, wood: 44, left: 44, right: 72 };
const COMPACT = { width: 72, height: 56, wood: 16, left: 0, right: 0 };
const MICROMETRE = { label: 'µm', um: 1 };
const THINNEST_SCALE_UM = 40;
const AIR_SHARE = 0.14; // room above the film, so that a wet surface has air to give its solvent to

/** Less than this is not seen. */
const LEAST_SHRUNK_UM = 1;

/** A piece's finish cut through and drawn to scale: wood, then each coat as thick as it is now. */
export function CrossSection(props: CrossSectionProps) {
  const { layers, describe, onPick, compact = false, unit = MICROMETRE } = props;
  const size = compact ? COMPACT : FULL;
  const woodTop = size.height - size.wood;
  const filmUm = layers.reduce((sum, layer) => sum + layer.dryUm + layer.solventUm, 0);
  const laidUm = compact ? 0 : (props.asLaid?.um ?? 0);
  const spanUm = Math.max(props.scaleUmMax ?? filmUm, filmUm, laidUm, THINNEST_SCALE_UM);
  const frame: Frame = { width: size.width, woodTop, perUm: (woodTop * (1 - AIR_SHARE)) / spanUm };
  const bands = stackBands(layers, frame);
  const marks = (props.marks ?? []).map((mark) => ({ ...mark, at: bands[mark.above - 1]?.top ?? woodTop }));
  const isPicked = onPick !== undefined && !compact;

  return (
    <svg
      class="film"
      data-compact={compact || undefined}
      viewBox={`${-size.left} 0 ${size.left + size.width + size.right} ${size.height}`}
      role={isPicked ? 'group' : 'img'}
      aria-label={describe}
    >
      <g aria-hidden={isPicked ? 'true' : undefined}>
        <svg aria-hidden="true" width={size.width} height={size.height}>
          <rect class="film-air" width={size.width} height={size.height} />
          <FilmCoats bands={bands} frame={frame} depth={size.height} compact={compact} />
          <FilmWood frame={frame} depth={size.wood} />
          {marks.map(({ key, kind, at }) => (
            <path
              key={key}
              class={`film-${kind}`}
              d={kind === 'sanded' ? `M0 ${at}H${size.width}` : `M${size.width - 10} ${at - 5}v10`}
            />
          ))}
          {props.grounds && <FilmGrounds {...{ frame, depth: size.wood, grounds: props.grounds }} />}
        </svg>
        {!compact && (
          <FilmScale
            {...{ bands, frame, spanUm, unit, marks }}
            wood={{ label: props.woodLabel, depth: size.wood, grounds: props.grounds ?? [] }}
          />
        )}
        {laidUm > filmUm + LEAST_SHRUNK_UM && (
          <AsLaid y={woodTop - laidUm * frame.perUm} width={size.width} label={props.asLaid?.label ?? ''} />
        )}
        <rect class="film-frame" x="0.75" y="0.75" width={size.width - 1.5} height={size.height - 1.5} />
      </g>
      {isPicked && (
        <FilmHandles bands={bands} width={size.width} selectedKey={props.selectedKey} onPick={onPick} />
      )}
    </svg>
  );
}

/** Where the surface was when the newest coat had just gone on. */
const AsLaid = ({
  y,
  width,
  label,
}: {
  readonly y: number;
  readonly width: number;
  readonly label: string;
}) => (
  <g class="film-as-laid">
    <path d={`M0 ${y}H${width}`} />
    <text class="film-name" x={width + 9} y={y}>
      {label}
    </text>
  </g>
);
