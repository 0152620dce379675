import { MINUTE_MS } from '../units';
import type { Shop } from './fold/fold';

/** Two phones of one shop may differ by so much. */
export const CLOCKS_DIFFER_MS = 10 * MINUTE_MS;

/** When an entry was logged, by its id (RFC 9562, 5.7: the first 48 bits are milliseconds since 1970). */
export const loggedMs = (id: string): number => Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16) || 0;

/** When the clock said the latest of what is logged, by its entry or by when it was logged; a clock that goes on is never before it. */
export const clockSaidMs = ({ newest, last }: Pick<Shop, 'newest' | 'last'>): number =>
  Math.max(loggedMs(newest), last ? Date.parse(last.at) : 0);

/** Whether the clock has gone back behind what is logged: it was wrong then, or is now. */
export const isClockBehind = (shop: Pick<Shop, 'newest' | 'last'>, nowMs: number): boolean =>
  clockSaidMs(shop) > nowMs + CLOCKS_DIFFER_MS;

/** A bench that rests for longer than this is rare (judgement, no source); a clock that has jumped a year is not. */
const LONGEST_REST_MS = 180 * 86_400_000;

/** Whether so long has gone by since the latest of what is logged that the clock may have jumped forward. */
export const isClockFarOn = (shop: Pick<Shop, 'newest' | 'last'>, nowMs: number): boolean =>
  shop.newest !== '' && nowMs - clockSaidMs(shop) > LONGEST_REST_MS;
