import { expect, test } from 'vitest';
import { isOvertaken, textFor, typed, withOwnPour } from '../../../src/screens/mix/weigh/typing';

/** A weigh-up of which these lines were poured, in turn. */
const poured = (...lines: readonly number[]) => ({
  pours: lines.map((line, i) => ({ entry: `pour ${i}`, line, massKg: 0.01, atMs: i })),
});

// "12.3" is typed for line 1 once line 0 is poured; then `lines` are what was poured.
test.each([
  { why: 'nothing is poured', lines: [0], at: 1, isLost: false, shows: '12.3' },
  { why: 'its line is poured elsewhere', lines: [0, 1], at: 2, isLost: true, shows: '' },
  { why: 'its line is poured elsewhere, and asked for again', lines: [0, 1], at: 1, isLost: true, shows: '' },
  { why: 'another line is poured elsewhere', lines: [0, 2], at: 1, isLost: false, shows: '12.3' },
  { why: 'the pour before is undone elsewhere', lines: [], at: 0, isLost: false, shows: '' },
  { why: 'that pour is back', lines: [0], at: 1, isLost: false, shows: '12.3' },
])('$why: lost $isLost, the field of line $at shows “$shows”', ({ lines, at, isLost, shows }) => {
  const typing = typed(poured(0), 1, '12.3');
  const now = poured(...lines);
  expect([isOvertaken(now, typing), textFor(now, at, typing)]).toEqual([isLost, shows]);
});

test('a pour noted here does not overtake what was typed for it; a second one elsewhere does', () => {
  const typing = withOwnPour(typed(poured(0), 1, '12.3'));
  expect(isOvertaken(poured(0, 1), typing)).toBe(false);
  expect(isOvertaken(poured(0, 1, 1), typing)).toBe(true);
});

test('an empty field loses nothing', () => {
  expect(isOvertaken(poured(0, 1), typed(poured(0), 1, ' '))).toBe(false);
});
