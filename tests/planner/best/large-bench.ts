import type { Bench, Piece, Step } from '../../../src/planner/step';
import { bench, coat, hours, piece, utc, wait, window, working } from '../a-bench';

/** A stream of whole numbers below `most` that is the same for the same seed (Numerical Recipes' quick generator). */
export function numbers(seed: number): (most: number) => number {
  let state = seed >>> 0;
  return (most) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * most);
  };
}

const DAY = 1440;
export const NOW = utc('2026-03-02 08:00'); // a Monday

/** Days before level-sanding as the trade has them, thin furniture to aerosol heavy build ("Timing": common practice, no source). */
const TRADE_RESTS = [3, 5, 7, 14, 21, 28] as const;

/** Hardly a rest long enough to do the other pieces in. */
export const SHORT_RESTS = [3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14] as const;

/** A busy shop: pieces of about fifteen steps each, coats, a rest of days, level-sanding, a rest, rubbing out. */
export function largeBench(seed: number, pieces: number, rests: readonly number[] = TRADE_RESTS): Bench {
  const pick = numbers(seed);
  const weekdays = Array.from({ length: 5 }, () => ({ ...hours(8, 17), booth: [{ open: 540, close: 960 }] }));
  const closures = Array.from({ length: 6 }, () => {
    const from = NOW + pick(20) * DAY + 60 + pick(400);
    return { from, to: from + 20 + pick(100), closes: 'spraying' } as const;
  });
  return {
    now: NOW,
    working: { ...working(8, 17), week: [...weekdays, { work: [] }, { work: [] }], closures },
    pieces: Array.from({ length: pieces }, (_, index) => aPiece(`p${index}`, pick, rests)),
  };
}

function aPiece(id: string, pick: (most: number) => number, rests: readonly number[]): Piece {
  const coats = 4 + pick(3);
  const isCatalysed = pick(5) === 0;
  const gap = (at: number): Step =>
    isCatalysed && at < 3 ? window(`${id}-w${at}`, 45, 240) : wait(`${id}-w${at}`, 45 + pick(5) * 15);
  const layers = Array.from({ length: coats }, (_, at) => [
    ...(at > 0 ? [gap(at)] : []),
    coat(`${id}-c${at}`, { minutes: 5 + pick(3) * 5 }),
  ]).flat();
  const rest = (rests[pick(rests.length)] as number) * DAY;
  return piece(id, [
    bench(`${id}-scuff`, 20 + pick(20)),
    ...layers,
    wait(`${id}-rest`, rest, rest * 0.7, rest * 1.5),
    bench(`${id}-sand`, 30 + pick(60)),
    wait(`${id}-after`, (1 + pick(3)) * DAY),
    bench(`${id}-rub`, 30 + pick(60)),
  ]);
}
