import type { BandMs } from '../../words/times';
import { AXIS_MARKS_MS, alongAxis } from './axis';

const percent = (share: number): string => `${(share * 100).toFixed(2)}%`;

export interface WaitBarProps {
  /** The wait; a mark at now where there is none any more. */
  readonly band?: BandMs | undefined;
  readonly nowMs: number;
}

/** A wait with its band on the one axis; the words beside it tell the same. */
export function WaitBar({ band, nowMs }: WaitBarProps) {
  const at = (ms: number): number => alongAxis(ms - nowMs);
  return (
    <span class="wait-bar" data-ready={band === undefined || undefined} aria-hidden="true">
      {band && <i style={{ left: percent(at(band.earliestMs)), right: percent(1 - at(band.lateMs)) }} />}
      <b style={{ left: percent(band ? at(band.likelyMs) : 0) }} />
    </span>
  );
}

/** The marks that all bars below it share. */
export function WaitAxis({ marks }: { readonly marks: readonly string[] }) {
  return (
    <p class="wait-axis" aria-hidden="true">
      {marks.map((mark, i) => (
        <span key={mark} style={{ left: percent(alongAxis(AXIS_MARKS_MS[i] ?? 0)) }}>
          {mark}
        </span>
      ))}
    </p>
  );
}
