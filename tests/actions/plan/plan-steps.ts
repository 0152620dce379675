import type { Step } from '../../../src/planner/step';

/** Ten minutes of a coat, done by that minute where one is told. */
export const coat = (id: string, done?: number): Step => ({
  kind: 'work',
  id,
  task: 'coat',
  place: 'booth',
  minutes: 10,
  isCoat: true,
  ...(done !== undefined && { done: { from: done - 10, to: done } }),
});

/** One to three minutes of waiting, until the film tells better. */
export const wait = (id: string, until: 'recoat' | 'level-sand' | 'rub-out' | 'rest'): Step => ({
  kind: 'wait',
  id,
  until,
  minutes: { earliest: 1, likely: 2, late: 3 },
});
