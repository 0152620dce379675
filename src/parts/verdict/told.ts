import type { Reason } from '../../verdicts/reason';
import { filmWords, percentWords, temperatureWords, type UnitSystem } from '../../words/quantities';
import { dayWords, whenWords } from '../../words/times';
import { REASON_WORDS } from '../../words/verdicts/reasons';

const NONE = '';
const NEAR_MS = 36 * 3_600_000;

/** What a reason says, in the units of the shop and beside its clock. */
export function reasonWords({ says, figures = {} }: Reason, units: UnitSystem, nowMs: number): string {
  const { atMs, filmM, limitM, temperatureK, limitK, share, limitShare } = figures;
  const film = (m: number | undefined): string => (m === undefined ? NONE : filmWords(m, units));
  const degrees = (k: number | undefined): string => (k === undefined ? NONE : temperatureWords(k, units));
  const percent = (part: number | undefined): string => (part === undefined ? NONE : percentWords(part));
  return REASON_WORDS[says]({
    at: atMs === undefined ? NONE : nearWords(atMs, nowMs),
    film: film(filmM),
    limitFilm: film(limitM),
    temperature: degrees(temperatureK),
    limitTemperature: degrees(limitK),
    share: percent(share),
    limitShare: percent(limitShare),
  });
}

const nearWords = (atMs: number, nowMs: number): string =>
  Math.abs(atMs - nowMs) < NEAR_MS ? whenWords(atMs, nowMs) : dayWords(atMs, nowMs);
