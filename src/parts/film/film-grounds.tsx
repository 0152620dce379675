import type { Frame, GroundMark } from './film-picture';

const PORES_APART = 19;
const PORE_DEPTH = 9;
const GAP = { left: 0.62, width: 0.14, depth: 15 };
const JOINT = 0.86;
const SEALED_DEPTH = 4;

/** What fills the pores and gaps of the wood, seals its grain or joins it. It has no film: it is drawn, not measured. */
export function FilmGrounds({
  frame: { width, woodTop },
  depth,
  grounds,
}: {
  readonly frame: Frame;
  readonly depth: number;
  readonly grounds: readonly GroundMark[];
}) {
  return (
    <g class="film-grounds" transform={`translate(0 ${woodTop})`}>
      {grounds.map(({ is, isTinted }) => (
        <path key={is} data-ground={is} data-tinted={isTinted || undefined} d={shapeOf(is, width, depth)} />
      ))}
    </g>
  );
}

function shapeOf(is: GroundMark['is'], width: number, depth: number): string {
  switch (is) {
    case 'pore-filler':
      return Array.from(
        { length: Math.floor(width / PORES_APART) },
        (_, n) => `M${n * PORES_APART + 6} 0q3.5 ${2 * PORE_DEPTH + (n % 3) * 4} 7 0z`,
      ).join('');
    case 'filler-paste':
      return `M${width * GAP.left} 0l6 ${GAP.depth}h${width * GAP.width - 12}l6 -${GAP.depth}z`;
    case 'grain-sealer':
      return `M0 ${SEALED_DEPTH}H${width}`;
    case 'glue':
      return `M${width * JOINT} 0V${depth}`;
  }
}
