import type { Frame } from './film-picture';
import { surfacePath, woodGrain } from './wood-grain';

const SKIN = 2; // the grain ends below the uneven surface, or it would show in the first coat

/** The wood under the film, end grain showing; its surface keeps the unevenness that the coats level. */
export function FilmWood({
  frame: { width, woodTop },
  depth,
}: {
  readonly frame: Frame;
  readonly depth: number;
}) {
  const { rings, pores } = woodGrain(width, depth);
  return (
    <g class="film-wood" transform={`translate(0 ${woodTop})`}>
      <path class="film-board" d={surfacePath(width, 0, depth)} />
      <svg aria-hidden="true" y={SKIN} width={width} height={depth}>
        {rings.map((path) => (
          <path key={path} class="film-ring" d={path} />
        ))}
        {pores.map(({ x, y, r }) => (
          <ellipse key={x} cx={x.toFixed(1)} cy={y.toFixed(1)} rx={r.toFixed(1)} ry={(r * 0.7).toFixed(1)} />
        ))}
      </svg>
    </g>
  );
}
