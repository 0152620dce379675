import { useId } from 'preact/hooks';
import { dropRadius, type Frame, type LayerBand, solventDrops } from './film-picture';
import { surfacePath } from './wood-grain';

interface FilmCoatsProps {
  readonly bands: readonly LayerBand[];
  readonly frame: Frame;
  readonly depth: number;
  readonly compact: boolean;
}

const AREA_PER_DROP = 110;
const AREA_PER_DROP_COMPACT = 40;

/** The coats. Each is drawn from its surface down; the one below it is drawn over it, so no seam can open. */
export function FilmCoats({ bands, frame, depth, compact }: FilmCoatsProps) {
  const id = useId();
  return (
    <g class="film-coats">
      <CoatPatterns id={id} />
      {bands.toReversed().map((band) => (
        <Coat
          key={band.layer.key}
          band={band}
          path={surfacePath(frame.width, band.number, depth * 2)}
          id={id}
        />
      ))}
      {bands.map((band) => (
        <g key={band.layer.key} class="film-drops">
          {solventDrops(band, frame, compact ? AREA_PER_DROP_COMPACT : AREA_PER_DROP).map(({ x, y }) => (
            <circle key={x} cx={x.toFixed(1)} cy={y.toFixed(1)} r={dropRadius(band).toFixed(1)} />
          ))}
        </g>
      ))}
      {!compact && <Vapour top={bands.at(-1)} width={frame.width} />}
    </g>
  );
}

function Coat({ band, path, id }: { readonly band: LayerBand; readonly path: string; readonly id: string }) {
  const { tint, pattern = 'none', isTraced } = band.layer;
  const style = {
    '--top': `${band.top.toFixed(2)}px`,
    '--foot': `${band.foot.toFixed(2)}px`,
    '--wetness': `${Math.round(Math.min(1, band.wetness * 1.15) * 100)}%`,
    ...(tint !== undefined && { '--tint': tint }),
  };
  return (
    <g class="film-coat" style={style}>
      <path class="film-shape film-body" d={path} />
      {pattern !== 'none' && <path class="film-shape" d={path} fill={`url(#${id}-${pattern})`} />}
      {isTraced && <path class="film-shape" d={path} fill={`url(#${id}-lozenges)`} />}
      <path class="film-shape film-seam" d={path} />
    </g>
  );
}

/** Kinds of coat differ by a drawn pattern, not by hue alone. */
function CoatPatterns({ id }: { readonly id: string }) {
  const tile = { width: 7, height: 7, patternUnits: 'userSpaceOnUse' } as const;
  return (
    <defs class="film-patterns">
      <pattern id={`${id}-hatch`} {...tile}>
        <path d="M-1 8L8 -1" />
      </pattern>
      <pattern id={`${id}-cross`} {...tile}>
        <path d="M-1 8L8 -1M-1 -1L8 8" />
      </pattern>
      <pattern id={`${id}-lozenges`} {...tile} width={14} height={6}>
        <path class="film-tracer" d="M4 0.8L6.2 3L4 5.2L1.8 3Z" />
      </pattern>
      <pattern id={`${id}-dash`} {...tile}>
        <path d="M0.5 3.5h4" />
      </pattern>
    </defs>
  );
}

const VAPOUR_FROM = 0.03; // below this share of solvent nothing worth drawing leaves

function Vapour({ top, width }: { readonly top: LayerBand | undefined; readonly width: number }) {
  if (top === undefined || top.wetness < VAPOUR_FROM) return null;
  const count = Math.ceil(top.wetness * 9);
  const wisps = Array.from({ length: count }, (_, n) => ((n + 0.5) / count) * width);
  return (
    <g class="film-vapour">
      {wisps.map((x) => (
        <path key={x} d={`M${x.toFixed(1)} ${(top.top - 5).toFixed(1)}c-4 -3 4 -6 0 -9s3 -5 1 -8`} />
      ))}
    </g>
  );
}
