import { describe, expect, test } from 'vitest';
import { lastWetS } from '../../src/estimator/read-off';
import { runEstimate } from '../../src/estimator/run-estimate';
import { DAY_S, HOUR_S, type StackCase, stack } from './stacks';

const HISTORIES = [
  { what: 'one thin coat on bare wood', of: { coats: 1 }, openBaseUm: 0 },
  { what: 'one coat over an old lacquer', of: { coats: 1 }, openBaseUm: 40 },
  { what: 'three coats over a deep old lacquer', of: { coats: 3 }, openBaseUm: 60 },
  { what: 'cold, over an old lacquer', of: { coats: 2, airC: 14 }, openBaseUm: 30 },
] satisfies { what: string; of: StackCase; openBaseUm: number }[];

describe.each(HISTORIES)('$what', ({ of, openBaseUm }) => {
  const { settled, rubOut } = runEstimate({
    history: { ...stack(of), openBaseM: openBaseUm * 1e-6 },
    nowS: 0,
    checks: [],
  }).milestones;

  test('is not fully hardened before it may be rubbed out', () => {
    for (const end of ['earliestS', 'likelyS', 'lateS'] as const)
      expect(settled[end]).toBeGreaterThanOrEqual(rubOut[end]);
  });
});

// The base starts hard, is softened by the coat, and hardens again: the first time that it is hard says nothing.
test('an old finish hardens later than a closed floor under the same coats', () => {
  const settledOver = (openBaseUm: number): number =>
    runEstimate({ history: { ...stack({ coats: 3 }), openBaseM: openBaseUm * 1e-6 }, nowS: 0, checks: [] })
      .milestones.settled.likelyS;
  expect(settledOver(60)).toBeGreaterThan(settledOver(0));
});

test('a film that has hardened is softened again by a coat months later', () => {
  const first = stack({ coats: 6 });
  const atS = 200 * DAY_S;
  const late = first.events.map((event) => ({ ...event, atS: event.atS + atS }));
  const { settled } = runEstimate({
    history: { ...first, events: [...first.events, ...late] },
    nowS: atS,
    checks: [],
  }).milestones;
  expect(settled.likelyS).toBeGreaterThan(atS + DAY_S + 4 * HOUR_S + 20 * DAY_S);
});

// What leaves a thin wet coat goes by evaporation, known within 1.5 either way in eight of ten (judgement, no source): 2.25 from end to end.
test('touch of a thin coat is known as far as the draught is, and a film of months by its film former', () => {
  const history = stack({ coats: 1, dryUm: 8 });
  const { touch, settled } = runEstimate({ history, nowS: 0, checks: [] }).milestones;
  expect(touch.lateS / touch.earliestS).toBeGreaterThan(2.1);
  expect(touch.lateS / touch.earliestS).toBeLessThan(2.35);
  expect(settled.lateS / settled.earliestS).toBeGreaterThan(4);
});

test('what lies there now is what was laid by now, whatever came later', () => {
  const history = stack({ coats: 3, dryUm: 20 });
  const [first, second] = history.events.map(({ atS }) => atS) as [number, number, number];
  const dryUm = (nowS: number) => runEstimate({ history, nowS, checks: [] }).now.dryM * 1e6;
  expect(dryUm(first + 60)).toBeCloseTo(20, 6);
  expect(dryUm(second + 60)).toBeCloseTo(40, 6);
  expect(dryUm(lastWetS(history) + DAY_S)).toBeCloseTo(60, 6);
});
