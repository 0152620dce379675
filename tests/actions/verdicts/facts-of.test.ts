import { describe, expect, test } from 'vitest';
import type { Outlook } from '../../../src/actions/outlook/outlook';
import { actOf, factsOf } from '../../../src/actions/verdicts/facts-of';
import type { EntryBody } from '../../../src/logbook/entry';
import { fold } from '../../../src/logbook/fold/fold';
import type { Piece } from '../../../src/logbook/fold/piece/pieces';
import { DAY_1_MS, entry, fillJar, id, JAR, layCoat, PIECE, startPiece, strike } from '../../logbook/entries';
import { anOutlook } from '../../parts/an-outlook';
import { outlookOf, type Said, shopOf } from '../../verdicts/random-shops';

const HOUR_MS = 3_600_000;
const ANY: [number, number, number] = [1, 2, 3];
const OTHER_JAR = id(0xb2);
/** Wet 85 um at 22 % thinned by half: 12.47 um dry. */
const COAT_M = 85e-6 * (0.22 / 1.5);

type Timed = readonly [hour: number, body: EntryBody];
const shopWith = (...timed: readonly Timed[]) =>
  fold(timed.map(([hour, body], n) => entry(n + 1, body, DAY_1_MS + hour * HOUR_MS)));
const START: readonly Timed[] = [
  [0, startPiece()],
  [0, fillJar()],
];
const factsAt = (hour: number, timed: readonly Timed[], outlook?: Outlook, jarId?: string) => {
  const shop = shopWith(...START, ...timed);
  const piece = shop.pieces.get(PIECE) as Piece;
  return factsOf({ shop, piece, outlook, nowMs: DAY_1_MS + hour * HOUR_MS }, jarId ? { jarId } : {});
};
const check = (test: 'gum' | 'print', result: 'passes' | 'fails'): EntryBody => ({
  kind: 'checked',
  piece: PIECE,
  test,
  result,
});
const sanded = (um: string, stage: 'scuff' | 'level' | 'rub-out' = 'scuff'): EntryBody => ({
  kind: 'sanded',
  piece: PIECE,
  removed: { text: um, unit: 'um' },
  stage,
});
const coat = (more: object = {}): EntryBody => ({ ...layCoat(), ...more }) as EntryBody;

/** A conversion finish coated ten hours after the jar was filled, on the page of a law that has an end of its window. */
function ofLaw(hours: [number, number, number] | null, ...more: readonly Timed[]) {
  const said: Said = {
    base: 'sealed',
    finish: 'conversion',
    done: [[10, layCoat()], ...(more as [number, EntryBody][])],
    isPlanned: false,
    isOwnWait: false,
    outlook: {
      moments: { touch: ANY, recoat: ANY, level: ANY, rubOut: ANY, settled: ANY },
      windowEnd: hours,
    },
    nowHour: 801,
  };
  const shop = shopOf(said);
  const piece = shop.pieces.get(PIECE) as Piece;
  return factsOf({ shop, piece, outlook: outlookOf(said, piece), nowMs: DAY_1_MS });
}

test('the end of a window counts from the coat, each edge of it; without one there is none', () => {
  const coatMs = DAY_1_MS + 10 * HOUR_MS;
  expect(ofLaw([12, 24, 72]).windowEnd).toEqual({
    earliestMs: coatMs + 12 * HOUR_MS,
    likelyMs: coatMs + 24 * HOUR_MS,
    lateMs: coatMs + 72 * HOUR_MS,
  });
  expect(ofLaw(null).windowEnd).toBeUndefined();
});

describe('the most that a film may have', () => {
  const sheet = { kind: 'sheet-entered', jar: JAR, temperature: { text: '20', unit: 'C' } } as const;
  const humidity = { text: '50', unit: '%' } as const;

  test('is that of its finish or of its sheet, with the next coat taken as the last; none without a law', () => {
    expect(ofLaw([12, 24, 72]).build).toEqual({
      totalDryM: 60e-6,
      limitM: expect.closeTo(100e-6, 12),
      nextDryM: expect.closeTo(COAT_M, 12),
    });
    expect(ofLaw(null).build).toBeUndefined();
    const own = { ...sheet, humidity, times: {}, totalFilm: { text: '80', unit: 'um' } } as EntryBody;
    expect(ofLaw([12, 24, 72], [10, own]).build?.limitM).toBeCloseTo(80e-6, 12);
  });

  test('goes by the last coat that leaves a film', () => {
    expect(ofLaw([12, 24, 72], [11, coat({ how: 'flash' })]).build?.nextDryM).toBeCloseTo(COAT_M, 12);
    const twice = coat({ film: { by: 'wet', wetFilm: { text: '170', unit: 'um' } } });
    expect(ofLaw([12, 24, 72], [11, twice]).build?.nextDryM).toBeCloseTo(2 * COAT_M, 12);
  });

  test('is not told of a coat from a jar that is not in this logbook, nor of a lacquer', () => {
    expect(ofLaw([12, 24, 72], [11, layCoat(PIECE, OTHER_JAR)]).build).toBeUndefined();
  });
});

describe('the clock of a piece', () => {
  test.each<{ is: string; outlook: Outlook | undefined; moments: number }>([
    { is: 'ready', outlook: anOutlook(), moments: 5 },
    { is: 'failed', outlook: { state: 'failed', message: '' }, moments: 0 },
    { is: 'computing', outlook: { state: 'computing' }, moments: 0 },
    { is: 'computing', outlook: undefined, moments: 0 },
  ])('with a coat on is $is, with $moments moments', ({ is, outlook, moments }) => {
    const facts = factsAt(2, [[1, coat()]], outlook);
    expect([facts.clock, facts.moments.length]).toEqual([is, moments]);
  });

  test('with no coat on stands still, whatever was worked out before the coat was undone', () => {
    const facts = factsAt(
      2,
      [
        [1, coat()],
        [1, strike(id(3))],
      ],
      anOutlook(),
    );
    expect([facts.clock, facts.moments]).toEqual(['no-coats', []]);
  });

  test('calls no film settled that a check has found soft since the last coat', () => {
    const soft = (...timed: readonly Timed[]) =>
      factsAt(9, timed, anOutlook()).moments.flatMap(({ name, isFoundSoft }) => (isFoundSoft ? [name] : []));
    expect(soft([1, coat()], [2, check('gum', 'fails')])).toEqual(['settled']);
    expect(soft([1, coat()], [2, check('gum', 'passes')])).toEqual([]);
    expect(soft([1, check('gum', 'fails')], [2, coat()])).toEqual([]);
  });
});

describe('the jar that is judged', () => {
  const two: readonly Timed[] = [[0, { ...fillJar(OTHER_JAR), name: 'Matt' } as EntryBody]];

  test.each<{ what: string; timed: readonly Timed[]; asked?: string; is: string | undefined }>([
    { what: 'the one asked about', timed: [...two, [1, coat()]], asked: OTHER_JAR, is: 'Matt' },
    { what: 'else that of the last coat', timed: [...two, [1, coat()]], is: 'Gloss' },
    { what: 'before the first coat the one filled last', timed: two, is: 'Matt' },
    { what: 'none that is not in this logbook', timed: two, asked: id(0xb9), is: undefined },
  ])('is $what', ({ timed, asked, is }) => {
    expect(factsAt(2, timed, undefined, asked).jar?.name).toBe(is);
  });

  test('ages from the noon of the day on which it was mixed, where that was said', () => {
    const old = { ...fillJar(OTHER_JAR), mixedOn: '2026-02-15' } as EntryBody;
    expect(factsAt(2, [[1, old]]).jar?.mixedMs).toBe(Date.UTC(2026, 1, 15, 12));
    expect(factsAt(2, [[1, fillJar(OTHER_JAR)]]).jar?.mixedMs).toBe(DAY_1_MS + HOUR_MS);
  });

  test('is told with its life and with the glass plate on which it dried last', () => {
    const tested = (result: 'passes' | 'fails'): EntryBody =>
      ({ kind: 'jar-tested', jar: JAR, test: 'glass-plate', result }) as EntryBody;
    const pot: EntryBody = {
      ...fillJar(OTHER_JAR),
      life: { span: { text: '8', unit: 'h' }, as: 'pot' },
    } as EntryBody;
    const none = factsAt(2, []).jar;
    expect([none?.lifeEndMs, none?.lifeAs, none?.dryOnGlassMs]).toEqual([undefined, undefined, undefined]);
    expect(factsAt(2, [[0, pot]]).jar).toMatchObject({ lifeEndMs: DAY_1_MS + 8 * HOUR_MS, lifeAs: 'pot' });
    expect(factsAt(9, [[5, tested('passes')]]).jar?.dryOnGlassMs).toBe(DAY_1_MS + 5 * HOUR_MS);
    expect(
      factsAt(9, [
        [5, tested('passes')],
        [6, tested('fails')],
      ]).jar?.dryOnGlassMs,
    ).toBeUndefined();
  });
});

describe('what sanding must not reach', () => {
  const coloured: Timed = [
    0,
    {
      ...fillJar(OTHER_JAR),
      pigment: { shareOfSolids: { text: '20', unit: '%' }, shape: 'grains' },
    } as EntryBody,
  ];
  const colour: Timed = [1, layCoat(PIECE, OTHER_JAR)];
  const old = (base: string): Timed => [0, { kind: 'piece-changed', piece: PIECE, base } as EntryBody];

  test.each<{ what: string; timed: readonly Timed[]; is: string | undefined; films: number }>([
    { what: 'a bare piece', timed: [], is: undefined, films: 0 },
    {
      what: 'two clear coats',
      timed: [
        [1, coat()],
        [2, coat()],
      ],
      is: 'wood',
      films: 2,
    },
    {
      what: 'two on a closed old finish',
      timed: [old('old-closed'), [1, coat()], [2, coat()]],
      is: 'old-finish',
      films: 2,
    },
    {
      what: 'one on one that melts',
      timed: [old('old-redissolves'), [1, coat()]],
      is: 'old-finish',
      films: 1,
    },
    { what: 'one on sealer', timed: [old('sealed'), [1, coat()]], is: 'wood', films: 1 },
    {
      what: 'clear over colour over clear',
      timed: [coloured, [0, coat()], colour, [2, coat()]],
      is: 'colour',
      films: 1,
    },
    { what: 'colour on top of clear', timed: [coloured, [0, coat()], colour], is: 'wood', films: 2 },
    {
      what: 'colour that was sanded bare',
      timed: [coloured, [0, coat()], colour, [2, coat()], [3, sanded('12.5')]],
      is: 'wood',
      films: 2,
    },
    {
      what: 'a film sanded off',
      timed: [
        [1, coat()],
        [2, sanded('40')],
      ],
      is: undefined,
      films: 0,
    },
  ])('of $what is $is', ({ timed, is, films }) => {
    const { above } = factsAt(9, [...timed]);
    expect(above?.what).toBe(is);
    expect(((above?.filmM ?? 0) / COAT_M).toFixed(1)).toBe(films.toFixed(1));
  });
});

describe('what is known of an old finish', () => {
  const drop: EntryBody = {
    kind: 'spot-tested',
    piece: PIECE,
    solvent: 'ethanol',
    dwell: { text: '2', unit: 'min' },
    reading: 'dissolves',
  };
  const seen: EntryBody = { kind: 'old-finish-seen', piece: PIECE, opaque: true, signs: ['polish'] };
  const known = (...timed: readonly Timed[]) => factsAt(9, timed).oldFinish;

  test('is nothing before the first answer, and then rests on the newest of them', () => {
    expect(known()).toMatchObject({ finish: 'unknown', signs: [], isSeen: false, knownMs: undefined });
    expect(known([1, drop])).toMatchObject({ finish: 'shellac', isSeen: false, knownMs: DAY_1_MS + HOUR_MS });
    const both = known([1, drop], [3, seen]);
    expect(both).toMatchObject({ signs: ['polish'], isSeen: true, knownMs: DAY_1_MS + 3 * HOUR_MS });
    expect(known([1, seen], [3, drop]).knownMs).toBe(DAY_1_MS + 3 * HOUR_MS);
    expect(known([1, seen]).sanding).toBe('test-first');
  });

  test('says what was found of lead, and when', () => {
    const lead: EntryBody = { kind: 'lead-tested', piece: PIECE, finding: 'found' };
    expect(known([4, lead])).toMatchObject({
      lead: 'found',
      leadMs: DAY_1_MS + 4 * HOUR_MS,
      sanding: 'wet-only',
    });
    expect(known()).toMatchObject({ lead: undefined, leadMs: undefined });
  });
});

describe('what is still to be done', () => {
  const work = (n: number, task: string, isCoat = false) => ({
    kind: 'work',
    id: id(n),
    task,
    place: 'bench',
    minutes: 10,
    ...(isCoat && { isCoat }),
  });
  const plan: EntryBody = {
    kind: 'piece-planned',
    piece: PIECE,
    coatsADay: 3,
    steps: [work(0x21, 'coat', true), work(0x22, 'scuff'), work(0x23, 'wax'), work(0x24, 'coat', true)],
  } as unknown as EntryBody;

  test.each<{ what: string; timed: readonly Timed[]; is: string[] }>([
    { what: 'bare', timed: [], is: ['coat', 'level-sand', 'rub-out', 'hand-over'] },
    { what: 'coated', timed: [[1, coat()]], is: ['level-sand', 'rub-out', 'hand-over'] },
    {
      what: 'levelled',
      timed: [
        [1, coat()],
        [2, sanded('4', 'level')],
      ],
      is: ['rub-out', 'hand-over'],
    },
    {
      what: 'rubbed out',
      timed: [
        [1, coat()],
        [2, sanded('4', 'rub-out')],
      ],
      is: ['hand-over'],
    },
    { what: 'planned', timed: [[0, plan]], is: ['coat', 'scuff', 'hand-over'] },
    {
      what: 'planned, and its first coat laid',
      timed: [
        [0, plan],
        [1, coat()],
      ],
      is: ['scuff', 'coat', 'hand-over'],
    },
  ])('on a piece that is $what', ({ timed, is }) => {
    expect(factsAt(9, timed).coming).toEqual(is);
  });

  test.each([
    ['flash-coat', 'flash-coat'],
    ['pad', 'coat'],
    ['drop-fill', 'coat'],
    ['glue', undefined],
  ] as const)('to %s is to the judge: %s', (task, act) => {
    expect(actOf(task)).toBe(act);
  });
});
