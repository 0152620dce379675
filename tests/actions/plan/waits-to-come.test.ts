import { describe, expect, test } from 'vitest';
import { asksTheModel, estimatedWaits, hasEstimate } from '../../../src/actions/plan/waits';
import { known } from '../../../src/estimator/known';
import { LONGEST_S } from '../../../src/estimator/read-off';
import type { Step, WaitFor } from '../../../src/planner/step';
import { momentsOf } from '../../../src/verdicts/moments';
import { DAY_1_MS, layCoat } from '../../logbook/entries';
import { anOutlook, aShop, HOURS } from '../../parts/an-outlook';

// The outlook of the helper: recoat 1, 2, 3 h after the first coat, level 100, 200, 300 h, rub out 200, 300, 400 h.
const HOUR = 60;
const HOUR_MS = 3_600_000;
const start = DAY_1_MS / 60_000;
const NEVER = Number.POSITIVE_INFINITY;
const work = (id: string, task: 'coat' | 'level-sand' | 'rub-out', doneHour?: number): Step => ({
  kind: 'work',
  id,
  task,
  place: 'bench',
  minutes: 10,
  ...(task === 'coat' && { isCoat: true }),
  ...(doneHour !== undefined && {
    done: { from: start + doneHour * HOUR - 10, to: start + doneHour * HOUR },
  }),
});
const wait = (id: string, until: WaitFor, minutes = 2): Step => ({
  kind: 'wait',
  id,
  until,
  minutes: { earliest: minutes, likely: minutes, late: minutes },
});
const ON = work('on', 'coat', 0);

interface Now {
  readonly nowHour?: number;
  readonly own?: string;
  readonly oneMore?: { readonly levelS: number; readonly rubOutS: number };
  readonly hours?: Partial<typeof HOURS>;
  readonly isShown?: boolean;
}
function worked(steps: readonly Step[], { nowHour = 0, own, oneMore, hours, isShown = false }: Now = {}) {
  const { piece } = aShop({ hour: 0, body: layCoat() });
  const made = anOutlook({ ...HOURS, ...hours });
  const outlook = {
    ...made,
    estimate: known({ ...made.estimate, ...(oneMore && { oneMoreCoat: oneMore }) }),
  };
  const nowMs = DAY_1_MS + nowHour * HOUR_MS;
  const moments = isShown ? momentsOf(piece, outlook, nowMs) : [];
  return estimatedWaits(steps, { piece, outlook, moments, isOwn: (id) => id === own, nowMs });
}
/** Each wait that is planned, by name, with its likely hours. */
const likely = (...is: Parameters<typeof worked>): Record<string, number> =>
  Object.fromEntries(
    worked(...is).flatMap((step) => (step.kind === 'wait' ? [[step.id, step.minutes.likely / HOUR]] : [])),
  );
const oneMore = { levelS: 50 * 3600, rubOutS: 80 * 3600 };

describe('what a sanding waits for', () => {
  test('counts from what was done last, else from now', () => {
    const steps = [wait('w', 'level-sand'), work('l', 'level-sand')];
    expect(likely([ON, ...steps])).toEqual({ w: 200 });
    expect(likely([ON, work('done', 'rub-out', 30), ...steps], { nowHour: 40 })).toEqual({ w: 170 });
    expect(likely(steps, { nowHour: 40 })).toEqual({ w: 160 }); // the coat that is on is no step of the plan
  });

  test('is less by what the waits before it take, whatever they are for', () => {
    const steps = [
      ON,
      wait('mine', 'recoat', 5 * HOUR),
      wait('r', 'rest', 7 * HOUR),
      wait('l', 'level-sand'),
    ];
    expect(likely(steps, { own: 'mine' })).toEqual({ mine: 5, r: 7, l: 188 });
  });

  test('is no wait where its time has come', () => {
    const sanding = [ON, work('l', 'level-sand')];
    expect(worked(sanding, { nowHour: 50 }).map(({ id }) => id)).toEqual(['on', 'l:hardens', 'l']);
    const late = [ON, work('r', 'rub-out', 299), work('l', 'level-sand')];
    expect(worked(late, { nowHour: 299 }).map(({ id }) => id)).toEqual(['on', 'r', 'l:hardens', 'l']);
    const over = [ON, work('r', 'rub-out', 300), work('l', 'level-sand')];
    expect(worked(over, { nowHour: 300 }).map(({ id }) => id)).toEqual(['on', 'r', 'l']);
  });

  test('is asked anew behind every further coat', () => {
    const steps = [
      ON,
      wait('a', 'level-sand'),
      work('l', 'level-sand'),
      work('c', 'coat'),
      work('m', 'level-sand'),
    ];
    expect(likely(steps, { oneMore })).toEqual({ a: 200, 'm:hardens': 250 });
    const rubbed = [ON, work('c', 'coat'), work('r', 'rub-out')];
    expect(worked(rubbed, { oneMore }).find(({ id }) => id === 'r:hardens')).toMatchObject({
      until: 'rub-out',
    });
    expect(likely(rubbed, { oneMore })).toEqual({ 'r:hardens': 380 });
  });

  test('grows with each coat to come, by less than the one before, from what one more adds from now on; to recoat with none', () => {
    const steps = [
      ON,
      work('b', 'coat'),
      wait('again', 'recoat'),
      work('c', 'coat'),
      wait('l', 'level-sand'),
    ];
    const two = (Math.sqrt(3) - 1) / (Math.SQRT2 - 1); // of a first coat, by the root of their number
    expect(likely(steps, { oneMore })['again']).toBe(2);
    expect(likely(steps, { oneMore })['l']).toBeCloseTo(200 + 50 * two, 1);
    // Of the 50 h that another coat would add had it gone on now, 20 h after the last, 20 are the time gone by.
    expect(likely(steps, { oneMore, nowHour: 20 })['l']).toBeCloseTo(200 + 30 * two, 1);
    expect(likely(steps, { oneMore, nowHour: 60 })).toEqual({ again: 2, l: 200 }); // never shorter for it
    expect(likely(steps)).toEqual({ again: 2, l: 200 });
  });

  test('that never ends is planned as the longest that is looked at, with no coat to come and with some', () => {
    const longest = LONGEST_S / 3600;
    const hours = { rubOut: [100, NEVER, NEVER] as const };
    const steps = [ON, wait('r', 'rub-out')];
    expect(likely(steps, { hours })).toEqual({ r: longest });
    expect(likely(steps, { oneMore: { levelS: NEVER, rubOutS: NEVER } })).toEqual({ r: 300 });
    expect(
      likely([ON, work('c', 'coat'), wait('r', 'rub-out')], { oneMore: { levelS: 0, rubOutS: NEVER } }),
    ).toEqual({
      r: longest,
    });
    const [, shown] = worked(steps, { hours, isShown: true });
    expect(shown?.kind === 'wait' && shown.ends?.likely).toBe(start + longest * HOUR);
    expect(shown?.kind === 'wait' && shown.ends?.earliest).toBe(start + 100 * HOUR);
  });

  test.each<{ what: string; level: readonly [number, number, number]; levelS: number; is: number }>([
    {
      what: 'that likely never ends, and another coat makes no shorter',
      level: [1, NEVER, NEVER],
      levelS: NEVER,
      is: LONGEST_S / 3600,
    },
    { what: 'of a film that is hard at once', level: [0, 0, 0], levelS: 3600, is: 0 },
    {
      what: 'of a film that is hard at once, and never under another coat',
      level: [0, 0, 0],
      levelS: NEVER,
      is: 0,
    },
  ])('$what is a number', ({ level, levelS, is }) => {
    const steps = [ON, work('c', 'coat'), wait('l', 'level-sand')];
    expect(likely(steps, { hours: { level }, oneMore: { levelS, rubOutS: 0 } })).toEqual({ l: is });
  });

  test('a coat to come has no moment on the page yet', () => {
    const steps = [ON, wait('w', 'recoat'), work('c', 'coat'), wait('l', 'level-sand')];
    const ends = worked(steps, { isShown: true }).map((step) => step.kind === 'wait' && step.ends?.likely);
    expect(ends).toEqual([false, start + 2 * HOUR, false, undefined]);
  });
});

describe('a rest', () => {
  const gate = (id: string, check: 'powders' | 'sink' | 'colour'): Step => ({
    kind: 'gate',
    id,
    check,
    minutes: 2,
    againAfterMinutes: 60,
    failedAt: [],
    mostFailures: 3,
  });

  test.each<{ what: string; between: readonly Step[]; is: number }>([
    { what: 'before a sanding is for it', between: [], is: 200 },
    { what: 'is not for what comes behind a look for sinking', between: [gate('g', 'sink')], is: 2 },
    { what: 'nor behind a look at the colour', between: [gate('g', 'colour')], is: 2 },
    { what: 'nor behind another coat', between: [work('c', 'coat')], is: 2 },
    {
      what: 'is for it past a wait and a window',
      between: [
        wait('w', 'shrink-back'),
        { kind: 'window', id: 'v', fromMinutes: 1, untilMinutes: 2, scuffMinutes: 1 },
      ],
      is: 200,
    },
  ])('$what', ({ between, is }) => {
    const hours = likely([ON, wait('rest', 'rest', 2 * HOUR), ...between, work('l', 'level-sand')])['rest'];
    expect(hours).toBe(is);
  });

  test('behind which the person has said how long is not asked of the model', () => {
    const steps = [ON, wait('rest', 'rest'), work('l', 'level-sand')];
    expect(asksTheModel(steps, () => false)).toBe(true);
    expect(asksTheModel(steps, (id) => id === 'rest')).toBe(false);
    expect(asksTheModel([ON, wait('w', 'flash-off'), work('c', 'coat')], () => false)).toBe(false);
  });
});

test('what is no wait of the plan has no estimate of its own', () => {
  const { piece } = aShop({ hour: 0, body: layCoat() });
  const steps = [ON, wait('w', 'recoat'), work('c', 'coat')];
  expect(hasEstimate(ON, steps, piece, anOutlook())).toBe(false);
  expect(hasEstimate(wait('put in by the planner', 'recoat'), steps, piece, anOutlook())).toBe(false);
});
