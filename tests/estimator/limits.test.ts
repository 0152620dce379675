import fc from 'fast-check';
import { expect, test } from 'vitest';
import { groupCoats } from '../../src/estimator/group-coats';
import type { StackEvent, StackHistory } from '../../src/estimator/history';
import { known, NotKnownError } from '../../src/estimator/known';
import { lastWetS, secondsTo } from '../../src/estimator/read-off';
import { answer } from '../../src/estimator/run/answer';
import { runEstimate } from '../../src/estimator/run-estimate';
import { simulate, TooMuchWorkError } from '../../src/estimator/simulate';
import { toKelvin } from '../../src/units';
import { DAY_S, stack } from './stacks';

const asked = (history: StackHistory) => ({ history, nowS: lastWetS(history) + 60, checks: [] });
const nextOf = ({ events }: StackHistory) => events.at(-1) as Extract<StackEvent, { kind: 'coat' }>;

test('three coats in one minute each have a coldest temperature', () => {
  const one = stack({ coats: 1 });
  const first = nextOf(one);
  const history = { ...one, events: [0, 0, 0.4].map((atS) => ({ ...first, atS })) };
  const { coldestK } = runEstimate(asked(history));
  expect(coldestK).toHaveLength(3);
  for (const coldest of coldestK) {
    expect(coldest).toBeGreaterThan(250);
    expect(coldest).toBeLessThanOrEqual(history.sandingK);
  }
});

test('a sanding room of 60 °C leaves nothing that is no number: what never comes is later by nothing known', () => {
  const history = stack({ coats: 3, sandingC: 60 });
  const raw = runEstimate({
    ...asked(history),
    nextCoat: { ...nextOf(history), atS: lastWetS(history) + 60 },
    whatIf: [{ name: 'the same', history }],
  });
  const estimate = known(raw);
  expect(estimate.milestones.rubOut.likelyS).toBe(Number.POSITIVE_INFINITY);
  expect(estimate.oneMoreCoat).toBeUndefined();
  expect(estimate.whatIf).toEqual([]);
});

test('a number that is none is named and goes no further', () => {
  const raw = runEstimate(asked(stack({ coats: 1 })));
  expect(() => known({ ...raw, now: { ...raw.now, filmK: Number.NaN } })).toThrow('estimate.now.filmK');
  expect(() => known({ ...raw, coldestK: [280, Number.NaN] })).toThrow(NotKnownError);
});

test('a request with a number that is none is refused at the border', () => {
  const history = { ...stack({ coats: 1 }), sandingK: Number.NaN };
  const said = answer({ history, nowS: 0, checks: [], whatIf: [] });
  expect(said).toMatchObject({
    ok: false,
    why: 'unsolvable',
    message: 'No number: request.history.sandingK',
  });
});

test('a march stops when its budget is spent', () => {
  const history = stack({ coats: 6 });
  const budget = { left: 5000 };
  expect(() => simulate(history, { untilS: 40 * DAY_S, budget })).toThrow(TooMuchWorkError);
  const roomy = { left: 5_000_000 };
  simulate(history, { untilS: 40 * DAY_S, budget: roomy });
  expect(roomy.left).toBeLessThan(5_000_000);
  expect(roomy.left).toBeGreaterThan(4_000_000);
});

test('at the limits of every field there is an answer, or it is said that there is too much to work out', () => {
  const thin = nextOf(stack({ coats: 1, dryUm: 50, volumeSolids: 0.001, airC: -20 }));
  const history: StackHistory = {
    ...stack({ coats: 1, airC: -20, sandingC: -20 }),
    events: Array.from({ length: 200 }, (_, k) => ({ ...thin, atS: k * 60 })),
    air: Array.from({ length: 900 }, (_, k) => ({
      fromS: k * 43_200,
      temperatureK: toKelvin(k % 2 ? -20 : 60),
      transferMS: 0.7e-3,
    })),
  };
  try {
    known(runEstimate(asked(history)));
  } catch (error) {
    expect(error).toBeInstanceOf(TooMuchWorkError);
  }
}, 180_000);

test.each([
  { coats: 60 },
  { coats: 60, airC: 12 },
  { coats: 60, perDay: 8, gapH: 1 },
  { coats: 60, dryUm: 25 },
])('the oldest coats laid in groups move no date by more than 1 %: %o', (given) => {
  const history = stack(given);
  const grouped = groupCoats(history);
  expect(grouped.events.length).toBe(32);
  const laidM = ({ events }: StackHistory) =>
    events.reduce((sum, event) => sum + (event.kind === 'coat' ? event.dryM : 0), 0);
  expect(laidM(grouped)).toBeCloseTo(laidM(history), 12);
  const times = [history, grouped].map((one) => {
    const { trace } = simulate(one, { untilS: lastWetS(one) + 300 * DAY_S });
    return (['level', 'rubOut'] as const).map((milestone) => secondsTo(trace, one, milestone));
  });
  for (const [k, whole] of (times[0] as number[]).entries())
    expect(Math.abs((times[1]?.[k] as number) / whole - 1)).toBeLessThan(0.01);
});

test('a group holds what its last coat brings and six hundredths of the others', () => {
  const history = stack({ coats: 60 });
  const layer = groupCoats(history).events[0];
  const coat = history.events[0];
  if (layer?.kind !== 'coat' || coat?.kind !== 'coat') throw new Error('Both begin with a coat.');
  expect(layer.dryM / coat.dryM).toBeCloseTo(5, 9); // 36 of the oldest in at most eight groups
  for (const [i, wetness] of layer.wetness.entries())
    expect(wetness / (coat.wetness[i] as number)).toBeCloseTo((1 + 4 * 0.06) / 5, 9);
});

test('sandings, flash coats and other pigment among the oldest stay where they were', () => {
  const history = stack({ coats: 60, sanded: [{ atS: 3.5 * DAY_S, removedM: 5e-6 }] });
  const events = history.events.map((event, k) =>
    event.kind === 'coat' && k < 5 ? { ...event, pigment: 0.2 } : event,
  );
  const grouped = groupCoats({ ...history, events });
  expect(grouped.events.filter(({ kind }) => kind === 'sand')).toHaveLength(1);
  const layers = grouped.events.flatMap((event) => (event.kind === 'coat' ? [event] : []));
  expect(layers[0]).toMatchObject({ pigment: 0.2, atS: events[4]?.atS });
  expect(layers[0]?.dryM).toBeCloseTo(60e-6, 12);
  expect(groupCoats(stack({ coats: 40 })).events).toHaveLength(40);
  // Of 41 the oldest 17 go into groups of three.
  expect(groupCoats(stack({ coats: 41 })).events).toHaveLength(24 + 6);
});

// Within the limits of the fields, or with one number of the request that is none.
const anyStack = fc.record({
  coats: fc.integer({ min: 1, max: 2 }),
  gapH: fc.constantFrom(0, 0.1, 6),
  dryUm: fc.constantFrom(0.1, 12, 100),
  volumeSolids: fc.constantFrom(0.05, 0.15, 0.9),
  retarder: fc.constantFrom(0, 0.05, 0.95),
  pigment: fc.constantFrom(0, 0.6),
  airC: fc.constantFrom(-20, 21, 60),
  sandingC: fc.constantFrom(-20, 21, 60),
  transferMS: fc.constantFrom(1e-4, 1.2e-3, 1e-2),
});
const odd = fc.constant(Number.NaN);

/** Every place of a number in plain data, as a way to put another one there. */
function numbersIn(value: unknown): ((other: number) => void)[] {
  if (typeof value !== 'object' || value === null) return [];
  const tree = value as Record<string, unknown>;
  return Object.entries(tree).flatMap(([name, inner]) =>
    typeof inner === 'number'
      ? [
          (other: number) => {
            tree[name] = other;
          },
        ]
      : numbersIn(inner),
  );
}
const hasNaN = (value: unknown): boolean =>
  typeof value === 'object' && value !== null
    ? Object.values(value).some(hasNaN)
    : typeof value === 'number' && Number.isNaN(value);

test('whatever is asked, the answer holds no NaN, or says why there is none', () => {
  const seen = { answered: 0, refused: 0 };
  fc.assert(
    fc.property(anyStack, fc.option(fc.tuple(fc.nat(), odd), { freq: 2 }), (given, harm) => {
      const history = stack(given);
      const request = structuredClone({ ...asked(history), whatIf: [] });
      const places = numbersIn(request);
      if (harm) places[harm[0] % places.length]?.(harm[1]);
      const said = answer(request);
      if (said.ok) expect(hasNaN(said.estimate)).toBe(false);
      else expect(said.message).not.toBe('');
      seen[said.ok ? 'answered' : 'refused']++;
    }),
    { numRuns: 40 },
  );
  expect(seen.answered).toBeGreaterThan(5);
  expect(seen.refused).toBeGreaterThan(5);
});
