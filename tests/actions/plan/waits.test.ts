import { describe, expect, test } from 'vitest';
import { asksTheModel, estimatedWaits, hasEstimate } from '../../../src/actions/plan/waits';
import { known } from '../../../src/estimator/known';
import type { Step } from '../../../src/planner/step';
import { momentsOf } from '../../../src/verdicts/moments';
import { DAY_1_MS, layCoat } from '../../logbook/entries';
import { anOutlook, aShop } from '../../parts/an-outlook';
import { coat, wait } from './plan-steps';

// The outlook of the helper: recoat 1, 2, 3 h after the first coat, level 100, 200, 300 h, rub out 200, 300, 400 h.
const LAID = { hour: 0, body: layCoat() };
const HOUR = 60;
const start = DAY_1_MS / 60_000;
const STEPS = [
  coat('a', start),
  wait('b', 'recoat'),
  coat('c'),
  wait('d', 'level-sand'),
  wait('e', 'rub-out'),
  wait('f', 'rest'),
];

function bandsOf(
  steps: readonly Step[],
  isOwn: (id: string) => boolean = () => false,
  oneMoreCoat?: { levelS: number; rubOutS: number },
) {
  const { piece } = aShop(LAID);
  const made = anOutlook();
  const outlook = { ...made, estimate: known({ ...made.estimate, ...(oneMoreCoat && { oneMoreCoat }) }) };
  const worked = estimatedWaits(steps, { piece, outlook, moments: [], isOwn, nowMs: DAY_1_MS });
  return Object.fromEntries(
    worked.flatMap((step) =>
      step.kind === 'wait'
        ? [[step.id, [step.minutes.earliest, step.minutes.likely, step.minutes.late]]]
        : [],
    ),
  );
}

test('waits come from the estimate, each from the coat before it', () => {
  expect(bandsOf(STEPS)).toEqual({
    b: [HOUR, 2 * HOUR, 3 * HOUR],
    d: [100 * HOUR, 200 * HOUR, 300 * HOUR],
    // what is left to rub-out when level-sanding may begin, 200 h after the coat
    e: [0, 100 * HOUR, 200 * HOUR],
    f: [1, 2, 3],
  });
});

test('a further coat makes the waits for hardness longer by what it adds', () => {
  const added = bandsOf(STEPS, () => false, { levelS: 50 * 3600, rubOutS: 80 * 3600 });
  expect(added).toMatchObject({
    b: [HOUR, 2 * HOUR, 3 * HOUR],
    // longer by a quarter at either end of the band too; to rub out by 80 h of 300
    d: [125 * HOUR, 250 * HOUR, 375 * HOUR],
    e: [(200 * 380) / 5 - 250 * HOUR, 130 * HOUR, (400 * 380) / 5 - 250 * HOUR],
  });
});

test('a wait set by hand stays', () => {
  expect(bandsOf(STEPS, (id) => id === 'b')['b']).toEqual([1, 2, 3]);
});

test('without an estimate all waits stay as they are', () => {
  const { piece } = aShop(LAID);
  expect(
    estimatedWaits(STEPS, {
      piece,
      outlook: { state: 'computing' },
      moments: [],
      isOwn: () => false,
      nowMs: DAY_1_MS,
    }),
  ).toEqual(STEPS);
});

test('what was worked out last stands until it is worked out again', () => {
  const { piece } = aShop(LAID);
  const { estimate, startMs } = anOutlook();
  const kept = { state: 'kept', estimate, startMs, key: '' } as const;
  const asked = { piece, moments: [], isOwn: () => false, nowMs: DAY_1_MS };
  expect(estimatedWaits(STEPS, { ...asked, outlook: kept })).toEqual(
    estimatedWaits(STEPS, { ...asked, outlook: anOutlook() }),
  );
  expect(hasEstimate(STEPS[1] as Step, STEPS, piece, kept)).toBe(true);
});

describe('with every coat on', () => {
  const sand = (id: string, task: 'level-sand' | 'rub-out'): Step => ({
    kind: 'work',
    id,
    task,
    place: 'bench',
    minutes: 60,
  });
  const check = (id: string, what: 'powders' | 'sink'): Step => ({
    kind: 'gate',
    id,
    check: what,
    minutes: 2,
    againAfterMinutes: 1440,
    failedAt: [],
    mostFailures: 7,
  });
  const restOf = (id: string, until: 'cure' | 'rest' | 'level-sand'): Step => ({
    kind: 'wait',
    id,
    until,
    minutes: { earliest: 1, likely: 2, late: 1000 * HOUR },
  });
  const { piece } = aShop(LAID);
  const outlook = anOutlook();
  const moments = momentsOf(piece, outlook, DAY_1_MS);
  const worked = (steps: readonly Step[], own = '') =>
    estimatedWaits([coat('a', start), ...steps], {
      piece,
      outlook,
      moments,
      isOwn: (id) => id === own,
      nowMs: DAY_1_MS,
    });
  const endsOf = (steps: readonly Step[]) =>
    Object.fromEntries(
      steps.flatMap((step) => (step.kind === 'wait' && step.ends ? [[step.id, step.ends.likely]] : [])),
    );
  const likely = (name: string) => (moments.find((moment) => moment.name === name)?.likelyMs ?? 0) / 60_000;

  test('a wait ends at the very moment that the page shows; a look for sinking in between does not move it', () => {
    const steps = [
      wait('level', 'level-sand'),
      sand('l', 'level-sand'),
      restOf('sinks', 'rest'),
      check('s', 'sink'),
      wait('rub', 'rub-out'),
      sand('r', 'rub-out'),
    ];
    expect(endsOf(worked(steps))).toEqual({ level: likely('level'), rub: likely('rubOut') });
  });

  test.each(['cure', 'rest'] as const)(
    'a %s is for the sanding after it, past a try of the film',
    (until) => {
      const steps = [restOf('w', until), check('p', 'powders'), sand('r', 'rub-out')];
      expect(endsOf(worked(steps))).toEqual({ w: likely('rubOut') });
    },
  );

  test('a sanding without a wait before it is given one', () => {
    const steps = worked([sand('l', 'level-sand'), sand('r', 'rub-out')]);
    expect(steps.map(({ id }) => id)).toEqual(['a', 'l:hardens', 'l', 'r:hardens', 'r']);
    expect(endsOf(steps)).toEqual({ 'l:hardens': likely('level'), 'r:hardens': likely('rubOut') });
  });

  test('a wait set by hand is the person’s own: nothing is put beside it', () => {
    const steps = worked([wait('mine', 'level-sand'), sand('l', 'level-sand')], 'mine');
    expect(steps.map(({ id }) => id)).toEqual(['a', 'mine', 'l']);
    expect(endsOf(steps)).toEqual({});
  });
});

describe('whether the drying model is asked', () => {
  const sand = (task: 'level-sand' | 'rub-out'): Step => ({
    kind: 'work',
    id: task,
    task,
    place: 'bench',
    minutes: 60,
  });
  const asks = (steps: readonly Step[], ...own: string[]) => asksTheModel(steps, (id) => own.includes(id));

  test.each([
    {
      what: 'a wait to recoat',
      steps: [coat('a', start), wait('w', 'recoat'), coat('c')],
      own: [],
      is: true,
    },
    {
      what: 'such a wait of the person’s own',
      steps: [coat('a', start), wait('w', 'recoat')],
      own: ['w'],
      is: false,
    },
    { what: 'a sanding', steps: [coat('a', start), sand('level-sand')], own: [], is: true },
    {
      what: 'a sanding behind a wait of the person’s own',
      steps: [coat('a', start), wait('w', 'level-sand'), sand('level-sand')],
      own: ['w'],
      is: false,
    },
    { what: 'a rest before nothing', steps: [coat('a', start), wait('w', 'rest')], own: [], is: false },
    { what: 'a wait that is over', steps: [wait('w', 'recoat'), coat('a', start)], own: [], is: false },
    { what: 'a coat alone', steps: [coat('a')], own: [], is: false },
  ])('$what: $is', ({ steps, own, is }) => {
    expect(asks(steps, ...own)).toBe(is);
  });

  test('it has a wait of its own for what it knows, once it is worked out and a coat is on', () => {
    const { piece } = aShop(LAID);
    const bare = aShop().piece;
    const recoat = STEPS[1] as Step;
    const rest = STEPS[5] as Step;
    expect(hasEstimate(recoat, STEPS, piece, anOutlook())).toBe(true);
    expect(hasEstimate(rest, STEPS, piece, anOutlook())).toBe(false);
    expect(hasEstimate(recoat, STEPS, bare, anOutlook())).toBe(false);
    expect(hasEstimate(recoat, STEPS, piece, { state: 'computing' })).toBe(false);
    expect(hasEstimate(recoat, STEPS, piece, undefined)).toBe(false);
    const flash = aShop({ hour: 0, body: { ...layCoat(), how: 'flash' } as never }).piece;
    expect(hasEstimate(recoat, STEPS, flash, anOutlook())).toBe(false);
  });
});
