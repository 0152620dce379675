import type { AirSpan } from '../history';

/** The air with a stretch of warm drying in it. */
export function warmFor(
  air: readonly AirSpan[],
  fromS: number,
  untilS: number,
  temperatureK: number,
): AirSpan[] {
  const at = (s: number) => air.findLast((span) => span.fromS <= s) ?? air[0];
  const [before, after] = [at(fromS), at(untilS)];
  if (!before || !after) return [...air];
  return [
    ...air.filter((span) => span.fromS < fromS),
    { ...before, fromS, temperatureK },
    { ...after, fromS: untilS },
    ...air.filter((span) => span.fromS > untilS),
  ];
}
