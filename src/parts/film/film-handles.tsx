import { useRef, useState } from 'preact/hooks';
import type { LayerBand } from './film-picture';

interface FilmHandlesProps {
  readonly bands: readonly LayerBand[];
  readonly width: number;
  readonly selectedKey: string | undefined;
  readonly onPick: (key: string) => void;
}

const STEPS: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 };

/** What the finger and the keyboard take hold of: one place in the tab order, arrows go from coat to coat. */
export function FilmHandles({ bands, width, selectedKey, onPick }: FilmHandlesProps) {
  const [focusedKey, setFocusedKey] = useState<string | undefined>(undefined);
  const handles = useRef(new Map<string, SVGRectElement>());
  const inTabOrder = bands.find(({ layer }) => layer.key === (focusedKey ?? selectedKey)) ?? bands.at(-1);

  function onKeyDown(event: KeyboardEvent, index: number, key: string): void {
    const step = STEPS[event.key];
    if (step !== undefined) handles.current.get(bands[index + step]?.layer.key ?? key)?.focus();
    else if (event.key === 'Enter' || event.key === ' ') onPick(key);
    else return;
    event.preventDefault();
  }

  return (
    <g class="film-handles">
      {bands.map(({ layer: { key, label }, top, foot }, index) => (
        // biome-ignore lint/a11y/useSemanticElements: an SVG has no button of its own.
        <rect
          key={key}
          ref={(rect: SVGRectElement | null) => {
            if (rect) handles.current.set(key, rect);
            else handles.current.delete(key);
          }}
          x="1.5"
          y={top}
          width={width - 3}
          height={Math.max(foot - top, 1)}
          role="button"
          tabindex={inTabOrder?.layer.key === key ? 0 : -1}
          aria-label={label}
          aria-pressed={selectedKey === key}
          onClick={() => onPick(key)}
          onFocus={() => setFocusedKey(key)}
          onKeyDown={(event: KeyboardEvent) => onKeyDown(event, index, key)}
        />
      ))}
    </g>
  );
}
