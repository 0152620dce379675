import { describe, expect, test } from 'vitest';
import { beliefOf, PRIOR, weigh } from '../../src/estimator/belief';
import { type FilmCheck, MILESTONES } from '../../src/estimator/estimate';
import { runEstimate } from '../../src/estimator/run-estimate';
import { DAY_S, stack } from './stacks';

const history = stack({ coats: 12, dryUm: 12.5 });
const lastS = history.events.at(-1)?.atS as number;
const ask = (checks: readonly FilmCheck[] = []) => runEstimate({ history, nowS: lastS + DAY_S, checks });
const plain = ask();
const believed = ({ learned }: typeof plain) => beliefOf(weigh(PRIOR, learned));

test('milestones come in their order, each inside its band', () => {
  const likely = MILESTONES.map((milestone) => plain.milestones[milestone].likelyS);
  expect(likely).toEqual([...likely].sort((a, b) => a - b));
  for (const { earliestS, likelyS, lateS } of Object.values(plain.milestones)) {
    expect(earliestS).toBeGreaterThan(lastS);
    expect(likelyS).toBeGreaterThanOrEqual(earliestS);
    expect(lateS).toBeGreaterThanOrEqual(likelyS);
  }
});

// Common practice: a thin instrument build is levelled and rubbed out after 14 - 21 - 28 days, and 168 um after 12.6 / 20.6 in the recorded table.
test('twelve coats: the band of level-sanding holds two weeks, that of rubbing out three', () => {
  const inside = (days: number, { earliestS, lateS }: { earliestS: number; lateS: number }) =>
    days * DAY_S >= earliestS - lastS && days * DAY_S <= lateS - lastS;
  expect(inside(14, plain.milestones.level)).toBe(true);
  expect(inside(21, plain.milestones.rubOut)).toBe(true);
});

// The prior itself: a factor 2.5 either way in eight cases of ten.
test('without checks the band is a factor 2 to 3 either way, and the belief is the prior', () => {
  const { earliestS, likelyS, lateS } = plain.milestones.rubOut;
  expect((likelyS - lastS) / (earliestS - lastS)).toBeGreaterThan(2);
  expect((lateS - lastS) / (likelyS - lastS)).toBeLessThan(3);
  expect(believed(plain).mean).toBeCloseTo(0, 6);
  expect(Math.abs(believed(plain).spread / PRIOR.spread - 1)).toBeLessThan(0.05);
});

describe('checks', () => {
  const soonS = lastS + 5 * DAY_S;
  const lateS = lastS + 20 * DAY_S;
  const ROWS: readonly { what: string; check: FilmCheck; moves: 'sooner' | 'later' }[] = [
    { what: 'powders after five days', check: { atS: soonS, test: 'gum', passes: true }, moves: 'sooner' },
    { what: 'gums after twenty days', check: { atS: lateS, test: 'gum', passes: false }, moves: 'later' },
    {
      what: 'no print after a quarter of a day',
      check: { atS: lastS + DAY_S / 4, test: 'print', passes: true },
      moves: 'sooner',
    },
    {
      what: 'prints after two days',
      check: { atS: lastS + 2 * DAY_S, test: 'print', passes: false },
      moves: 'later',
    },
    {
      what: 'smells after forty days',
      check: { atS: lastS + 40 * DAY_S, test: 'smell', passes: false },
      moves: 'later',
    },
  ];
  test.each(ROWS)('$what: $moves, and surer', ({ check, moves }) => {
    const told = ask([check]);
    const shift = told.milestones.rubOut.likelyS - plain.milestones.rubOut.likelyS;
    expect(Math.sign(shift)).toBe(moves === 'later' ? 1 : -1);
    // A nose hardly narrows anything.
    if (check.test !== 'smell') expect(believed(told).spread).toBeLessThan(believed(plain).spread);
  });

  test('a smell that lasts past the time at which most films have hardened says that this one is slow', () => {
    const smells = (days: number): FilmCheck => ({ atS: lastS + days * DAY_S, test: 'smell', passes: false });
    const [soon, late] = [40, 120].map((days) => believed(ask([smells(days)])).mean);
    expect(soon).toBeLessThan(-0.1);
    expect((late ?? 0) / (soon ?? 0)).toBeGreaterThan(0.75); // half, were the fast runs looked at no further than their own end
  });

  test('two that agree say more than one', () => {
    const check: FilmCheck = { atS: soonS, test: 'gum', passes: true };
    expect(believed(ask([check, check])).mean).toBeGreaterThan(believed(ask([check])).mean);
  });
});

test('one more coat is later by days, a warmer room sooner', () => {
  const coat = history.events.at(-1);
  if (coat?.kind !== 'coat') throw new Error('The last event is a coat.');
  const nowS = lastS + DAY_S;
  const warmer = {
    ...history,
    air: history.air.map((span) => ({ ...span, temperatureK: span.temperatureK + 5 })),
  };
  const { oneMoreCoat, whatIf } = runEstimate({
    history,
    nowS,
    checks: [],
    nextCoat: { ...coat, atS: nowS },
    whatIf: [{ name: 'warmer', history: warmer }],
  });
  expect(oneMoreCoat?.levelS as number).toBeGreaterThan(DAY_S);
  expect(whatIf[0]?.rubOutS as number).toBeLessThan(-DAY_S);
});

test('layers add up: as many as coats, as thick as they were laid, drying all the while', () => {
  const held = plain.profiles
    .filter((profile) => profile.timeS > lastS)
    .map((profile) => profile.layers.reduce((sum, layer) => sum + layer.solventM, 0));
  const layers = plain.profiles.at(-1)?.layers ?? [];
  expect(layers).toHaveLength(12);
  for (const layer of layers) expect(layer.dryM).toBeCloseTo(12.5e-6, 12);
  expect(held).toEqual([...held].sort((a, b) => b - a));
});

test('solvent cools the film while it leaves, and no longer', () => {
  for (const coldestK of plain.coldestK) expect(coldestK).toBeLessThan(history.sandingK - 1);
  expect(plain.now.filmK).toBeCloseTo(history.sandingK, 1);
});

test('refuses a history without a coat', () => {
  expect(() => runEstimate({ history: { ...history, events: [] }, nowS: 0, checks: [] })).toThrow(RangeError);
});

test('refuses what is not a number instead of marching for ever', () => {
  const broken = {
    ...history,
    sandingK: history.sandingK,
    air: [{ fromS: 0, temperatureK: Number.NaN, transferMS: 1e-3 }],
  };
  expect(() => runEstimate({ history: broken, nowS: 0, checks: [] })).toThrow(RangeError);
});
