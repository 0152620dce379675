export interface BandTimeProps {
  /** What comes at this time: "Recoat from". */
  readonly label: string;
  readonly likely: string;
  readonly earliest: string;
  readonly late: string;
  /** The day, when it is not today. */
  readonly day?: string | undefined;
  /** `board`: readable across the shop. */
  readonly size?: 'row' | 'page' | 'board' | undefined;
}

/** "14:20": longer times are drawn smaller on the board, so that each stands on one line. */
const SHORTEST = 5;

/** A time with its band: the likely time large, and between which times it lies. */
export function BandTime({ label, likely, earliest, late, day, size = 'page' }: BandTimeProps) {
  return (
    <p class="band-time" data-size={size} style={{ '--chars': String(Math.max(SHORTEST, likely.length)) }}>
      <span class="band-label">{label}</span>{' '}
      <span class="band-likely digits">
        {day && <span class="band-day">{day} </span>}
        {likely}
      </span>{' '}
      <span class="band-range digits">
        ({earliest}–{late})
      </span>
    </p>
  );
}
