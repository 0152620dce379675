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

test('layers are looked at just after every coat, now, and on a scale that grows after the last', () => {
  const times = plain.profiles.map(({ timeS }) => timeS);
  expect(times).toEqual([...times].sort((a, b) => a - b));
  for (const { atS } of history.events) expect(times).toContain(atS + 1);
  expect(times).toContain(lastS + DAY_S);
  const after = times
    .filter((timeS) => timeS > lastS + 1 && timeS !== lastS + DAY_S)
    .map((timeS) => timeS - lastS);
  expect(after[0]).toBeCloseTo(60, 6);
  const ratio = (after[1] as number) / (after[0] as number);
  for (const [k, one] of after.slice(1).entries()) expect(one / (after[k] as number)).toBeCloseTo(ratio, 6);
  expect(after.at(-1)).toBeCloseTo(plain.milestones.settled.likelyS - lastS, -1);
});

test('what is held now is what the layers hold now, and sinks by its share of the film', () => {
  const { heldM, dryM, stillToSink, hardnessK } = plain.now;
  const layers = plain.profiles.find(({ timeS }) => timeS === lastS + DAY_S)?.layers ?? [];
  expect(layers.reduce((sum, layer) => sum + layer.solventM, 0) / heldM).toBeCloseTo(1, 9);
  expect(dryM).toBeCloseTo(150e-6, 12);
  expect(stillToSink).toBeCloseTo(heldM / (heldM + dryM), 12);
  // The curve says the same of that moment, between its points.
  const { curve } = plain;
  const k = curve.timeS.findIndex((timeS) => timeS > lastS + DAY_S);
  expect(heldM).toBeLessThan(curve.heldM[k - 1] as number);
  expect(heldM).toBeGreaterThan(curve.heldM[k] as number);
  expect(hardnessK).toBeGreaterThan(curve.hardnessK[k - 1] as number);
  expect(hardnessK).toBeLessThan(curve.hardnessK[k] as number);
});

test('the curve runs from half a minute after the last coat to the end of what was looked at, inside its band', () => {
  const { curve, milestones } = plain;
  expect(curve.timeS).toHaveLength(48);
  expect((curve.timeS[0] as number) - lastS).toBeCloseTo(30, 9);
  expect(curve.timeS.at(-1)).toBeGreaterThan(milestones.rubOut.likelyS);
  // Wet, a fast film and a slow one are alike; and the fast one is looked at no further than it takes to harden.
  const dry = curve.timeS.flatMap((timeS, k) =>
    timeS > lastS + 900 && timeS < milestones.rubOut.lateS ? [k] : [],
  );
  expect(dry.length).toBeGreaterThan(20);
  for (const k of dry) {
    const at = (column: readonly number[]) => column[k] as number;
    expect(at(curve.heldLowM)).toBeLessThan(at(curve.heldM));
    expect(at(curve.heldM)).toBeLessThan(at(curve.heldHighM));
    expect(at(curve.hardnessLowK)).toBeLessThan(at(curve.hardnessK));
    expect(at(curve.hardnessK)).toBeLessThan(at(curve.hardnessHighK));
  }
  // Beyond that the band may close, and never turns inside out.
  for (const [low, middle, high] of [
    [curve.heldLowM, curve.heldM, curve.heldHighM],
    [curve.hardnessLowK, curve.hardnessK, curve.hardnessHighK],
  ] as const)
    for (const [k, value] of middle.entries()) {
      expect(low[k]).toBeLessThanOrEqual(value);
      expect(high[k]).toBeGreaterThanOrEqual(value);
    }
  // Level-sanding is where the curve goes up through 8 K (common practice, no source), in the middle and at both ends.
  for (const [column, s] of [
    [curve.hardnessK, milestones.level.likelyS],
    [curve.hardnessLowK, milestones.level.lateS],
    [curve.hardnessHighK, milestones.level.earliestS],
  ] as const) {
    const k = column.findIndex((hardness) => hardness > 8);
    expect(curve.timeS[k - 2]).toBeLessThan(s);
    expect(curve.timeS[k + 1]).toBeGreaterThan(s);
  }
});

describe('beside it', () => {
  const last = history.events.at(-1);
  if (last?.kind !== 'coat') throw new Error('The last event is a coat.');
  // The stack itself is looked at in layers, which takes other steps: half a per cent of the wait.
  const near = (s: number | undefined, expected: number) =>
    expect(Math.abs((s ?? Number.NaN) - expected)).toBeLessThan(
      0.005 * (plain.milestones.rubOut.likelyS - lastS),
    );

  test('the same stack is no later, and laid a day later it is a day later', () => {
    const later = {
      ...history,
      events: history.events.map((event) => ({ ...event, atS: event.atS + DAY_S })),
    };
    const { whatIf } = runEstimate({
      history,
      nowS: lastS,
      checks: [],
      whatIf: [
        { name: 'same', history },
        { name: 'later', history: later },
      ],
    });
    expect(whatIf.map(({ name }) => name)).toEqual(['same', 'later']);
    for (const moved of ['levelS', 'rubOutS'] as const) {
      near(whatIf[0]?.[moved], 0);
      near(whatIf[1]?.[moved], DAY_S);
    }
  });

  test('one more coat in the place of the last is no later: what was to come after it is left out', () => {
    const nextCoat = { ...last, atS: last.atS - 1 };
    const { oneMoreCoat } = runEstimate({ history, nowS: lastS, checks: [], nextCoat });
    near(oneMoreCoat?.levelS, 0);
    near(oneMoreCoat?.rubOutS, 0);
  });
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
