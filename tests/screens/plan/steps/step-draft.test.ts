import { describe, expect, test } from 'vitest';
import { durationOf, minutesIn } from '../../../../src/screens/plan/steps/duration';
import { NEW_STEPS, newStep, newSteps } from '../../../../src/screens/plan/steps/new-step';
import { draftOf, draftProblems, stepOf } from '../../../../src/screens/plan/steps/step-draft';

test.each([
  { minutes: 0, text: '0', unit: 'min' },
  { minutes: 45, text: '45', unit: 'min' },
  { minutes: 90, text: '1.5', unit: 'h' },
  { minutes: 240, text: '4', unit: 'h' },
  { minutes: 1440, text: '1', unit: 'd' },
  { minutes: 5040, text: '3.5', unit: 'd' },
] as const)('$minutes min are $text $unit, there and back', ({ minutes, ...duration }) => {
  expect(durationOf(minutes)).toEqual(duration);
  expect(minutesIn(duration)).toBe(minutes);
});

test.each([
  { text: '', unit: 'min' },
  { text: 'soon', unit: 'h' },
  { text: '-5', unit: 'min' },
  { text: '900', unit: 'd' },
] as const)('"$text" $unit is no length of time', (duration) => {
  expect(minutesIn(duration)).toBeUndefined();
});

describe('a step', () => {
  const steps = NEW_STEPS.map(({ value, label }) => ({ label, step: newStep(value, 'x') }));
  test.each(steps)('$label comes back from its draft unchanged', ({ step }) => {
    const draft = draftOf(step);
    expect(draftProblems(draft, step.kind)).toEqual({});
    expect(stepOf(step, { ...draft, isOwn: false })).toEqual(step);
  });

  const wait = newStep('wait:recoat', 'x');
  test('a wait whose band is out of order is told at its last field', () => {
    const draft = draftOf(wait);
    const wrong = { ...draft, times: { ...draft.times, late: { text: '1', unit: 'min' } as const } };
    expect(draftProblems(wrong, 'wait')).toEqual({ late: expect.stringContaining('order') });
  });

  test('a wait made one’s own takes the typed band', () => {
    const draft = { ...draftOf(wait, { earliest: 10, likely: 20, late: 30 }), isOwn: true };
    expect(stepOf(wait, draft)).toEqual({
      ...wait,
      minutes: { earliest: 10, likely: 20, late: 30 },
      isOwn: true,
    });
  });
});

// Waterborne 1 to 2 h, conversion about 3 h (common practice, no source).
test.each([
  { finish: 'waterborne' as const, minutes: { earliest: 60, likely: 90, late: 120 } },
  { finish: 'conversion' as const, minutes: { earliest: 120, likely: 180, late: 240 } },
  { finish: 'shellac' as const, minutes: { earliest: 180, likely: 300, late: 720 } },
  { finish: 'nitrocellulose' as const, minutes: { earliest: 45, likely: 60, late: 120 } },
])('a wait to recoat added to a plan of $finish is its own', ({ finish, minutes }) =>
  expect(newStep('wait:recoat', 'x', finish)).toMatchObject({ minutes }),
);

test.each([
  { finish: 'waterborne' as const, never: ['work:flash-coat', 'hold:blush', 'window:'] },
  { finish: 'conversion' as const, never: ['work:flash-coat'] },
  { finish: 'nitrocellulose' as const, never: ['window:', 'work:spirit-off'] },
])('a plan of $finish is offered nothing of another', ({ finish, never }) => {
  const offered = newSteps(finish).map(({ value }) => value);
  expect(offered.filter((value) => never.includes(value))).toEqual([]);
  expect(offered).toContain('wait:recoat');
});

test('what stands beside the finish comes with its own wait', () => {
  // Common practice, no source: pore filler 24 to 72 h, scraps in acetone an hour or so, glue a day in the clamps.
  expect(newStep('wait:filler-dry', 'x')).toMatchObject({
    minutes: { earliest: 1440, likely: 2880, late: 4320 },
  });
  expect(newStep('wait:paste-soft', 'x')).toMatchObject({ minutes: { likely: 60 } });
  expect(newStep('wait:clamped', 'x')).toMatchObject({ minutes: { likely: 1440 } });
});
