import { describe, expect, test } from 'vitest';
import { beliefOf, weigh } from '../../../src/estimator/belief';
import { type FilmCheck, MILESTONES } from '../../../src/estimator/estimate';
import { estimateByLaw } from '../../../src/estimator/finishes/estimate-by-law';
import type { CuringFinish } from '../../../src/estimator/finishes/finish-law';
import { SLOWNESSES } from '../../../src/estimator/finishes/law-belief';
import type { LawEstimate, LawRequest } from '../../../src/estimator/finishes/law-history';
import { CURING, onePiece, SHEET_AT_20 } from './cases';

/** What is believed after chances, from a normal belief of spread 1. */
const believed = (chances: readonly number[]) =>
  beliefOf(weigh({ mean: 0, spread: 1 }, chances, SLOWNESSES), SLOWNESSES);

const TESTS = ['print', 'gum', 'smell'] as const;
/** From a quarter of an hour to six weeks after the coat, s. */
const AT_S = [900, 3600, 4 * 3600, 86_400, 3 * 86_400, 10 * 86_400, 42 * 86_400];
const WAYS = CURING.flatMap((finish) => TESTS.map((check) => ({ finish, check })));

const told = (
  finish: CuringFinish,
  checks: readonly FilmCheck[],
  piece: LawRequest = onePiece({}),
): LawEstimate => estimateByLaw(finish, { ...piece, checks });

/** Every time of an estimate that is waited for, s. */
const waits = ({ milestones }: LawEstimate): number[] =>
  MILESTONES.flatMap((name) => Object.values(milestones[name]));
const windowEnds = ({ law }: LawEstimate): number[] => Object.values(law.recoatUntil ?? {});

/** Rounding of what is read off between steps. */
const SLACK = 1 + 1e-9;
const notLater = (ones: readonly number[], than: readonly number[]): boolean =>
  ones.every((one, i) => one <= (than[i] ?? Number.NaN) * SLACK);

describe.each(WAYS)('$check on $finish', ({ finish, check: test_ }) => {
  const plain = told(finish, []);
  const each = (passes: boolean, piece?: LawRequest) =>
    AT_S.map((atS) => told(finish, [{ atS, test: test_, passes }], piece));

  test('that passes never makes anything later', () => {
    for (const one of each(true)) {
      expect(notLater(waits(one), waits(plain))).toBe(true);
      expect(notLater(windowEnds(one), windowEnds(plain))).toBe(true);
    }
  });

  test('that fails never makes anything earlier, and never leaves the recoat window open for longer', () => {
    for (const one of each(false)) {
      expect(notLater(waits(plain), waits(one))).toBe(true);
      expect(notLater(windowEnds(one), windowEnds(plain))).toBe(true);
    }
  });

  test('never brings on what its data sheet prints, and never moves the printed end of the window', () => {
    const piece = onePiece({ temperatureK: 293.15, sheet: SHEET_AT_20 });
    const bySheet = told(finish, [], piece);
    for (const one of [...each(true, piece), ...each(false, piece)]) {
      for (const name of ['touch', 'recoat', 'level', 'settled'] as const) {
        const [now, printed] = [one.milestones[name], bySheet.milestones[name]];
        expect(now.likelyS * SLACK).toBeGreaterThanOrEqual(printed.likelyS);
        expect(now.earliestS * SLACK).toBeGreaterThanOrEqual(printed.earliestS);
      }
      expect(windowEnds(one)).toEqual(windowEnds(bySheet));
    }
  });

  test('is outweighed by nothing: two alike say more than one', () => {
    const column = test_ === 'print' ? 'drying' : 'cure';
    const moment = { print: 'recoat', gum: 'level', smell: 'rubOut' } as const;
    const atS = plain.milestones[moment[test_]].likelyS;
    const check = { atS, test: test_, passes: false };
    const [one, two] = [told(finish, [check]), told(finish, [check, check])];
    expect(believed(one.law.learned[column]).mean).toBeGreaterThan(0);
    expect(believed(two.law.learned[column]).mean).toBeGreaterThan(believed(one.law.learned[column]).mean);
    expect(believed(two.law.learned[column]).spread).toBeLessThan(1);
  });
});

test('a film that still gums at the typical time is later, and the narrower for having powdered at last', () => {
  const gum = (atS: number, passes: boolean): FilmCheck => ({ atS, test: 'gum', passes });
  const { level } = told('conversion', []).milestones;
  const failed = told('conversion', [gum(level.likelyS, false)]).milestones;
  const both = told('conversion', [gum(level.likelyS, false), gum(1.4 * level.likelyS, true)]).milestones;
  const width = (one: typeof level): number => one.lateS / one.earliestS;
  expect(failed.level.likelyS).toBeGreaterThan(1.1 * level.likelyS);
  expect(failed.rubOut.likelyS).toBeGreaterThan(told('conversion', []).milestones.rubOut.likelyS);
  expect(width(both.level)).toBeLessThan(width(failed.level));
});

test('a thumb tells of drying and not of cure', () => {
  const printed = told('conversion', [{ atS: 4 * 3600, test: 'print', passes: false }]);
  expect(printed.milestones.recoat.likelyS).toBeGreaterThan(told('conversion', []).milestones.recoat.likelyS);
  expect(printed.milestones.level).toEqual(told('conversion', []).milestones.level);
});

test('a check before the first coat, or of a film that the air has stopped, tells nothing', () => {
  const before = told('urethane', [{ atS: -60, test: 'gum', passes: false }]);
  expect(waits(before)).toEqual(waits(told('urethane', [])));
  const cold = onePiece({ temperatureK: 280 });
  const stopped = told('waterborne', [{ atS: 86_400, test: 'print', passes: false }], cold);
  expect(believed(stopped.law.learned.drying).mean).toBeCloseTo(0, 2);
});

test('a check tells of the film as it was then: not of coats and sandings after it', () => {
  const check: FilmCheck = { atS: 86_400, test: 'gum', passes: false };
  const { history, nowS } = onePiece({});
  const before = { atS: 3600, removedM: 5e-6 };
  const after = { atS: 100_000, removedM: 15e-6 };
  const second = { atS: 90_000, dryM: 80e-6, volatileM: 160e-6 };
  const learned = (coats: LawRequest['history']['coats'], sandings: LawRequest['history']['sandings']) =>
    told('precatalysed', [check], { nowS, history: { ...history, coats, sandings } }).law.learned;
  const thick = [{ atS: 0, dryM: 120e-6, volatileM: 240e-6 }];
  const then = learned(thick, [before]);
  expect(learned([...thick, second], [before, after])).toEqual(then);
  expect(learned(thick, [])).not.toEqual(then);
});

test('what other pieces taught moves it as its own checks do', () => {
  const slow = { drying: { mean: 0, spread: 1 }, cure: { mean: 1, spread: 0.5 } };
  const taught = estimateByLaw('urethane', { ...onePiece({}), belief: slow });
  const plain = told('urethane', []);
  expect(taught.milestones.level.likelyS).toBeGreaterThan(plain.milestones.level.likelyS);
  expect(taught.milestones.recoat).toEqual(plain.milestones.recoat);
  // What it passes on is its own word alone.
  expect(taught.law.learned).toEqual(plain.law.learned);
});
