import { expect, test } from 'vitest';
import { clockText, instantOf, NOW } from '../../../src/parts/fields/time-choice';

const TAP_MS = new Date(2026, 10, 25, 14, 20, 30).getTime(); // local time, as the phone's owner reads it

test.each([
  { choice: NOW, expected: new Date(2026, 10, 25, 14, 20, 30) },
  { choice: { kind: 'ago', minutes: 20 } as const, expected: new Date(2026, 10, 25, 14, 0, 30) },
  { choice: { kind: 'clock', text: '2026-11-24T23:50' } as const, expected: new Date(2026, 10, 24, 23, 50) },
])('$choice is $expected', ({ choice, expected }) => {
  expect(instantOf(choice, TAP_MS)).toBe(expected.getTime());
});

test('a clock that is not filled in is no instant', () => {
  expect(instantOf({ kind: 'clock', text: '' }, TAP_MS)).toBeUndefined();
});

test('the clock field begins at the minute of the tap', () => {
  expect(clockText(TAP_MS)).toBe('2026-11-25T14:20');
});
