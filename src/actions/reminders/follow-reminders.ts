import { computed, type ReadonlySignal } from '@preact/signals';
import type { Shop } from '../../logbook/fold/fold';
import type { ReminderKind, Switches } from '../../logbook/kinds/shop/reminder-kinds';
import { toInstantMs, toMinute } from '../../planner/local-day';
import { planBench } from '../../planner/plan-bench';
import { type RemindersNow, remindersNow } from '../../reminders/due';
import type { Acknowledgement, Reminder } from '../../reminders/reminder';
import { remindersOf } from '../../reminders/reminders';
import { ragReminders, shopReminders } from '../../reminders/shop-reminders';
import { hoursOf } from '../../shop/plan/clock-hours';
import type { CardOutlooks } from '../outlook/card-outlook';
import { benchNow } from '../plan/bench';
import { followPlan, type Planned } from '../plan/follow-plan';
import { sinceWhen } from '../plan/since-when';
import { surroundings } from '../plan/surroundings';
import type { OpenShop } from '../shop';
import { asJudged } from './as-judged';
import { milestoneReminders } from './milestone-reminders';

const followed = new WeakMap<OpenShop, ReadonlySignal<RemindersNow>>();

/** The reminders of a shop as they stand now; one signal for each open shop. */
export function followReminders(open: OpenShop): ReadonlySignal<RemindersNow> {
  const known = followed.get(open);
  if (known) return known;
  const { shop, settled, cards, nowMs } = open;
  const { planned } = followPlan(open);
  const atLastEntry = computed(() => remindersAtLastEntry(open));
  const all = computed(() => {
    const { plan } = planned.value;
    const { shop, outlooks } = settled.value;
    const live = ofPlan(shop, planned.value, cards.value);
    const all = [
      ...(plan.ok ? sinceWhen(live, atLastEntry.value, plan.value) : live),
      ...milestoneReminders(shop, outlooks),
    ];
    const now = { shop, outlooks, nowMs: toInstantMs(planned.value.bench.now) };
    return all.flatMap(asJudged(now, plan.ok ? plan.value.steps : []));
  });
  const fresh = computed(() => standingOf(all.value, shop.value, planned.value, nowMs.value));
  followed.set(open, fresh);
  return fresh;
}

/** The reminders of the plan as it was when something was last written down. */
function remindersAtLastEntry({ settled, cards, needs }: OpenShop): readonly Reminder[] {
  const { shop, outlooks } = settled.value;
  const { last } = shop;
  if (!last) return [];
  const bench = benchNow({ shop, outlooks, nowMs: Date.parse(last.at), zone: needs.zone() });
  return ofPlan(shop, { bench, plan: planBench(bench) }, cards.value);
}

/** Where there is no plan for some fault in it, the shop itself still reminds, of rags before all. */
function ofPlan(shop: Shop, { bench, plan }: Planned, cards: CardOutlooks): Reminder[] {
  if (plan.ok) return remindersOf(plan.value, bench, surroundings(shop, plan.value, cards));
  const steps = bench.pieces.flatMap(({ id, steps }) =>
    steps.flatMap((step) =>
      step.done
        ? [
            {
              pieceId: id,
              stepId: step.id,
              kind: step.kind,
              step,
              start: step.done.from,
              end: step.done.to,
              isDone: true,
              bound: { by: 'done' } as const,
            },
          ]
        : [],
    ),
  );
  const past = { now: bench.now, steps, pieces: [], isProved: false };
  return [...ragReminders(past, bench.working), ...shopReminders(surroundings(shop, undefined, cards))];
}

/** Who was told too late to leave a piece alone has missed nothing. */
const NOT_MISSED: ReadonlySet<ReminderKind> = new Set(['rest-day', 'stop-for-today']);

function standingOf(all: readonly Reminder[], shop: Shop, { bench }: Planned, nowMs: number): RemindersNow {
  const { reminderSettings } = shop;
  const quiet = reminderSettings?.quiet;
  const now = toMinute(nowMs);
  const found = remindersNow(all, {
    now,
    acknowledgements: acknowledgements(shop),
    switches: switchesOf(shop),
    ...(quiet && { quiet: hoursOf(quiet) }),
    zone: bench.working.zone,
  });
  const isOfUse = ({ kind, until }: Reminder): boolean =>
    !NOT_MISSED.has(kind) && (until === undefined || now <= until);
  return { ...found, missed: found.missed.filter(isOfUse) };
}

/** What is switched off, as it was last set. */
const switchesOf = ({ reminderSettings }: Pick<Shop, 'reminderSettings'>): Switches =>
  Object.fromEntries((reminderSettings?.off ?? []).map((kind) => [kind, false]));

/** Answers to reminders; the end of the day confirmed on the Air page is an answer about rags. */
function acknowledgements({ reminderAnswers, cautionsRead }: Shop): Acknowledgement[] {
  return [
    ...reminderAnswers.map(({ reminder, answer, atMs }) => ({
      reminderId: reminder,
      at: toMinute(atMs),
      answer,
    })),
    ...cautionsRead
      .filter(({ act }) => act === 'end-day')
      .map(({ atMs }) => ({ reminderId: 'rags:day-end', at: toMinute(atMs), answer: 'done' as const })),
  ];
}
