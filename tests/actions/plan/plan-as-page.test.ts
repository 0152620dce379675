import { describe, expect, test } from 'vitest';
import { lawOutlook } from '../../../src/actions/outlook/law-outlook';
import type { Outlook } from '../../../src/actions/outlook/outlook';
import { requestFor } from '../../../src/actions/outlook/request';
import { benchNow } from '../../../src/actions/plan/bench';
import { factsOf } from '../../../src/actions/verdicts/facts-of';
import { answer } from '../../../src/estimator/run/answer';
import { type Entry, type EntryBody, inItsVersion } from '../../../src/logbook/entry';
import { fold, type Shop } from '../../../src/logbook/fold/fold';
import type { Piece } from '../../../src/logbook/fold/piece/pieces';
import { FINISHES } from '../../../src/logbook/kinds/mix/jar';
import { planBench } from '../../../src/planner/plan-bench';
import { JOBS, type Job } from '../../../src/planner/starting-plans/job';
import { startPlan } from '../../../src/planner/starting-plans/start-plan';
import type { Task } from '../../../src/planner/step';
import { saidOf, usualDraft } from '../../../src/screens/mix/jar/jar-draft';
import { asPlanned } from '../../../src/shop/plan/as-planned';
import { verdictOn } from '../../../src/verdicts/verdict';
import { DAY_1_MS, entry, id, PIECE } from '../../logbook/entries';

// What the planner waits for and what the page of the piece shows, side by side: each by the functions that the app runs. Nobody rests here,
// so that nothing but the film makes anything wait.

type Finish = (typeof FINISHES)[number];
type Stage = 'level' | 'rub-out';

const [CLEAR, COLOUR] = [id(0xb1), id(0xb2)];
const HOUR_MS = 3_600_000;
const MINUTE_MS = 60_000;
const HOW: Partial<Record<Task, string>> = { 'drop-fill': 'brush-fill', pad: 'pad', 'flash-coat': 'flash' };
const MOMENTS = { level: 'level', 'rub-out': 'rubOut' } as const;
const isTinted = (task: Task): boolean => task === 'toner-coat' || task === 'opaque-coat';
const ALWAYS = Array.from({ length: 7 }, () => ({ work: [{ open: '00:00', close: '24:00' }] }));

/** A shop in which everything of a starting plan up to the last sanding of a stage is done, a thing an hour, with usual jars of one finish. */
function shopBefore(
  stage: Stage,
  job: Job,
  finish: Finish,
  isBySheet: boolean,
): { entries: Entry[]; lastMs: number } {
  let next = 0x200;
  const { coatsADay, steps } = startPlan(job, () => id(next++));
  const jar = saidOf({ ...usualDraft(finish, false), name: 'Clear' });
  const bodies: unknown[] = [
    { kind: 'hours-set', week: ALWAYS },
    { kind: 'jar-filled', jar: CLEAR, ...jar },
    {
      kind: 'jar-filled',
      jar: COLOUR,
      ...saidOf({ ...usualDraft(finish, false), name: 'Colour', pigment: 'grains' }),
    },
    { kind: 'piece-started', piece: PIECE, name: 'Box', base: 'sealed' },
    { kind: 'piece-planned', piece: PIECE, job, coatsADay, steps: steps.map(asPlanned) },
  ];
  const works = steps.filter((step) => step.kind === 'work');
  const end = works.findLastIndex(({ task }) => task === (stage === 'level' ? 'level-sand' : 'rub-out'));
  const done = works.slice(0, end).flatMap(({ task }): unknown[] => {
    if (task === 'clean' || task === 'spirit-off') return [];
    if (task === 'scuff' || task === 'level-sand')
      return [
        {
          kind: 'sanded',
          piece: PIECE,
          stage: task === 'scuff' ? 'scuff' : 'level',
          removed: { text: '3', unit: 'um' },
        },
      ];
    return [coatOf(task)];
  });
  const sheet = isBySheet ? [SHEET] : [];
  // Where a plan begins with the coats on, they are put on before it.
  const laid = job === 'coats-on' ? Array.from({ length: 3 }, () => coatOf('coat')) : [];
  const all = [...bodies.slice(0, 4), ...sheet, ...laid, bodies[4], ...done];
  const entries = all.map((body, n) =>
    inItsVersion(entry(n + 1, body as EntryBody, DAY_1_MS + n * HOUR_MS)),
  ) as Entry[];
  return { entries, lastMs: DAY_1_MS + (all.length - 1) * HOUR_MS };
}

/** A slow product, made up: three days to sand, five weeks to cure. */
const SHEET = {
  kind: 'sheet-entered',
  jar: CLEAR,
  temperature: { text: '21', unit: 'C' },
  humidity: { text: '50', unit: '%' },
  times: { sand: { text: '3', unit: 'd' }, cured: { text: '35', unit: 'd' } },
};

const coatOf = (task: Task) => ({
  kind: 'coat-laid',
  piece: PIECE,
  jar: isTinted(task) ? COLOUR : CLEAR,
  how: HOW[task] ?? 'spray',
  film: { by: 'wet', wetFilm: { text: '60', unit: 'um' } },
});

function outlookOf(piece: Piece, shop: Shop, nowMs: number): Outlook {
  const byLaw = lawOutlook(piece, shop, nowMs);
  if (byLaw) return byLaw;
  const asked = requestFor(piece, shop, nowMs);
  if (!asked.ok) throw new Error(asked.failure.kind);
  const { request, startMs } = asked.value;
  const worked = answer({ ...request, whatIf: [] });
  if (!worked.ok) throw new Error(worked.message);
  return { state: 'ready', estimate: worked.estimate, startMs, stale: false };
}

/** Lacquers are marched, so each is tried on the plans that are its own; what dries by a law is tried on all. */
const PLANS_OF: Partial<Record<Finish, readonly Job[]>> = {
  nitrocellulose: ['melt-in', 'opaque-touch-up', 'full-clear', 'toner', 'drop-fill', 'coats-on'],
  acrylic: ['melt-in', 'drop-fill', 'coats-on'],
  cab: ['melt-in', 'drop-fill', 'coats-on'],
  shellac: ['shellac', 'coats-on'],
};
const TASKS = { level: 'level-sand', 'rub-out': 'rub-out' } as const;
const has = (job: Job, task: Task): boolean =>
  startPlan(job, () => '').steps.some((step) => step.kind === 'work' && step.task === task);
const rowsOf = (finish: Finish) =>
  (PLANS_OF[finish] ?? JOBS).flatMap((job) =>
    (['level', 'rub-out'] as const)
      .filter((stage) => has(job, TASKS[stage]))
      .flatMap((stage) =>
        (PLANS_OF[finish] ? [false] : [false, true]).map((isBySheet) => ({
          job,
          stage,
          times: isBySheet ? 'its data sheet' : 'the model',
        })),
      ),
  );

describe.each(FINISHES)('%s', (finish) => {
  test.each(rowsOf(finish))(
    '$job, by $times: the plan begins the $stage at the minute at which the page says ready',
    ({ job, stage, times }) => {
      const { entries, lastMs } = shopBefore(stage, job, finish, times === 'its data sheet');
      const shop = fold(entries);
      const piece = shop.pieces.get(PIECE) as Piece;
      const outlook = outlookOf(piece, shop, lastMs);
      const bench = benchNow({ shop, nowMs: lastMs, zone: 'UTC', outlooks: new Map([[PIECE, outlook]]) });
      const plan = planBench(bench);
      if (!plan.ok) throw new Error(JSON.stringify(plan.failure));
      const open = plan.value.steps.filter(({ isDone }) => !isDone);
      const at = open.findIndex(({ step }) => step.kind === 'work' && step.task === TASKS[stage]);
      // The try of the film comes first, at the very minute; a look for sinking may hold it up.
      const startMs = (open[at - 1]?.start ?? 0) * MINUTE_MS;
      expect(open.slice(at - 2, at).map(({ kind }) => kind)).toEqual(['wait', 'gate']);
      const restMs = Math.max(0, ...open.slice(0, at - 2).map(({ end }) => end)) * MINUTE_MS;
      const factsAt = (nowMs: number) => factsOf({ shop, piece, outlook, nowMs });
      const shown = factsAt(lastMs).moments.find(({ name }) => name === MOMENTS[stage]);
      const shownMs = Math.ceil((shown?.likelyMs ?? 0) / MINUTE_MS) * MINUTE_MS;
      expect(shownMs - lastMs).toBeGreaterThan(HOUR_MS);
      const wordAt = (ms: number): string => verdictOn({ act: TASKS[stage] }, factsAt(ms)).word;
      expect(wordAt(startMs)).toBe('ready');
      if (stage === 'level' || shownMs >= restMs) {
        expect(startMs).toBe(shownMs);
        expect(wordAt(startMs - MINUTE_MS)).not.toBe('ready');
      } else expect(startMs).toBe(restMs);
    },
  );
});
