import { expect, test } from 'vitest';
import { thinnerLast, warmerFrom } from '../../../src/actions/outlook/what-if';
import type { StackHistory } from '../../../src/estimator/history';
import { binderOf } from '../../../src/estimator/laws/binders';
import { filmSolvent } from '../../../src/estimator/laws/film-solvents';
import type { Binder } from '../../../src/estimator/laws/lacquer';

const span = (fromS: number, temperatureK: number) => ({ fromS, temperatureK, transferMS: 1.2e-3 });
const coat = (atS: number, dryM: number) =>
  ({ kind: 'coat', atS, dryM, wetness: [4], pigment: 0, passage: 1 }) as const;
const HISTORY: StackHistory = {
  binder: binderOf('nitrocellulose') as Binder,
  solvents: [filmSolvent('toluene')],
  events: [coat(0, 12e-6), coat(7200, 15e-6), { kind: 'sand', atS: 90_000, removedM: 2e-6 }],
  air: [span(0, 294), span(100, 289), span(200, 294)],
  openBaseM: 0,
  sandingK: 294,
  panelEffusivity: 370,
};

test.each([
  { fromS: 150, air: [span(0, 294), span(100, 289), span(150, 294), span(200, 299)] },
  { fromS: 100, air: [span(0, 294), span(100, 294), span(200, 299)] },
  { fromS: 1000, air: [span(0, 294), span(100, 289), span(200, 294), span(1000, 299)] },
  { fromS: 0, air: [span(0, 299), span(100, 294), span(200, 299)] },
])('the shop is warmer from $fromS s on, and what has been stays as it was', ({ fromS, air }) => {
  expect(warmerFrom(HISTORY, fromS, 5)).toEqual({ ...HISTORY, air });
});

test('the last coat alone is thinner', () => {
  const { events } = thinnerLast(HISTORY, 2 / 3);
  expect(events[1]).toEqual({ ...coat(7200, 10e-6), dryM: expect.closeTo(10e-6, 12) });
  expect([events[0], events[2]]).toEqual([HISTORY.events[0], HISTORY.events[2]]);
});
