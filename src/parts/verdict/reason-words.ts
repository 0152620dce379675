import type { Reason } from '../../verdicts/reason';
import {
  filmWords,
  lowestWords,
  percentWords,
  temperatureWords,
  type UnitSystem,
} from '../../words/quantities';
import { dayWords, likelyWords } from '../../words/times';
import { REASON_WORDS } from '../../words/verdicts/reasons';

const NONE = '';

/** What a reason says, in the units of the shop and beside its clock. */
export function reasonWords({ says, figures = {}, until }: Reason, units: UnitSystem, nowMs: number): string {
  const { atMs, filmM, limitM, temperatureK, limitK, share, limitShare, jar = NONE } = figures;
  const film = (m: number | undefined): string => (m === undefined ? NONE : filmWords(m, units));
  const percent = (part: number | undefined): string => (part === undefined ? NONE : percentWords(part));
  return REASON_WORDS[says]({
    at: atMs === undefined ? NONE : until ? likelyWords(until, nowMs) : dayWords(atMs, nowMs),
    film: film(filmM),
    limitFilm: film(limitM),
    temperature: temperatureK === undefined ? NONE : temperatureWords(temperatureK, units),
    limitTemperature: limitK === undefined ? NONE : lowestWords(limitK, units),
    share: percent(share),
    limitShare: percent(limitShare),
    jar,
  });
}
