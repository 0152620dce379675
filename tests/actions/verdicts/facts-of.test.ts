import { describe, expect, test } from 'vitest';
import type { Outlook } from '../../../src/actions/outlook/outlook';
import { factsOf } from '../../../src/actions/verdicts/facts-of';
import type { EntryBody } from '../../../src/logbook/entry';
import type { Piece } from '../../../src/logbook/fold/piece/pieces';
import { DAY_1_MS, fillJar, id, JAR, layCoat, PIECE, strike } from '../../logbook/entries';
import { anOutlook } from '../../parts/an-outlook';
import { outlookOf, type Said, shopOf } from '../../verdicts/random-shops';

import { ANY, COAT_M, check, coat, factsAt, HOUR_MS, OTHER_JAR, type Timed } from './facts-at';

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
