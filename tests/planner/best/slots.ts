import fc from 'fast-check';
import type { Bench, Piece, Step } from '../../../src/planner/step';
import { coat, piece, utc, wait, window, working } from '../a-bench';

// Benches whose every time is a whole number of hours ("slots"), so that a search that knows nothing of the planner's reasoning can
// try all starts. One description makes both the planner's bench and the slots the search looks at.

export interface SlotStep {
  readonly duration: number;
  readonly move: number;
  readonly inBooth: boolean;
  readonly isCoat: boolean;
  readonly isHeld: boolean;
  readonly lag: number;
  /** Slots after the lag in which it must begin, or none. */
  readonly windowLength: number | undefined;
}
export interface SlotPiece {
  readonly coatsADay: number;
  readonly promised: number | undefined;
  readonly steps: readonly SlotStep[];
  readonly finalWait: number;
}
export interface SlotBench {
  readonly open: number;
  readonly close: number;
  readonly closed: readonly (readonly [from: number, length: number])[];
  readonly unfit: readonly (readonly [from: number, length: number])[];
  readonly pieces: readonly SlotPiece[];
}

export const SLOT = 60;
export const START = utc('2026-03-02 00:00');

const isOneIn = (n: number) => fc.integer({ min: 1, max: n }).map((value) => value === 1);

const slotStep: fc.Arbitrary<SlotStep> = fc.record({
  duration: fc.constantFrom(1, 1, 1, 2),
  move: fc.constantFrom(0, 0, 1),
  inBooth: fc.boolean(),
  isCoat: fc.boolean(),
  isHeld: isOneIn(3),
  lag: fc.constantFrom(0, 1, 1, 2, 3, 5, 20, 30),
  windowLength: fc.option(fc.integer({ min: 1, max: 4 }), { freq: 2, nil: undefined }),
});

const slotPiece: fc.Arbitrary<SlotPiece> = fc.record({
  coatsADay: fc.integer({ min: 1, max: 3 }),
  promised: fc.option(fc.integer({ min: 8, max: 60 }), { freq: 1, nil: undefined }),
  steps: fc.array(slotStep, { minLength: 1, maxLength: 3 }),
  finalWait: fc.constantFrom(0, 0, 3, 24),
});

const spells = fc.array(fc.tuple(fc.integer({ min: 8, max: 60 }), fc.integer({ min: 1, max: 4 })), {
  maxLength: 2,
});

/** Up to three pieces with up to nine steps that need the person, and the waits, windows and holds between them. */
export const slotBench: fc.Arbitrary<SlotBench> = fc
  .record({
    open: fc.constantFrom(8, 9),
    length: fc.integer({ min: 3, max: 7 }),
    closed: spells,
    unfit: spells,
    pieces: fc.array(slotPiece, { minLength: 1, maxLength: 3 }),
  })
  .map(({ length, ...rest }) => ({ ...rest, close: rest.open + length }));

/** The same bench as the planner knows it. */
export function toBench({ open, close, closed, unfit, pieces }: SlotBench): Bench {
  const span = ([from, length]: readonly [number, number]) => ({
    from: START + from * SLOT,
    to: START + (from + length) * SLOT,
  });
  return {
    now: START,
    working: working(open, close, {
      closures: closed.map((spell) => ({ ...span(spell), closes: 'spraying' })),
      unfitAir: unfit.map((spell) => ({ ...span(spell), because: 'blush' })),
    }),
    pieces: pieces.map(toPiece),
  };
}

function toPiece({ coatsADay, promised, steps, finalWait }: SlotPiece, index: number): Piece {
  const name = `p${index}`;
  const last: Step[] = finalWait > 0 ? [wait(`${name}-end`, finalWait * SLOT)] : [];
  return piece(name, [...steps.flatMap((step, at) => toSteps(step, `${name}-${at}`, at === 0)), ...last], {
    coatsADay,
    ...(promised === undefined ? {} : { promised: START + promised * SLOT }),
  });
}

function toSteps(step: SlotStep, id: string, isFirst: boolean): Step[] {
  const gap = isFirst ? [] : gapSteps(step, id);
  const held: Step[] = step.isHeld ? [{ id: `${id}-hold`, kind: 'hold', against: 'blush' }] : [];
  const work = coat(id, {
    place: step.inBooth ? 'booth' : 'bench',
    minutes: step.duration * SLOT,
    moveMinutes: step.move * SLOT,
    isCoat: step.isCoat,
  });
  return [...gap, ...held, work];
}

function gapSteps({ lag, windowLength }: SlotStep, id: string): Step[] {
  if (windowLength === undefined) return lag > 0 ? [wait(`${id}-wait`, lag * SLOT)] : [];
  return [window(`${id}-window`, lag * SLOT, (lag + windowLength) * SLOT)];
}
