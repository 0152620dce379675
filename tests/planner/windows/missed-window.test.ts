import { expect, test } from 'vitest';
import type { GateStep, Step } from '../../../src/planner/step';
import { openWindow, withScuff } from '../../../src/planner/windows/missed-window';
import { bench, coat, dateTime, piece, utc, wait, window, working } from '../a-bench';

const NOW = utc('2026-03-02 09:00');
const done = { from: NOW - 60, to: NOW - 50 };
const laid = coat('1', { done });
const w = window('w', 45, 240);
const gate: GateStep = {
  id: 'g',
  kind: 'gate',
  check: 'powders',
  minutes: 2,
  againAfterMinutes: 1440,
  failedAt: [],
  mostFailures: 7,
};

test.each<{ what: string; steps: readonly Step[]; is: string | undefined }>([
  { what: 'right after the coat that is laid', steps: [laid, w, coat('2')], is: 'w' },
  { what: 'behind a wait', steps: [laid, wait('v', 30), w, coat('2')], is: 'w' },
  {
    what: 'not behind a coat that is still to be laid',
    steps: [laid, coat('2'), w, coat('3')],
    is: undefined,
  },
  { what: 'not behind a check that is still to pass', steps: [laid, gate, w, coat('2')], is: undefined },
  { what: 'not where it is over', steps: [laid, { ...w, done }, coat('2')], is: undefined },
  { what: 'nowhere without one', steps: [laid, wait('v', 30)], is: undefined },
])('a window is open $what', ({ steps, is }) => {
  expect(openWindow(piece('a', steps))?.id).toBe(is);
});

test('a window that is given up becomes a scuff on the next day of the shop, and nothing else changes', () => {
  // In a shop an hour ahead the next day begins at 23:00 UTC.
  const shop = { now: NOW, working: working(9, 17, { zone: () => 60 }), pieces: [] };
  const asked = piece('a', [laid, w, coat('2'), window('v', 45, 240), bench('3', 30)]);
  const { steps } = withScuff(asked, shop);
  expect(steps.map(({ id }) => id)).toEqual(['1', 'w:scuff', '2', 'v', '3']);
  const scuff = steps[1];
  expect(scuff).toMatchObject({ kind: 'work', task: 'scuff', place: 'bench', minutes: 30 });
  expect(scuff?.kind === 'work' && dateTime(scuff.notBefore ?? 0)).toBe('2026-03-02 23:00');
  const without = piece('b', [laid, wait('v', 30)]);
  expect(withScuff(without, shop)).toEqual(without);
});
