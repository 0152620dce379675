import { type Frame, type GroundMark, type LayerBand, scaleStep } from './film-picture';

interface FilmScaleProps {
  readonly bands: readonly LayerBand[];
  readonly frame: Frame;
  readonly spanUm: number;
  readonly marks: readonly Named[];
  readonly unit: { readonly label: string; readonly um: number };
  readonly wood: { readonly label: string; readonly depth: number; readonly grounds: readonly GroundMark[] };
}

const LINE_HEIGHT = 13;

/** The ruler on the left, from bare wood up, and the coats' names on the right. */
export function FilmScale({ bands, frame, spanUm, unit, wood, marks }: FilmScaleProps) {
  const step = scaleStep(spanUm, unit.um);
  const ticks = Array.from({ length: Math.floor(spanUm / step.um) + 1 }, (_, n) => ({
    text: String(Number((n * step.value).toPrecision(3))),
    y: frame.woodTop - n * step.um * frame.perUm,
  }));
  const top = ticks.at(-1);
  return (
    <>
      <g class="film-ruler">
        <path d={`M-7 ${frame.woodTop}V${top?.y ?? 0}${ticks.map(({ y }) => `M-11 ${y}h8`).join('')}`} />
        {ticks.map(({ text, y }) => (
          <text key={text} x="-15" y={y + 4}>
            {text}
          </text>
        ))}
        <text class="film-unit" x="-15" y={(top?.y ?? 0) - 12}>
          {unit.label}
        </text>
      </g>
      <g class="film-names">
        {wood.grounds.map(({ label }, n) => (
          <text key={label} class="film-name" x={frame.width + 9} y={frame.woodTop + LINE_HEIGHT * (n + 1)}>
            {label}
          </text>
        ))}
        <text
          class="film-name"
          x={frame.width + 9}
          y={Math.max(
            frame.woodTop + wood.depth / 2 + 4,
            frame.woodTop + LINE_HEIGHT * (wood.grounds.length + 1),
          )}
        >
          {wood.label}
        </text>
        {spacedNames(bands, frame.woodTop, marks).map(({ key, label, at, y }) => (
          <g key={key}>
            <path d={`M${frame.width + 2} ${at}L${frame.width + 6} ${y}`} />
            <text class="film-name" x={frame.width + 9} y={y + 4}>
              {label}
            </text>
          </g>
        ))}
      </g>
    </>
  );
}

/** What is named beside the film, at its height: the middle of a coat, or a surface that was worked on. */
interface Named {
  readonly key: string;
  readonly label: string;
  readonly at: number;
}

interface Name extends Named {
  /** Where it is written. */
  readonly y: number;
}

/** The names, from the newest coat down, pushed apart where coats are thin; as many as the film has room for, marks before coats. */
export function spacedNames(
  bands: readonly LayerBand[],
  foot: number,
  marks: readonly Named[] = [],
): readonly Name[] {
  const all = bands
    .toReversed()
    .map(({ layer: { key, label }, top, foot }) => ({ key, label, at: (top + foot) / 2 }));
  const room = Math.max(1, Math.floor((foot - (bands.at(-1)?.top ?? foot)) / LINE_HEIGHT) + 1);
  const told = marks.slice(-Math.max(0, room - 1));
  const step = Math.ceil(all.length / Math.max(1, room - told.length));
  const shown = [...all.filter((_, n) => n % step === 0), ...told].sort((one, other) => one.at - other.at);
  const names: Name[] = [];
  for (const name of shown)
    names.push({
      ...name,
      y: Math.max(name.at, (names.at(-1)?.y ?? Number.NEGATIVE_INFINITY) + LINE_HEIGHT),
    });
  let lowest = foot;
  return names
    .toReversed()
    .map((name) => {
      const y = Math.min(name.y, lowest);
      lowest = y - LINE_HEIGHT;
      return { ...name, y };
    })
    .toReversed();
}
