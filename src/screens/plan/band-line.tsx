export interface BandLineProps {
  /** The band in words; the drawing itself is not read out. */
  readonly describe: string;
  /** All on one axis, in any one unit (minutes, ms). */
  readonly from: number;
  readonly to: number;
  readonly earliest: number;
  readonly likely: number;
  readonly late: number;
  readonly now?: number | undefined;
  readonly fromLabel?: string | undefined;
  readonly toLabel?: string | undefined;
}

const WIDTH = 320;
const HEIGHT = 34;

/** Earliest, likely and late on a line: hatched before it may be, solid between, a peg at the likely time. */
export function BandLine({
  describe,
  from,
  to,
  earliest,
  likely,
  late,
  now,
  fromLabel,
  toLabel,
}: BandLineProps) {
  const x = (at: number): number => Math.min(WIDTH, Math.max(0, ((at - from) / (to - from || 1)) * WIDTH));
  return (
    <figure class="time-band">
      <svg viewBox={`-6 0 ${WIDTH + 12} ${HEIGHT}`} role="img" aria-label={describe}>
        <path class="time-line" d={`M0 20H${WIDTH}`} />
        <path class="time-spread" d={`M${x(earliest)} 20H${x(late)}`} />
        <path class="time-ends" d={`M${x(earliest)} 12v16M${x(late)} 12v16`} />
        <circle class="time-likely" cx={x(likely)} cy="20" r="8" />
        {now !== undefined && <path class="time-now" d={`M${x(now) - 6} 0h12l-6 9zM${x(now)} 4v28`} />}
      </svg>
      {(fromLabel || toLabel) && (
        <figcaption class="digits" aria-hidden="true">
          <span>{fromLabel}</span>
          <span>{toLabel}</span>
        </figcaption>
      )}
    </figure>
  );
}
