import type { Frame } from './film-picture';
import { surfacePath, woodGrain } from './wood-grain';

interface FilmWoodProps {
  readonly frame: Frame;
  readonly depth: number;
  readonly label: string | undefined;
}

/** The wood under the film, end grain showing; its surface keeps the unevenness that the coats level. */
export function FilmWood({ frame: { width, woodTop }, depth, label }: FilmWoodProps) {
  const { rings, pores } = woodGrain(width, depth);
  return (
    <g class="film-wood" transform={`translate(0 ${woodTop})`}>
      <path class="film-board" d={surfacePath(width, 0, depth)} />
      {rings.map((path) => (
        <path key={path} class="film-ring" d={path} />
      ))}
      {pores.map(({ x, y, r }) => (
        <ellipse
          key={x}
          cx={x.toFixed(1)}
          cy={(y + 3).toFixed(1)}
          rx={r.toFixed(1)}
          ry={(r * 0.7).toFixed(1)}
        />
      ))}
      {label !== undefined && (
        <text class="film-name" x={width + 12} y={depth / 2 + 4}>
          {label}
        </text>
      )}
    </g>
  );
}
