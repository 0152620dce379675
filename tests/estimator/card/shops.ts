import {
  between,
  chancesOf,
  checkMarginK,
  EVAPORATION_SPREAD,
  PRIOR,
  quantile,
  RUN_AT,
  WEIGHED_AT,
  weigh,
} from '../../../src/estimator/belief';
import { heldBetween, heldTable, laidDryKg } from '../../../src/estimator/card/held';
import { warmFor } from '../../../src/estimator/card/warm-for';
import { weighCard } from '../../../src/estimator/card/weigh-card';
import type { Belief, FilmCheck } from '../../../src/estimator/estimate';
import { lastWetS, secondsTo } from '../../../src/estimator/read-off';
import { simulate } from '../../../src/estimator/simulate';
import type { Trace } from '../../../src/estimator/trace';
import { DAY_S, stack } from '../stacks';

/** What a shop did to learn how fast its lacquer dries. */
export const WAYS = ['nothing', 'thumb', 'paper', 'card', 'card and both'] as const;
type Way = (typeof WAYS)[number];

/** One shop after it learned in one way: its band for rubbing out, and what was true. */
export interface Outcome {
  readonly way: Way;
  /** Late over early, the square root of it: either way. */
  readonly factor: number;
  /** Likely over true. */
  readonly off: number;
  readonly isInside: boolean;
}

const TENTH = 1.2816;
const AREA_M2 = 0.02;
const BARE_KG = 0.001;
const DIVISION_KG = 1e-6;
const COLD = { ...stack({ coats: 3, dryUm: 12 }), panelEffusivity: 60 };
const LAST_S = lastWetS(COLD);
const WEIGHED_DAYS = [0.25, 1, 2];
const WARM_DAY = 6;
const WARM_K = 330.15;
/** How sharply the thumb and the paper of these shops tell, K: as the app takes them to. */
const SHARPNESS_K = 4;
const TRIED_DAYS = [0.1, 0.3, 1, 2, 4, 7];
/** A piece differs from the card beside it by so much, in the logarithm of the diffusivity. */
const APART = 0.1;
const NORMAL = [-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2].map((z) => ({ z, weight: Math.exp(-0.5 * z * z) }));

/** Numbers between 0 and 1, the same for the same seed. */
export function evenFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
}

interface World {
  readonly runs: readonly Trace[];
  readonly faster: Trace;
  readonly slower: Trace;
}

/** The piece of every shop, marched once: 108 um in three days, sanded at 21 C. */
function world(): World {
  const piece = stack();
  const run = (lnD: number, lnE: number): Trace =>
    simulate(
      {
        ...piece,
        binder: {
          ...piece.binder,
          glassDiffusivityM2S: piece.binder.glassDiffusivityM2S * Math.exp(lnD),
        },
        air: piece.air.map((span) => ({ ...span, transferMS: span.transferMS * Math.exp(lnE) })),
      },
      {
        untilS: lastWetS(piece) + 200 * DAY_S,
        isDone: ({ biteTgK, timeS }) =>
          (biteTgK.at(-1) as number) > piece.sandingK + 13 &&
          (timeS.at(-1) as number) > lastWetS(piece) + 8 * DAY_S,
      },
    ).trace;
  return {
    runs: RUN_AT.map((lnD) => run(lnD, 0)),
    faster: run(0, Math.log(1.5)),
    slower: run(0, -Math.log(1.5)),
  };
}

/** So many shops with constants from inside the prior or from outside it, each learning in every way. */
export function shops(count: number, from: 'inside' | 'outside', seed: number): Outcome[] {
  const even = evenFrom(seed);
  const normal = (): number => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
  const piece = stack();
  const { runs, faster, slower } = world();
  const logs = runs.map((trace) => Math.log(secondsTo(trace, piece, 'rubOut')));
  const slope =
    (Math.log(secondsTo(faster, piece, 'rubOut')) - Math.log(secondsTo(slower, piece, 'rubOut'))) /
    (2 * Math.log(1.5));
  const trials = TRIED_DAYS.map((day) => lastWetS(piece) + day * DAY_S);
  const marginsOf = (test: FilmCheck['test']) =>
    trials.map((atS) =>
      runs.map((trace) => checkMarginK(trace, { atS, test, passes: true }, piece.sandingK)),
    );
  const margins = { print: marginsOf('print'), gum: marginsOf('gum') };

  function outcome(way: Way, belief: Belief, checks: readonly FilmCheck[], truth: Truth): Outcome {
    const rowsOf = checks.map(
      ({ test, atS }) => margins[test as 'print' | 'gum'][trials.indexOf(atS)] as number[],
    );
    const weights = weigh(belief, chancesOf(checks, rowsOf));
    const rows = WEIGHED_AT.flatMap((x, k) =>
      NORMAL.map(({ z, weight }) => ({
        value: between(logs, x) + slope * z * EVAPORATION_SPREAD,
        weight: weight * (weights[k] as number),
      })),
    );
    const total = rows.reduce((sum, { weight }) => sum + weight, 0);
    const even1 = rows.map(({ value, weight }) => ({ value, weight: weight / total }));
    const [early, likely, late] = [0.1, 0.5, 0.9].map((share) => quantile(even1, share)) as [
      number,
      number,
      number,
    ];
    const is = between(logs, truth.lnD) + slope * truth.lnE;
    return {
      way,
      factor: Math.exp((late - early) / 2),
      off: Math.exp(likely - is),
      isInside: is >= early && is <= late,
    };
  }

  interface Truth {
    readonly lnD: number;
    readonly lnE: number;
  }

  function checksOf(test: 'print' | 'gum', { lnD }: Truth): FilmCheck[] {
    return trials.map((atS, i) => {
      const margin = between(margins[test][i] as number[], lnD) / SHARPNESS_K;
      return { atS, test, passes: even() < 1 / (1 + Math.exp(-margin)) };
    });
  }

  function cardSays({ lnD, lnE }: Truth): Belief {
    const [fromS, untilS] = [LAST_S + (WARM_DAY - 1) * DAY_S, LAST_S + WARM_DAY * DAY_S];
    const said = { ...COLD, air: warmFor(COLD.air, fromS, untilS, WARM_K) };
    const thick = Math.max(0.5, 1 + 0.2 * normal());
    const history = {
      ...COLD,
      air: warmFor(COLD.air, fromS, untilS, WARM_K + 2.5 * normal()),
      events: COLD.events.map((event) =>
        event.kind === 'coat' ? { ...event, dryM: event.dryM * thick } : event,
      ),
    };
    const atS = [...WEIGHED_DAYS, WARM_DAY].map((day) => LAST_S + day * DAY_S);
    const table = heldTable(history, AREA_M2, atS);
    const dryKg = laidDryKg({ history, areaM2: AREA_M2 });
    const water = 0.03 * (1 + 0.3 * normal());
    const ofCard = lnD + APART * normal();
    const onScale = (kg: number) =>
      Math.round((kg + 0.5 * DIVISION_KG * normal()) / DIVISION_KG) * DIVISION_KG;
    const weighings = atS.map((moment, w) => {
      const humidity = 0.4 + 0.2 * even();
      return {
        atS: moment,
        humidity: humidity + 0.03 * normal(),
        isWarmDried: w === atS.length - 1,
        massKg: onScale(BARE_KG + dryKg * (1 + water * humidity) + heldBetween(table, w, ofCard, lnE)),
      };
    });
    const { diffusivity } = weighCard({
      history: said,
      areaM2: AREA_M2,
      bareKg: onScale(BARE_KG),
      divisionKg: DIVISION_KG,
      weighings,
    });
    return { mean: diffusivity.mean, spread: Math.hypot(diffusivity.spread, APART) };
  }

  return Array.from({ length: count }, () => {
    const far = (even() < 0.5 ? -1 : 1) * (TENTH * PRIOR.spread + 0.8 * even());
    const truth = {
      lnD: Math.max(-1.8, Math.min(1.8, from === 'inside' ? PRIOR.spread * normal() : far)),
      lnE: EVAPORATION_SPREAD * normal(),
    };
    const [thumb, paper] = [checksOf('print', truth), checksOf('gum', truth)];
    const card = cardSays(truth);
    return [
      outcome('nothing', PRIOR, [], truth),
      outcome('thumb', PRIOR, thumb, truth),
      outcome('paper', PRIOR, paper, truth),
      outcome('card', card, [], truth),
      outcome('card and both', card, [...thumb, ...paper], truth),
    ];
  }).flat();
}

/** Of the outcomes of one way: how many lay inside, the middle factor of the band, and the middle error. */
export function summary(outcomes: readonly Outcome[], way: Way) {
  const own = outcomes.filter((one) => one.way === way);
  const middle = (values: readonly number[]): number =>
    values.toSorted((one, other) => one - other)[values.length >> 1] as number;
  return {
    count: own.length,
    inside: own.filter(({ isInside }) => isInside).length / own.length,
    factor: middle(own.map(({ factor }) => factor)),
    error: middle(own.map(({ off }) => Math.max(off, 1 / off))),
  };
}
