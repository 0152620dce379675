import { type Band, type Frame, scaleStep } from './film-picture';

interface FilmScaleProps {
  readonly bands: readonly Band[];
  readonly frame: Frame;
  readonly spanUm: number;
  readonly unit: { readonly label: string; readonly um: number };
  readonly wood: { readonly label: string; readonly depth: number };
}

const LINE_HEIGHT = 15;

/** The ruler on the left, from bare wood up, and the coats' names on the right. */
export function FilmScale({ bands, frame, spanUm, unit, wood }: FilmScaleProps) {
  const step = scaleStep(spanUm, unit.um);
  const marks = Array.from({ length: Math.floor(spanUm / step.um) + 1 }, (_, n) => ({
    text: String(Number((n * step.value).toPrecision(3))),
    y: frame.woodTop - n * step.um * frame.perUm,
  }));
  const top = marks.at(-1);
  return (
    <>
      <g class="film-ruler">
        <path d={`M-7 ${frame.woodTop}V${top?.y ?? 0}${marks.map(({ y }) => `M-11 ${y}h8`).join('')}`} />
        {marks.map(({ text, y }) => (
          <text key={text} x="-15" y={y + 4}>
            {text}
          </text>
        ))}
        <text class="film-unit" x="-15" y={(top?.y ?? 0) - 12}>
          {unit.label}
        </text>
      </g>
      <g class="film-names">
        <text class="film-name" x={frame.width + 9} y={frame.woodTop + wood.depth / 2 + 4}>
          {wood.label}
        </text>
        {spacedNames(bands).map(({ key, label, y }) => (
          <g key={key}>
            <path d={`M${frame.width + 2} ${y}h4`} />
            <text class="film-name" x={frame.width + 9} y={y + 4}>
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
