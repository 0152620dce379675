import { describe, expect, test } from 'vitest';
import { actOf } from '../../../src/actions/verdicts/facts-of';
import type { EntryBody } from '../../../src/logbook/entry';
import { DAY_1_MS, fillJar, id, layCoat, PIECE } from '../../logbook/entries';

import { COAT_M, coat, factsAt, HOUR_MS, OTHER_JAR, sanded, type Timed } from './facts-at';

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
