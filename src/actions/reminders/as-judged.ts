import type { ReminderKind } from '../../logbook/kinds/shop/reminder-kinds';
import { toInstantMs } from '../../planner/local-day';
import type { PlannedStep } from '../../planner/plan';
import { movedTo, type Reminder } from '../../reminders/reminder';
import { MINUTE_MS } from '../../units';
import type { Act } from '../../verdicts/act';
import { holdsOf, verdictOn } from '../../verdicts/verdict';
import type { BenchNow } from '../plan/bench';
import { actOf, factsOf } from '../verdicts/facts-of';

/** The act that a reminder calls to where it is of no step. */
const CALLS_TO: { readonly [K in ReminderKind]?: Act } = {
  'next-coat': 'coat',
  'next-drop': 'coat',
  scuff: 'scuff',
  'level-sand': 'level-sand',
  'rub-out': 'rub-out',
};

/**
 * A reminder of an act as the judge sees it: none to what is held or has to wait, every other at the first minute at which the judge says
 * ready, with that word. Where no time makes it ready it says perhaps. Behind a coat still to come nothing is said of a film that is
 * not there.
 */
export function asJudged(
  { shop, outlooks, nowMs }: Pick<BenchNow, 'shop' | 'outlooks' | 'nowMs'>,
  steps: readonly PlannedStep[],
): (reminder: Reminder) => readonly Reminder[] {
  return (reminder) => {
    const act = calledTo(reminder, steps);
    const piece = shop.pieces.get(reminder.pieceId ?? '');
    if (act === undefined || !piece) return [reminder];
    const outlook = outlooks.get(piece.id);
    const judgedAt = (atMs: number) => {
      const facts = factsOf({ shop, piece, outlook, nowMs: Math.max(atMs, nowMs) });
      return { clock: facts.clock, verdict: verdictOn({ act }, facts) };
    };
    const now = judgedAt(nowMs);
    if (holdsOf(now.verdict).length > 0) return [];
    if (now.clock === 'computing' || isBehindCoat(reminder, steps)) return [reminder];
    return whenReady(reminder, (atMs) => judgedAt(atMs).verdict);
  };
}

type Judged = ReturnType<typeof verdictOn>;

function whenReady(reminder: Reminder, judgedAt: (atMs: number) => Judged): readonly Reminder[] {
  const { word, until } = judgedAt(toInstantMs(reminder.at));
  if (word === 'ready') return [{ ...reminder, word }];
  if (word === 'hold') return [];
  const readyAt = Math.ceil((until?.likelyMs ?? Number.POSITIVE_INFINITY) / MINUTE_MS);
  if (readyAt > reminder.at && Number.isFinite(readyAt))
    return whenReady(movedTo(reminder, readyAt), judgedAt);
  return word === 'perhaps' ? [{ ...reminder, word }] : [];
}

function calledTo({ kind, stepId }: Reminder, steps: readonly PlannedStep[]): Act | undefined {
  const step = steps.find((one) => one.stepId === stepId)?.step;
  return CALLS_TO[kind] && step?.kind === 'work' ? actOf(step.task) : CALLS_TO[kind];
}

function isBehindCoat({ pieceId, stepId }: Reminder, steps: readonly PlannedStep[]): boolean {
  const own = steps.filter((step) => step.pieceId === pieceId);
  const at = own.findIndex((one) => one.stepId === stepId);
  return own
    .slice(0, Math.max(0, at))
    .some(({ step, isDone }) => !isDone && step.kind === 'work' && step.isCoat);
}
