import { describe, expect, test } from 'vitest';
import type { FinishName } from '../../src/estimator/finishes/traits';
import { toKelvin } from '../../src/units';
import type { Act } from '../../src/verdicts/act';
import type { Facts } from '../../src/verdicts/facts';
import type { Moment } from '../../src/verdicts/moments';
import { holdsOf, verdictOn } from '../../src/verdicts/verdict';
import { aJar, DAY, oldFinish, reasonBy, someFacts, T0 } from './some-facts';

// Each rule on both sides of its limit, with what it does not mind. Limits: common practice, no source, as in the table of its cases.
const um = (n: number): number => n * 1e-6;
const OLD: Partial<Facts> = { base: 'old-closed' };
const coatsOf = (finish: FinishName | undefined, ...days: number[]): Pick<Facts, 'coats'> => ({
  coats: days.map((day) => ({ atMs: T0 + day * DAY, how: 'spray' as const, finish })),
});
const FLASH = { atMs: T0 + 0.2 * DAY, how: 'flash', finish: 'nitrocellulose' } as const;
const check = (test: 'print' | 'gum' | 'smell', result: 'passes' | 'fails', day: number) => ({
  test,
  result,
  atMs: T0 + day * DAY,
});
const now = (celsius: number, humidity = 0.5): Facts['air'] => ({
  now: { atMs: T0, temperatureK: toKelvin(celsius), humidity },
});
const end = (day: number) => ({ earliestMs: T0, likelyMs: T0 + day * DAY, lateMs: T0 + 2 * day * DAY });
const ground = (sort: 'filler-paste' | 'glue', day: number, waits: number) => ({
  ground: sort,
  atMs: T0 + day * DAY,
  until: { earliestMs: T0, likelyMs: T0 + (day + waits) * DAY, lateMs: T0 + (day + waits) * DAY },
  isSaid: false,
});
const bare: Partial<Facts> = { clock: 'no-coats', coats: [], moments: [] };

type Row = [
  rule: string,
  name: string,
  act: Act,
  days: number,
  facts: Partial<Facts>,
  says: string | undefined,
  weight?: string,
];
const build = (totalDryM: number, nextDryM: number, limitM: number) => ({
  build: { totalDryM, nextDryM, limitM },
});

test.each<Row>([
  [
    'film-prints',
    'a print holds the handing over',
    'hand-over',
    70,
    { checks: [check('print', 'fails', 25)] },
    'filmPrints',
    'hold',
  ],
  [
    'film-prints',
    'one made as the last coat was logged counts',
    'rub-out',
    30,
    { checks: [check('print', 'fails', 0)] },
    'filmPrints',
    'hold',
  ],
  ['film-prints', 'a smell is no print', 'rub-out', 30, { checks: [check('smell', 'fails', 25)] }, undefined],
  [
    'film-gums',
    'paper holds the rubbing out',
    'rub-out',
    30,
    { checks: [check('gum', 'fails', 25)] },
    'filmGums',
    'hold',
  ],
  ['film-gums', 'a print is no paper', 'rub-out', 30, { checks: [check('print', 'fails', 25)] }, undefined],
  [
    'lead',
    'an old lacquer that nobody looked at is asked about',
    'promise',
    1,
    { base: 'old-redissolves' },
    'leadUnasked',
    'caution',
  ],
  ['lead', 'but not on handing over', 'hand-over', 70, OLD, undefined],
  [
    'lead',
    'one that was looked at is not',
    'scuff',
    1,
    { ...OLD, oldFinish: oldFinish({ isSeen: true }) },
    undefined,
  ],
  [
    'lead',
    'untested it is told on handing over',
    'hand-over',
    70,
    { oldFinish: oldFinish({ sanding: 'test-first' }) },
    'leadTold',
    'caution',
  ],
  [
    'base-lifts',
    'lacquer lifts an old waterborne',
    'coat',
    1,
    { ...OLD, oldFinish: oldFinish({ finish: 'waterborne' }) },
    'baseLifts',
    'hold',
  ],
  [
    'base-lifts',
    'on an old lacquer that was varnished over, too',
    'coat',
    1,
    { base: 'old-redissolves', oldFinish: oldFinish({ finish: 'oil-varnish' }) },
    'baseLifts',
    'hold',
  ],
  [
    'base-lifts',
    'so does a jar that nobody knows',
    'coat',
    1,
    { ...OLD, jar: undefined, oldFinish: oldFinish({ finish: 'oil-varnish' }) },
    'baseLifts',
    'hold',
  ],
  [
    'base-lifts',
    'an old shellac is lifted by nothing',
    'coat',
    1,
    { ...OLD, oldFinish: oldFinish({ finish: 'shellac' }) },
    undefined,
  ],
  [
    'base-lifts',
    'a barrier keeps off wax too',
    'coat',
    1,
    { ...OLD, ...coatsOf('shellac', 0), oldFinish: oldFinish({ finish: 'wax-or-oil' }) },
    undefined,
  ],
  [
    'base-unknown',
    'is asked before a date is promised',
    'promise',
    1,
    { base: 'old-redissolves', coats: [] },
    'baseUnknown',
    'caution',
  ],
  ['base-unknown', 'bare wood has no old finish', 'coat', 1, { coats: [] }, undefined],
  [
    'silicone',
    'polish under a flash coat',
    'flash-coat',
    1,
    { ...OLD, oldFinish: oldFinish({ signs: ['polish'] }) },
    'silicone',
    'caution',
  ],
  [
    'silicone',
    'other signs say nothing of it',
    'coat',
    1,
    { ...OLD, oldFinish: oldFinish({ signs: ['crazed'] }) },
    undefined,
  ],
  ['silicone', 'nor does bare wood', 'coat', 1, { oldFinish: oldFinish({ signs: ['polish'] }) }, undefined],
  [
    'no-melt',
    'a closed old finish that nobody knows is opened by nothing',
    'flash-coat',
    1,
    { ...OLD, coats: [] },
    'noMelt',
    'hold',
  ],
  ['no-melt', 'what lies under fresh lacquer does not matter', 'flash-coat', 1, OLD, undefined],
  ['no-melt', 'a flash before it is no coat', 'flash-coat', 1, { ...OLD, coats: [FLASH] }, 'noMelt', 'hold'],
  [
    'no-melt',
    'a thinner of a jar that cures opens nothing',
    'flash-coat',
    1,
    { jar: aJar('conversion') },
    'noMelt',
    'hold',
  ],
  [
    'no-melt',
    'a coat from a jar of elsewhere is given the doubt',
    'flash-coat',
    1,
    coatsOf(undefined, 0),
    undefined,
  ],
  [
    'no-melt',
    'nothing is said of bare wood that nobody knows',
    'flash-coat',
    1,
    { ...bare, jar: undefined },
    undefined,
  ],
  [
    'window-closed',
    'a scuff that is planned first makes it a caution',
    'coat',
    2,
    { windowEnd: end(1), coming: ['scuff', 'coat'] },
    'windowClosed',
    'caution',
  ],
  [
    'window-closed',
    'one planned after it does not',
    'coat',
    2,
    { windowEnd: end(1), coming: ['coat', 'scuff'] },
    'windowClosed',
    'hold',
  ],
  [
    'window-closed',
    'nor does none',
    'coat',
    2,
    { windowEnd: end(1), coming: ['coat'] },
    'windowClosed',
    'hold',
  ],
  ['film-limit', 'right up to the limit it may take a coat', 'coat', 1, build(um(64), 0, um(64)), undefined],
  [
    'film-limit',
    'right at the limit it is not over',
    'hand-over',
    70,
    build(um(64), um(28), um(64)),
    undefined,
  ],
  [
    'sands-through',
    'right down to it is not through',
    'level-sand',
    30,
    { above: { what: 'wood', filmM: um(25) } },
    undefined,
  ],
  [
    'sands-through',
    'where there is no film nothing is reached',
    'level-sand',
    30,
    { above: undefined },
    undefined,
  ],
  [
    'sands-through',
    'rubbing out may take 8',
    'rub-out',
    30,
    { above: { what: 'wood', filmM: um(7.9) } },
    'throughWood',
    'caution',
  ],
  [
    'sands-through',
    'a scuff may take 4',
    'scuff',
    30,
    { above: { what: 'wood', filmM: um(4.1) } },
    undefined,
  ],
  [
    'jar-past',
    'at its very end it is past',
    'coat',
    1,
    { jar: aJar('conversion', { lifeAs: 'pot', lifeEndMs: T0 + DAY }) },
    'potOver',
    'hold',
  ],
  [
    'jar-past',
    'before it, it is not',
    'coat',
    1,
    { jar: aJar('conversion', { lifeAs: 'pot', lifeEndMs: T0 + DAY + 1 }) },
    undefined,
  ],
  [
    'jar-past',
    'dried on glass at its very end',
    'coat',
    1,
    { jar: aJar('conversion', { lifeAs: 'pot', lifeEndMs: T0, dryOnGlassMs: T0 }) },
    undefined,
  ],
  [
    'jar-past',
    'a pot of which nobody spoke is not over',
    'coat',
    1,
    { jar: aJar('conversion', { mixedMs: T0 - 3000 * DAY }) },
    undefined,
  ],
  [
    'jar-past',
    'a precatalysed mix keeps for 6 months',
    'coat',
    1,
    { jar: aJar('precatalysed', { mixedMs: T0 - 180 * DAY }) },
    undefined,
  ],
  [
    'jar-past',
    'and no longer',
    'coat',
    1,
    { jar: aJar('precatalysed', { mixedMs: T0 - 185 * DAY }) },
    'jarOld',
    'caution',
  ],
  [
    'jar-past',
    'nitrocellulose keeps for 12',
    'coat',
    1,
    { jar: aJar('nitrocellulose', { mixedMs: T0 - 360 * DAY }) },
    undefined,
  ],
  [
    'jar-past',
    'and no longer',
    'coat',
    1,
    { jar: aJar('nitrocellulose', { mixedMs: T0 - 370 * DAY }) },
    'jarOld',
    'caution',
  ],
  [
    'jar-past',
    'a waterborne one too keeps for 12',
    'coat',
    1,
    { jar: aJar('waterborne', { mixedMs: T0 - 370 * DAY }) },
    'jarOld',
    'caution',
  ],
  ['jar-past', 'no jar, no life', 'coat', 1, { jar: undefined }, undefined],
  [
    'aerosol',
    'a film from a can is sanded with care',
    'level-sand',
    30,
    { jar: aJar('acrylic', { hazards: ['aerosol'] }) },
    'aerosolSoft',
    'note',
  ],
  [
    'too-cold',
    'right at its limit waterborne goes on',
    'coat',
    1,
    { jar: aJar('waterborne'), air: now(18) },
    undefined,
  ],
  [
    'too-cold',
    'just below it waits',
    'coat',
    1,
    { jar: aJar('waterborne'), air: now(17.9) },
    'tooCold',
    'wait',
  ],
  ['too-cold', 'lacquer goes on at 15 °C', 'coat', 1, { air: now(15) }, undefined],
  ['too-cold', 'and just below it with care', 'coat', 1, { air: now(14.9) }, 'tooCold', 'caution'],
  [
    'too-cold',
    'a night right at the limit is no cold one',
    'coat',
    1,
    { air: { nightK: toKelvin(15) } },
    undefined,
  ],
  [
    'too-cold',
    'a night just below it is',
    'coat',
    1,
    { air: { nightK: toKelvin(14.9) } },
    'coldNight',
    'caution',
  ],
  ['too-cold', 'no jar, no limit', 'coat', 1, { jar: undefined, air: now(2) }, undefined],
  [
    'too-damp',
    'a cured finish that does not mind',
    'coat',
    1,
    { jar: aJar('conversion'), air: now(21, 0.95) },
    undefined,
  ],
  ['too-damp', 'no jar, no limit', 'coat', 1, { jar: undefined, air: now(21, 0.95) }, undefined],
  [
    'damp-night',
    'a night as warm as the day is as damp',
    'coat',
    1,
    { jar: aJar('waterborne'), air: { ...now(21, 0.7), nightK: toKelvin(21) } },
    undefined,
  ],
  ['blush', 'a flash coat blushes too', 'flash-coat', 1, { air: { blush: 'blushes' } }, 'blushes', 'wait'],
  ['layers-show', 'twelve hours are one day', 'coat', 0.5, coatsOf('waterborne', 0), undefined],
  [
    'layers-show',
    'a minute more is another',
    'coat',
    0.501,
    coatsOf('waterborne', 0),
    'scuffFirst',
    'caution',
  ],
  [
    'layers-show',
    'two coats twelve hours apart are of one day',
    'level-sand',
    20,
    coatsOf('waterborne', 0, 0.5),
    'oneDay',
    'note',
  ],
  [
    'layers-show',
    'two a minute further apart are not',
    'level-sand',
    20,
    coatsOf('waterborne', 0, 0.501),
    'witnessLines',
    'caution',
  ],
  ['layers-show', 'one coat shows no line', 'level-sand', 20, coatsOf('waterborne', 0), 'oneDay', 'note'],
  [
    'layers-show',
    'of three the last two count',
    'level-sand',
    20,
    coatsOf('waterborne', -3, 0, 0.1),
    'oneDay',
    'note',
  ],
  [
    'layers-show',
    'scuffed since, it takes the next',
    'coat',
    2,
    { ...coatsOf('waterborne', 0), sandings: [{ stage: 'scuff', atMs: T0 + DAY, removed: {} as never }] },
    undefined,
  ],
  [
    'layers-show',
    'a flash is no layer',
    'level-sand',
    20,
    { coats: [...coatsOf('waterborne', 0).coats, { ...FLASH, atMs: T0 + 2 * DAY }] },
    'oneDay',
    'note',
  ],
  [
    'layers-show',
    'a coat from a jar of elsewhere is given the doubt',
    'coat',
    2,
    coatsOf(undefined, 0),
    undefined,
  ],
  ['layers-show', 'nothing laid, nothing shows', 'coat', 2, bare, undefined],
  [
    'cold-shock',
    'six kelvin are a shock',
    'rub-out',
    20,
    { sandingK: 290, air: { coldestK: 284 } },
    'coldShock',
    'caution',
  ],
  ['cold-shock', 'less are none', 'rub-out', 20, { sandingK: 290, air: { coldestK: 284.1 } }, undefined],
  [
    'cold-shock',
    'a cold night to come is none to a film that stays',
    'rub-out',
    20,
    { air: { nightK: 270 } },
    undefined,
  ],
  [
    'cold-shock',
    'before the first coat there is no film to shock',
    'hand-over',
    20,
    { ...bare, air: { coldestK: 270 } },
    undefined,
  ],
  [
    'cold-shock',
    'of the coldest and the night to come the colder travels',
    'hand-over',
    70,
    { air: { coldestK: 270, nightK: 290 } },
    'coldShipping',
    'caution',
  ],
  [
    'ground-waits',
    'at its very end it is over',
    'coat',
    2,
    { ...bare, grounds: [ground('glue', 0, 2)] },
    undefined,
  ],
  [
    'filler-proud',
    'paste stands proud too',
    'coat',
    2,
    { ...bare, grounds: [ground('filler-paste', 0, 2)] },
    'fillerProud',
    'caution',
  ],
  ['filler-proud', 'and glue does not', 'coat', 3, { ...bare, grounds: [ground('glue', 0, 2)] }, undefined],
  [
    'filler-proud',
    'under a coat of the same moment it is past',
    'coat',
    3,
    { grounds: [ground('filler-paste', 0, 0)] },
    undefined,
  ],
  ['untried', 'near its time', 'level-sand', 12, {}, 'untried', 'note'],
  [
    'untried',
    'a smell tells of the rubbing out',
    'rub-out',
    30,
    { checks: [check('smell', 'passes', 25)] },
    undefined,
  ],
  [
    'untried',
    'and not of the levelling',
    'level-sand',
    30,
    { checks: [check('smell', 'passes', 25)] },
    'untried',
    'note',
  ],
  ['untried', 'paper tells of both', 'level-sand', 30, { checks: [check('gum', 'passes', 25)] }, undefined],
  [
    'untried',
    'a try that failed is none that passed',
    'level-sand',
    30,
    { checks: [check('gum', 'fails', 25)] },
    'untried',
    'note',
  ],
  [
    'untried',
    'a try of before the last coat is none',
    'level-sand',
    30,
    { checks: [check('gum', 'passes', -1)] },
    'untried',
    'note',
  ],
  [
    'untried',
    'one of the same moment is one',
    'level-sand',
    30,
    { checks: [check('gum', 'passes', 0)] },
    undefined,
  ],
  ['still-soft', 'at its very time it is hard', 'hand-over', 60, {}, undefined],
  ['still-soft', 'with no date it is asked of now', 'promise', 61, {}, undefined],
  [
    'still-soft',
    'promised or not, now counts on handing over',
    'hand-over',
    30,
    { promisedMs: T0 + 70 * DAY },
    'stillSoft',
    'caution',
  ],
  ['estimate', 'handing over waits for the rubbing out', 'hand-over', 20, {}, 'estimate', 'wait'],
  ['estimate', 'a date may be promised before it', 'promise', 1, {}, undefined],
])('%s: %s', (rule, _, act, days, facts, says, weight) => {
  const reason = reasonBy(rule, act, someFacts(days, facts));
  expect([reason?.says, reason?.weight]).toEqual([says, weight]);
});

const moment = (name: Moment['name'], likelyMs: number, more: Partial<Moment> = {}): Moment => ({
  name,
  earliestMs: T0,
  likelyMs,
  lateMs: likelyMs,
  state: 'waiting',
  ...more,
});
const NEVER = Number.POSITIVE_INFINITY;

describe('a time that the model does not reach', () => {
  test('is told without a date', () => {
    const facts = someFacts(1, { moments: [moment('level', NEVER), moment('settled', NEVER)] });
    expect(reasonBy('estimate', 'level-sand', facts)).toMatchObject({ says: 'estimateFar' });
    expect(reasonBy('estimate', 'level-sand', facts)).not.toHaveProperty('figures');
    expect(reasonBy('still-soft', 'hand-over', facts)).toMatchObject({ says: 'softForLong' });
    expect(reasonBy('still-soft', 'hand-over', facts)).not.toHaveProperty('figures');
  });

  test('one that it reaches is told with its date', () => {
    const facts = someFacts(1);
    expect(reasonBy('estimate', 'level-sand', facts)?.figures).toEqual({ atMs: T0 + 14 * DAY });
    expect(reasonBy('still-soft', 'hand-over', facts)?.figures).toEqual({ atMs: T0 + 60 * DAY });
  });

  test('what is done already is waited for no more', () => {
    const facts = someFacts(1, { moments: [moment('level', T0 + 14 * DAY, { state: 'done' })] });
    expect(reasonBy('estimate', 'level-sand', facts)).toBeUndefined();
  });
});

describe('the figures that a rule tells', () => {
  test.each<readonly [string, Act, Partial<Facts>, object]>([
    ['film-limit', 'coat', build(um(96), um(28), um(100)), { filmM: um(96) + um(28), limitM: um(100) }],
    ['film-limit', 'coat', build(um(124), um(28), um(100)), { filmM: um(124), limitM: um(100) }],
    ['film-limit', 'hand-over', build(um(124), um(28), um(100)), { filmM: um(124), limitM: um(100) }],
    [
      'sands-through',
      'level-sand',
      { above: { what: 'wood', filmM: um(9) } },
      { filmM: um(9), limitM: um(25) },
    ],
    ['film-prints', 'level-sand', { checks: [check('print', 'fails', 0.5)] }, { atMs: T0 + 7.5 * DAY }],
    ['too-cold', 'coat', { air: now(10) }, { temperatureK: toKelvin(10), limitK: toKelvin(15) }],
    ['ground-waits', 'coat', { ...bare, grounds: [ground('glue', 0, 2)] }, { atMs: T0 + 2 * DAY }],
    [
      'drop-waits',
      'coat',
      { coats: [{ atMs: T0 + DAY, how: 'brush-fill', finish: 'nitrocellulose' }] },
      { atMs: T0 + 1.125 * DAY },
    ],
    ['cold-shock', 'hand-over', { air: { coldestK: 280, nightK: 270 } }, { temperatureK: 270 }],
    ['cold-shock', 'rub-out', { air: { coldestK: 280, nightK: 270 } }, { temperatureK: 280 }],
  ])('%s on %s', (rule, act, facts, figures) => {
    expect(reasonBy(rule, act, someFacts(1, facts))?.figures).toEqual(figures);
  });

  test('a night never comes to more than saturated air', () => {
    const facts = someFacts(1, { jar: aJar('waterborne'), air: { ...now(21, 0.7), nightK: toKelvin(2) } });
    expect(reasonBy('damp-night', 'coat', facts)?.figures?.share).toBe(1);
  });
});

describe('what was set aside', () => {
  const setAside = (rule: string, day: number, reason = 'Tried it.') => ({
    rule,
    reason,
    atMs: T0 + day * DAY,
  });
  const holds = (act: Act, facts: Partial<Facts>): readonly string[] =>
    holdsOf(verdictOn({ act }, someFacts(30, facts))).map(({ rule }) => rule);

  test.each([
    { what: 'a print', act: 'rub-out', facts: { checks: [check('print', 'fails', 5)] }, rule: 'film-prints' },
    {
      what: 'lead that was found',
      act: 'scuff',
      facts: { oldFinish: oldFinish({ sanding: 'wet-only', leadMs: T0 + 5 * DAY, knownMs: T0 + 9 * DAY }) },
      rule: 'lead',
    },
    {
      what: 'paint that nobody tested',
      act: 'scuff',
      facts: { oldFinish: oldFinish({ sanding: 'test-first', leadMs: T0 + 9 * DAY, knownMs: T0 + 5 * DAY }) },
      rule: 'lead',
    },
    {
      what: 'a base that lifts',
      act: 'coat',
      facts: { ...OLD, oldFinish: oldFinish({ finish: 'oil-varnish', knownMs: T0 + 5 * DAY }) },
      rule: 'base-lifts',
    },
    { what: 'a window', act: 'coat', facts: { windowEnd: end(5) }, rule: 'window-closed' },
    {
      what: 'a film limit',
      act: 'coat',
      facts: { ...build(9, 1, 1), ...coatsOf('conversion', 5) },
      rule: 'film-limit',
    },
    {
      what: 'a coat that melts in nothing',
      act: 'flash-coat',
      facts: coatsOf('waterborne', 5),
      rule: 'no-melt',
    },
    {
      what: 'a pot',
      act: 'coat',
      facts: { jar: aJar('conversion', { lifeAs: 'pot' as const, lifeEndMs: T0 + 5 * DAY }) },
      rule: 'jar-past',
    },
  ] as const)(
    'before it was found $what holds; at that moment and after it does not',
    ({ act, facts, rule }) => {
      expect(holds(act, { ...facts, overrides: [setAside(rule, 4.9)] })).toContain(rule);
      for (const day of [5, 6])
        expect(holds(act, { ...facts, overrides: [setAside(rule, day)] })).not.toContain(rule);
      expect(holds(act, { ...facts, overrides: [setAside('another', 6)] })).toContain(rule);
    },
  );

  test('is told with the newest reason', () => {
    const facts = someFacts(30, {
      checks: [check('print', 'fails', 5)],
      overrides: [setAside('film-prints', 6, 'First.'), setAside('film-prints', 7, 'Second.')],
    });
    expect(reasonBy('film-prints', 'rub-out', facts)?.override?.reason).toBe('Second.');
  });

  test('reaches no caution', () => {
    const facts = someFacts(1, { ...OLD, coats: [], overrides: [setAside('base-unknown', 1)] });
    expect(reasonBy('base-unknown', 'coat', facts)?.override).toBeUndefined();
  });
});

describe('several reasons', () => {
  test('come the heaviest first: hold, wait, caution, note', () => {
    const facts = someFacts(12, {
      checks: [check('print', 'fails', 11)],
      above: { what: 'wood', filmM: um(5) },
    });
    const weights = verdictOn({ act: 'level-sand' }, facts).reasons.map(({ weight }) => weight);
    expect(weights).toEqual(['hold', 'wait', 'caution', 'note']);
  });

  test('of two waits each end is the later one', () => {
    const until = { earliestMs: T0 + 12 * DAY, likelyMs: T0 + 13 * DAY, lateMs: T0 + 30 * DAY };
    const grounds = [{ ground: 'glue', atMs: T0, until, isSaid: false } as const];
    // Level-sand after 10, 14, 20 days.
    expect(verdictOn({ act: 'level-sand' }, someFacts(1, { grounds })).until).toMatchObject({
      earliestMs: T0 + 12 * DAY,
      likelyMs: T0 + 14 * DAY,
      lateMs: T0 + 30 * DAY,
    });
    expect(verdictOn({ act: 'level-sand' }, someFacts(40)).until).toBeUndefined();
  });

  test('a promise is not asked of itself', () => {
    expect(verdictOn({ act: 'promise' }, someFacts(70, { coming: ['promise', 'hand-over'] })).word).toBe(
      'ready',
    );
  });

  test('what holds an act to come holds the promise once', () => {
    const facts = someFacts(30, {
      checks: [check('print', 'fails', 25)],
      oldFinish: oldFinish({ sanding: 'wet-only' }),
    });
    const rules = verdictOn({ act: 'promise' }, facts).reasons.map(({ rule }) => rule);
    expect(rules.filter((rule) => rule === 'lead')).toHaveLength(1);
    expect(rules.filter((rule) => rule === 'film-prints')).toHaveLength(1);
    expect(rules).not.toContain('untried'); // a note of what is to come is no matter of the date
  });
});
