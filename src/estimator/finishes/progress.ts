import { HOUR_S } from '../../units';
import { LONGEST_S } from '../read-off';
import { USUAL_SHOP } from '../usual-shop';
import type { FinishLaw } from './finish-law';
import type { LawAir } from './law-history';
import { cureRateS, dryingRate } from './rates';

/** How far a coat has come at moments after it was laid: dried, in seconds at the reference, and cured, a fraction. */
export interface Progress {
  readonly timeS: readonly number[];
  readonly dried: readonly number[];
  readonly cured: readonly number[];
}

/** Thicker films are slower: the factors by which drying and cure are stretched. */
export interface Stretch {
  readonly drying: number;
  readonly cure: number;
}

const UNSTRETCHED: Stretch = { drying: 1, cure: 1 };
const FIRST_STEP_S = 30;
const GROWTH = 1.06;
const LONGEST_STEP_S = 6 * HOUR_S;

/** Follows a coat from a moment on through the air, for up to 500 days. */
export function progress(
  law: FinishLaw,
  air: readonly LawAir[],
  fromS: number,
  stretch: Stretch = UNSTRETCHED,
  forS: number = LONGEST_S,
): Progress {
  const timeS = [fromS];
  const dried = [0];
  const cured = [0];
  const spans = air.length > 0 ? air : [{ fromS, ...USUAL_SHOP }];
  let index = Math.max(
    0,
    spans.findLastIndex((span) => span.fromS <= fromS),
  );
  let now = fromS;
  let step = FIRST_STEP_S;
  let dry = 0;
  let cure = 0;
  while (now < fromS + forS) {
    const span = spans[index] as LawAir;
    const spanEndS = spans[index + 1]?.fromS ?? Number.POSITIVE_INFINITY;
    const nextS = Math.min(now + step, spanEndS, fromS + forS);
    const dt = nextS - now;
    dry += (dryingRate(law, span) * dt) / stretch.drying;
    cure = curedAfter(law, cure, span.temperatureK, dt / stretch.cure);
    now = nextS;
    timeS.push(now);
    dried.push(dry);
    cured.push(cure);
    if (now >= spanEndS) index++;
    step = Math.min(LONGEST_STEP_S, step * GROWTH);
  }
  return { timeS, dried, cured };
}

/** Midpoint rule: the cure is smooth on the scale of a step. */
function curedAfter(law: FinishLaw, cured: number, temperatureK: number, dt: number): number {
  const half = Math.min(1, cured + (cureRateS(law, cured, temperatureK) * dt) / 2);
  return Math.min(1, cured + cureRateS(law, half, temperatureK) * dt);
}

/** When a column first reaches a value, s on the history's clock; Infinity where it does not. */
export function reachedS({ timeS }: Progress, column: readonly number[], value: number): number {
  const k = column.findIndex((reached) => reached >= value);
  if (k < 0) return Number.POSITIVE_INFINITY;
  if (k === 0) return timeS[0] as number;
  const [a, b] = [column[k - 1] as number, column[k] as number];
  const [from, to] = [timeS[k - 1] as number, timeS[k] as number];
  return from + ((value - a) / (b - a)) * (to - from);
}

/** A column at a moment, between its steps. */
export function valueAt({ timeS }: Progress, column: readonly number[], atS: number): number {
  const k = timeS.findIndex((moment) => moment >= atS);
  if (k <= 0) return column[k < 0 ? column.length - 1 : 0] as number;
  const [from, to] = [timeS[k - 1] as number, timeS[k] as number];
  const [a, b] = [column[k - 1] as number, column[k] as number];
  return a + ((b - a) * (atS - from)) / (to - from);
}
