import { describe, expect, test } from 'vitest';
import type { CardOutlooks } from '../../../src/actions/outlook/card-outlook';
import { benchNow } from '../../../src/actions/plan/bench';
import { surroundings } from '../../../src/actions/plan/surroundings';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import type { Plan } from '../../../src/planner/plan';
import {
  DAY_1_MS,
  entry,
  fillJar,
  id,
  JAR,
  layCoat,
  MINUTE_MS,
  PIECE,
  startPiece,
  strike,
} from '../../logbook/entries';

const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;
const FILTER = id(0xc1);
const CARD = id(0xd1);
/** Bodies logged so many hours into the first day. */
type Timed = readonly [hour: number, body: EntryBody];
const shopOf = (...timed: readonly Timed[]) =>
  fold(timed.map(([hour, body], n) => entry(n + 1, body, DAY_1_MS + hour * HOUR_MS)));
const minute = (hour: number): number => DAY_1_MS / MINUTE_MS + hour * 60;

describe('a jar', () => {
  const pot = { ...fillJar(), life: { span: { text: '8', unit: 'h' }, as: 'pot' } } as EntryBody;

  test('is told with the end of its life in the air of the shop', () => {
    expect(surroundings(shopOf([1, pot]), undefined).jars).toEqual([
      { id: JAR, madeAt: minute(1), endsAt: minute(9) }, // nobody read the air: 20 °C, at which the life was said
    ]);
  });

  test('is not told once it is empty, nor where nobody said how long it keeps', () => {
    expect(surroundings(shopOf([1, pot], [2, { kind: 'jar-emptied', jar: JAR }]), undefined).jars).toEqual(
      [],
    );
    expect(surroundings(shopOf([1, fillJar()]), undefined).jars).toEqual([]);
  });
});

describe('a filter', () => {
  const opened = (more: object = {}): EntryBody =>
    ({ kind: 'filter-opened', filter: FILTER, part: 'cartridge', name: 'A2', ...more }) as EntryBody;
  const sprayed = (minutes: number, filters = [FILTER]): EntryBody => ({
    kind: 'spraying-ended',
    lasted: { text: String(minutes), unit: 'min' },
    filters,
  });
  const wear = { wear: { text: '8', unit: 'h' } };
  const open = { open: { text: '30', unit: 'd' } };
  const changeAt = (...timed: readonly Timed[]) =>
    surroundings(shopOf(...timed), undefined).cartridges.map((one) => one.changeAt);

  test('is changed when it has been open for as long as was set', () => {
    expect(changeAt([1, opened(open)])).toEqual([minute(1 + 720)]);
  });

  test('is changed from the spraying on with which its hours were used up, if that comes first', () => {
    const both = opened({ ...wear, ...open });
    expect(changeAt([0, both], [5, sprayed(300)], [10, sprayed(179)])).toEqual([minute(720)]);
    expect(changeAt([0, both], [5, sprayed(300)], [10, sprayed(180)])).toEqual([minute(10)]);
    expect(changeAt([0, opened(wear)], [5, sprayed(480)], [10, sprayed(60, [])])).toEqual([minute(5)]);
  });

  test('without a schedule is not told, nor one that is thrown out', () => {
    expect(changeAt([0, opened()], [5, sprayed(900)])).toEqual([]);
    expect(changeAt([0, opened(wear)], [5, sprayed(60)])).toEqual([]);
    expect(changeAt([0, opened(open)], [5, { kind: 'filter-thrown-out', filter: FILTER }])).toEqual([]);
  });
});

describe('a test card', () => {
  const made: EntryBody = {
    kind: 'card-made',
    card: CARD,
    area: { text: '200', unit: 'cm2' },
    faces: 1,
    bare: { text: '1.000', unit: 'g' },
    division: { text: '0.001', unit: 'g' },
  };
  const coated: EntryBody = {
    kind: 'card-coated',
    card: CARD,
    jar: JAR,
    how: 'spray',
    film: { by: 'wet', wetFilm: { text: '85', unit: 'um' } },
  };
  const weighed: EntryBody = { kind: 'card-weighed', card: CARD, mass: { text: '1.3', unit: 'g' } };
  /** Looks at one and two days that tell much, or nothing. */
  const outlooks = (gain: number): CardOutlooks =>
    new Map([
      [
        CARD,
        {
          state: 'ready',
          startMs: DAY_1_MS,
          isGuessed: false,
          reading: {
            expected: [24, 48].map((hour) => ({ atS: hour * 3600, lowKg: 1, likelyKg: 1, highKg: 1, gain })),
            dryKg: { mean: 1, spread: 0 },
            warmGain: 0,
          },
        } as never,
      ],
    ]);
  const START = [
    [0, fillJar()],
    [0, made],
    [0, coated],
  ] as const;

  test('is to be weighed when that tells most, counted from when it was weighed or coated last', () => {
    expect(surroundings(shopOf(...START), undefined, outlooks(0.5)).cards).toEqual([
      { id: CARD, weighed: 0, at: minute(24) },
    ]);
    // Looked at from the weighing at 30 h on, the next look that tells much is at 48 h.
    expect(surroundings(shopOf(...START, [30, weighed]), undefined, outlooks(0.5)).cards).toEqual([
      { id: CARD, weighed: 1, at: minute(48) },
    ]);
  });

  test('is not told when it is ended, not worked out, or nothing more would tell', () => {
    expect(surroundings(shopOf(...START), undefined).cards).toEqual([]);
    const computing: CardOutlooks = new Map([[CARD, { state: 'computing' }]]);
    expect(surroundings(shopOf(...START), undefined, computing).cards).toEqual([]);
    const ended = shopOf(...START, [1, { kind: 'card-ended', card: CARD }]);
    expect(surroundings(ended, undefined, outlooks(0.5)).cards).toEqual([]);
    expect(surroundings(shopOf(...START, [72, weighed]), undefined, outlooks(0.001)).cards).toEqual([]);
  });
});

describe('an owner', () => {
  const promised: EntryBody = { kind: 'piece-promised', piece: PIECE, promised: '2026-04-20T15:00:00.000Z' };
  const planned: EntryBody = { kind: 'piece-planned', piece: PIECE, coatsADay: 3, steps: [] };
  const step = (isDone: boolean, end: number, pieceId = PIECE) => ({ pieceId, isDone, end });
  const planOf = (...steps: ReturnType<typeof step>[]) =>
    ({ steps, pieces: [{ pieceId: PIECE }] }) as unknown as Plan;
  const updates = (plan: Plan | undefined, ...more: EntryBody[]) =>
    surroundings(shopOf(...[startPiece(), ...more].map((body) => [0, body] as const)), plan).updates;

  test('hears of a piece of which everything is done, from the end of its last step on', () => {
    const all = planOf(step(true, 5), step(true, 7), step(false, 9, id(0xa2)));
    expect(updates(all, promised, planned)).toEqual([{ pieceId: PIECE, at: 7 }]);
    expect(updates(planOf(step(true, 5), step(false, 7)), promised, planned)).toEqual([]);
    expect(updates(planOf(step(false, 5), step(true, 7)), promised, planned)).toEqual([]);
  });

  test('hears nothing where nothing was promised or planned', () => {
    const all = planOf(step(true, 5));
    expect(updates(all, planned)).toEqual([]);
    expect(updates(all, promised)).toEqual([]);
    expect(updates(undefined, promised, planned)).toEqual([]);
    expect(updates(planOf(), promised, planned)).toEqual([]);
    expect(updates({ ...all, pieces: [] }, promised, planned)).toEqual([]);
  });
});

describe('a piece without a plan', () => {
  const pieces = (nowHour: number, ...timed: readonly Timed[]) =>
    benchNow({
      shop: shopOf([0, startPiece()], [0, fillJar()], ...timed),
      outlooks: new Map(),
      nowMs: DAY_1_MS + nowHour * HOUR_MS,
      zone: 'UTC',
    }).pieces;
  const coat = (how: 'spray' | 'flash' | 'brush'): EntryBody => ({ ...layCoat(), how }) as EntryBody;

  test('is on the bench with what was laid in eight days, each as it was laid', () => {
    const laid = [
      [1, coat('spray')],
      [2, coat('flash')],
      [3, coat('brush')],
    ] as const;
    const done = (hour: number) => ({ from: minute(hour) - 10, to: minute(hour) });
    const [piece] = pieces(10, ...laid);
    expect(piece?.steps).toEqual([
      { kind: 'work', id: id(3), task: 'coat', place: 'booth', minutes: 10, moveMinutes: 5, done: done(1) },
      {
        kind: 'work',
        id: id(4),
        task: 'flash-coat',
        place: 'booth',
        minutes: 10,
        moveMinutes: 5,
        done: done(2),
      },
      { kind: 'work', id: id(5), task: 'coat', place: 'bench', minutes: 10, done: done(3) },
    ]);
    expect(pieces((8 * DAY_MS) / HOUR_MS + 1.5, ...laid)[0]?.steps.map((step) => step.id)).toEqual([
      id(4),
      id(5),
    ]);
    expect(pieces((8 * DAY_MS) / HOUR_MS + 3, ...laid)).toEqual([]);
  });

  test('that is closed is not, nor one whose coat was undone', () => {
    expect(pieces(10, [1, coat('spray')], [2, { kind: 'piece-closed', piece: PIECE }])).toEqual([]);
    expect(pieces(10, [1, coat('spray')], [2, strike(id(3))])).toEqual([]);
  });
});
