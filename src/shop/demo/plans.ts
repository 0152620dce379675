import type { Job } from '../../planner/starting-plans/job';
import { startPlan } from '../../planner/starting-plans/start-plan';
import { DEMO_PIECES } from '../../words/demo';
import { asPlanned } from '../plan/as-planned';
import type { Pen } from './pen';

/** Two of the pieces are planned, each promised for a day to come. */
const PLANNED: readonly { readonly name: string; readonly job: Job; readonly promisedInDays: number }[] = [
  { name: DEMO_PIECES.ukulele.name, job: 'full-clear', promisedInDays: 50 },
  { name: DEMO_PIECES.clock.name, job: 'melt-in', promisedInDays: 12 },
];

/** Writes the plans of the demo's pieces, made when each was started. */
export function planDemo(pen: Pen): void {
  for (const { name, job, promisedInDays } of PLANNED) {
    const started = pen.entries.find((entry) => entry.kind === 'piece-started' && entry.name === name);
    if (started?.kind !== 'piece-started') continue;
    const { piece } = started;
    const atMs = Date.parse(started.at);
    const { coatsADay, steps } = startPlan(job, pen.newId);
    pen.write({ kind: 'piece-planned', piece, job, coatsADay, steps: steps.map(asPlanned) }, atMs);
    const promised = new Date(pen.daysAgo(-promisedInDays, 17)).toISOString();
    pen.write({ kind: 'piece-promised', piece, promised }, atMs);
  }
}

const BROKEN_DAY = [
  { open: '09:00', close: '12:30' },
  { open: '13:30', close: '17:30' },
];
const SATURDAY = [{ open: '09:00', close: '13:00' }];

/** Sets the week of the shop: a break at noon, and no compressor in the evening. */
export function setDemoHours(pen: Pen): void {
  const days = [BROKEN_DAY, BROKEN_DAY, BROKEN_DAY, BROKEN_DAY, BROKEN_DAY, SATURDAY, []];
  const week = days.map((work) => ({ work }));
  pen.write({ kind: 'hours-set', week, quiet: { open: '19:00', close: '08:00' } }, pen.daysAgo(14, 8, 2));
}
