import { type Band, type Frame, scaleStep } from './film-picture';

interface FilmScaleProps {
  readonly bands: readonly Band[];
  readonly frame: Frame;
  readonly spanUm: number;
  readonly unit: { readonly label: string; readonly um: number };
}

const LINE_HEIGHT = 15;

/** The ruler on the left, from bare wood up, and the coats' names on the right. */
export function FilmScale({ bands, frame, spanUm, unit }: FilmScaleProps) {
  const step = scaleStep(spanUm, unit.um);
  const marks = Array.from({ length: Math.floor(spanUm / step.um) + 1 }, (_, n) => ({
    text: String(Number((n * step.value).toPrecision(3))),
    y: frame.woodTop - n * step.um * frame.perUm,
  }));
  const top = marks.at(-1);
  return (
    <>
      <g class="film-ruler">
        <path d={`M-10 ${frame.woodTop}V${top?.y ?? 0}${marks.map(({ y }) => `M-15 ${y}h10`).join('')}`} />
        {marks.map(({ text, y }) => (
          <text key={text} x="-20" y={y + 4}>
            {text}
          </text>
        ))}
        <text class="film-unit" x="-20" y={(top?.y ?? 0) - 12}>
          {unit.label}
        </text>
      </g>
      <g class="film-names">
        {spacedNames(bands).map(({ key, label, y }) => (
          <g key={key}>
            <path d={`M${frame.width + 2} ${y}h6`} />
            <text class="film-name" x={frame.width + 12} y={y + 4}>
              {label}
            </text>
          </g>
        ))}
      </g>
    </>
  );
}

/** The names that have room, from the newest coat down. */
function spacedNames(bands: readonly Band[]): { key: string; label: string; y: number }[] {
  const names: { key: string; label: string; y: number }[] = [];
  for (const { layer, top, foot } of bands.toReversed()) {
    const y = (top + foot) / 2;
    if (y - (names.at(-1)?.y ?? Number.NEGATIVE_INFINITY) >= LINE_HEIGHT) names.push({ ...layer, y });
  }
  return names;
}
