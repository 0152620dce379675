import { describe, expect, test } from 'vitest';
import { reasonWords } from '../../src/parts/verdict/reason-words';
import type { Act } from '../../src/verdicts/act';
import type { Facts } from '../../src/verdicts/facts';
import { RULES } from '../../src/verdicts/rules';
import { holdsOf, verdictOn } from '../../src/verdicts/verdict';
import { aJar, DAY, oldFinish, reasonBy, someFacts, T0 } from './some-facts';

interface Row {
  readonly name: string;
  readonly act: Act;
  readonly days?: number;
  readonly facts?: Partial<Facts>;
  /** What the rule says, and how much that weighs; undefined where it has nothing to say. */
  readonly says?: string;
  readonly weight?: string;
}

const PRACTICE = 'common practice, no source';

const tabled = new Map<string, string>();
/** What the rows of each table say: each row is held against the judge. */
const told = new Map<string, readonly string[]>();
/** @param from the source of what the rule asks, or that there is none */
const table = (rule: string, from: string, rows: readonly Row[]): void => {
  tabled.set(rule, from);
  told.set(
    rule,
    rows.flatMap(({ says }) => says ?? []),
  );
  describe(`${rule} (${from})`, () => {
    test.each(rows)('$name', ({ act, days = 1, facts, says, weight = 'hold' }) => {
      const reason = reasonBy(rule, act, someFacts(days, facts));
      expect(reason?.says).toBe(says);
      if (says !== undefined) expect(reason?.weight).toBe(weight);
    });
  });
};

const check = (test: 'print' | 'gum', result: 'passes' | 'fails', day: number) => ({
  test,
  result,
  atMs: T0 + day * DAY,
});

// Common practice, no source: what a check finds outranks the estimate until a later check passes.
table('film-prints', PRACTICE, [
  {
    name: 'a print holds level-sanding',
    act: 'level-sand',
    days: 30,
    facts: { checks: [check('print', 'fails', 25)] },
    says: 'filmPrints',
  },
  {
    name: 'and rubbing out',
    act: 'rub-out',
    days: 30,
    facts: { checks: [check('print', 'fails', 25)] },
    says: 'filmPrints',
  },
  { name: 'but not another coat', act: 'coat', days: 1, facts: { checks: [check('print', 'fails', 0.5)] } },
  {
    name: 'a later check that passes clears it',
    act: 'level-sand',
    days: 30,
    facts: { checks: [check('print', 'fails', 25), check('print', 'passes', 29)] },
  },
  {
    name: 'so does paper that powders',
    act: 'level-sand',
    days: 30,
    facts: { checks: [check('print', 'fails', 25), check('gum', 'passes', 29)] },
  },
  {
    name: 'a print of before the last coat says nothing',
    act: 'level-sand',
    days: 30,
    facts: { checks: [check('print', 'fails', -1)] },
  },
]);

table('film-gums', PRACTICE, [
  {
    name: 'paper that gums holds level-sanding',
    act: 'level-sand',
    days: 30,
    facts: { checks: [check('gum', 'fails', 25)] },
    says: 'filmGums',
  },
  {
    name: 'a thumb that leaves no print does not clear it',
    act: 'level-sand',
    days: 30,
    facts: { checks: [check('gum', 'fails', 25), check('print', 'passes', 26)] },
    says: 'filmGums',
  },
  {
    name: 'it may be handed over with care',
    act: 'hand-over',
    days: 30,
    facts: { checks: [check('gum', 'fails', 25)] },
  },
]);

test.each([
  ['test-first', 'lead-test'],
  ['wet-only', 'lead-found'],
] as const)(
  'an old finish of sanding %s leads to %s: what was found is not to be tested again',
  (sanding, way) => {
    const reason = reasonBy('lead', 'scuff', someFacts(30, { oldFinish: oldFinish({ sanding }) }));
    expect(reason?.clearedBy).toBe(way);
  },
);

// Common practice, no source; "about 1980" is the practice of the trade.
table(
  'lead',
  'common practice, no source: old opaque paint of before about 1980 is treated as lead until tested',
  [
    {
      name: 'an old finish of which nobody said how it looks',
      act: 'scuff',
      facts: { base: 'old-closed' },
      says: 'leadUnasked',
      weight: 'caution',
    },
    {
      name: 'an opaque old finish is not sanded untested',
      act: 'scuff',
      facts: { oldFinish: oldFinish({ sanding: 'test-first' }) },
      says: 'leadUntested',
    },
    {
      name: 'nor with lead found',
      act: 'level-sand',
      facts: { oldFinish: oldFinish({ sanding: 'wet-only' }) },
      says: 'leadFound',
    },
    {
      name: 'and no date is promised',
      act: 'promise',
      facts: { oldFinish: oldFinish({ sanding: 'wet-only' }) },
      says: 'leadFound',
    },
    {
      name: 'on handing over it is told',
      act: 'hand-over',
      facts: { oldFinish: oldFinish({ sanding: 'wet-only' }) },
      says: 'leadTold',
      weight: 'caution',
    },
    {
      name: 'a coat disturbs nothing',
      act: 'coat',
      facts: { oldFinish: oldFinish({ sanding: 'wet-only' }) },
    },
    { name: 'none found, nothing to say', act: 'scuff', facts: { oldFinish: oldFinish({ sanding: 'any' }) } },
  ],
);

// Common practice, no source.
table('base-lifts', PRACTICE, [
  {
    name: 'lacquer lifts oil varnish',
    act: 'coat',
    facts: { base: 'old-closed', oldFinish: oldFinish({ finish: 'oil-varnish' }) },
    says: 'baseLifts',
  },
  {
    name: 'so does a flash coat',
    act: 'flash-coat',
    facts: { base: 'old-closed', oldFinish: oldFinish({ finish: 'oil-varnish' }) },
    says: 'baseLifts',
  },
  {
    name: 'shellac does not',
    act: 'coat',
    facts: {
      base: 'old-closed',
      oldFinish: oldFinish({ finish: 'oil-varnish' }),
      jar: aJar('shellac'),
    },
  },
  {
    name: 'waterborne does not',
    act: 'coat',
    facts: {
      base: 'old-closed',
      oldFinish: oldFinish({ finish: 'oil-varnish' }),
      jar: aJar('waterborne'),
    },
  },
  {
    name: 'a barrier of shellac clears it',
    act: 'coat',
    facts: {
      base: 'old-closed',
      oldFinish: oldFinish({ finish: 'oil-varnish' }),
      coats: [{ atMs: T0, how: 'brush', finish: 'shellac' }],
    },
  },
  {
    name: 'wax repels it',
    act: 'coat',
    facts: { base: 'old-closed', oldFinish: oldFinish({ finish: 'wax-or-oil' }) },
    says: 'baseRepels',
  },
  {
    name: 'old lacquer takes it',
    act: 'coat',
    facts: { base: 'old-redissolves', oldFinish: oldFinish({ finish: 'solvent-lacquer' }) },
  },
  { name: 'bare wood takes it', act: 'coat', facts: { oldFinish: oldFinish({ finish: 'oil-varnish' }) } },
]);

const end = (day: number) => ({ earliestMs: T0, likelyMs: T0 + day * DAY, lateMs: T0 + 2 * day * DAY });
// Common practice, no source: a conversion varnish is coated within its window or scuffed first.
table('window-closed', PRACTICE, [
  { name: 'open', act: 'coat', days: 0.5, facts: { windowEnd: end(1) } },
  {
    name: 'from its likely end on it is over',
    act: 'coat',
    days: 1,
    facts: { windowEnd: end(1) },
    says: 'windowClosed',
  },
  {
    name: 'scuffed, it takes the coat',
    act: 'coat',
    days: 2,
    facts: { windowEnd: end(1), sandings: [{ stage: 'scuff', atMs: T0 + 1.5 * DAY, removed: {} as never }] },
  },
]);

const um = (n: number): number => n * 1e-6;
// Common practice, no source: catalysed total 100 um at most; a sealer and two topcoats make 96, a fourth 124.
table('film-limit', PRACTICE, [
  {
    name: '96 um of 100 may not take 28 more',
    act: 'coat',
    facts: { build: { totalDryM: um(96), nextDryM: um(28), limitM: um(100) } },
    says: 'filmWouldBeOver',
  },
  {
    name: '68 um may',
    act: 'coat',
    facts: { build: { totalDryM: um(68), nextDryM: um(28), limitM: um(100) } },
  },
  {
    name: 'over already',
    act: 'coat',
    facts: { build: { totalDryM: um(124), nextDryM: um(28), limitM: um(100) } },
    says: 'filmOver',
  },
  {
    name: 'over is told on handing over',
    act: 'hand-over',
    facts: { build: { totalDryM: um(124), nextDryM: um(28), limitM: um(100) } },
    says: 'filmOver',
    weight: 'caution',
  },
]);

const OLD = { base: 'old-closed' } as const;
// Common practice, no source.
table('base-unknown', PRACTICE, [
  {
    name: 'an old finish that nobody tested',
    act: 'coat',
    facts: { ...OLD, coats: [] },
    says: 'baseUnknown',
    weight: 'caution',
  },
  {
    name: 'tested, nothing to say',
    act: 'coat',
    facts: { ...OLD, coats: [], oldFinish: oldFinish({ finish: 'shellac' }) },
  },
  { name: 'with a coat on it is too late to ask', act: 'coat', facts: OLD },
]);

table('no-melt', PRACTICE, [
  {
    name: 'thinner opens no oil varnish',
    act: 'flash-coat',
    facts: { ...OLD, coats: [], oldFinish: oldFinish({ finish: 'oil-varnish' }) },
    says: 'noMelt',
  },
  {
    name: 'it opens an old lacquer',
    act: 'flash-coat',
    facts: { base: 'old-redissolves', coats: [], oldFinish: oldFinish({ finish: 'solvent-lacquer' }) },
  },
  { name: 'it opens fresh lacquer', act: 'flash-coat' },
  {
    name: 'it opens no waterborne coat',
    act: 'flash-coat',
    facts: { coats: [{ atMs: T0, how: 'brush', finish: 'waterborne' }] },
    says: 'noMelt',
  },
]);

table('silicone', PRACTICE, [
  {
    name: 'polish makes craters',
    act: 'coat',
    facts: { ...OLD, oldFinish: oldFinish({ signs: ['polish'] }) },
    says: 'silicone',
    weight: 'caution',
  },
  {
    name: 'shellac closes it off',
    act: 'coat',
    facts: {
      ...OLD,
      oldFinish: oldFinish({ signs: ['polish'] }),
      coats: [{ atMs: T0, how: 'brush', finish: 'shellac' }],
    },
  },
]);

const usual = { what: 'colour', filmM: um(20) } as const;
// Usual amounts, common practice, no source: scuff 2-4 um, level 10-25, rub out 3-8.
table('sands-through', PRACTICE, [
  {
    name: 'levelling may take 25 um of the 20 over the colour',
    act: 'level-sand',
    days: 30,
    facts: { above: usual },
    says: 'throughColour',
    weight: 'caution',
  },
  { name: 'rubbing out takes 8 at most', act: 'rub-out', days: 30, facts: { above: usual } },
  {
    name: 'levelling takes 25 at most',
    act: 'level-sand',
    days: 30,
    facts: { above: { what: 'colour', filmM: um(25) } },
  },
  {
    name: 'wood',
    act: 'level-sand',
    days: 30,
    facts: { above: { what: 'wood', filmM: um(12) } },
    says: 'throughWood',
    weight: 'caution',
  },
  {
    name: 'old finish',
    act: 'scuff',
    days: 30,
    facts: { above: { what: 'old-finish', filmM: um(3) } },
    says: 'throughOld',
    weight: 'caution',
  },
]);

test.each([
  ['a pot', aJar('conversion', { lifeAs: 'pot', lifeEndMs: T0 })],
  ['a shelf', aJar('nitrocellulose', { lifeAs: 'shelf', lifeEndMs: T0 })],
  ['a cut', aJar('shellac', { mixedMs: T0 - 213 * DAY })],
])('a jar past its life on %s is called by its name: there is more than one', (_, jar) => {
  const reason = reasonBy('jar-past', 'coat', someFacts(1, { jar: { ...jar, name: 'Gloss of May' } }));
  expect(reason && reasonWords({ ...reason }, 'metric', T0)).toMatch(/^Gloss of May(:| is past its) /);
});

// Common practice, no source: a pot past its life does not cure; shellac keeps 6 months, tried on glass after that.
table('jar-past', PRACTICE, [
  {
    name: 'a pot past its life',
    act: 'coat',
    facts: { jar: aJar('conversion', { lifeAs: 'pot', lifeEndMs: T0 }) },
    says: 'potOver',
  },
  {
    name: 'shellac of seven months',
    act: 'coat',
    facts: { jar: aJar('shellac', { mixedMs: T0 - 213 * DAY }) },
    says: 'shellacOld',
    weight: 'caution',
  },
  {
    name: 'shellac of seven that has dried on glass since',
    act: 'coat',
    facts: { jar: aJar('shellac', { mixedMs: T0 - 213 * DAY, dryOnGlassMs: T0 - DAY }) },
  },
  {
    name: 'shellac of seven that had dried on glass when it was young',
    act: 'coat',
    facts: { jar: aJar('shellac', { mixedMs: T0 - 213 * DAY, dryOnGlassMs: T0 - 200 * DAY }) },
    says: 'shellacOld',
    weight: 'caution',
  },
  { name: 'shellac of five', act: 'coat', facts: { jar: aJar('shellac', { mixedMs: T0 - 150 * DAY }) } },
  {
    name: 'lacquer of seven months',
    act: 'coat',
    facts: { jar: aJar('nitrocellulose', { mixedMs: T0 - 213 * DAY }) },
  },
  {
    name: 'lacquer past the life that was said',
    act: 'coat',
    facts: { jar: aJar('nitrocellulose', { lifeAs: 'shelf', lifeEndMs: T0 }) },
    says: 'jarOld',
    weight: 'caution',
  },
]);

table(
  'isocyanate',
  '29 CFR 1910.134 and the safety data sheet govern; the caution itself is common practice, no source',
  [
    {
      name: 'in the jar',
      act: 'coat',
      facts: { jar: aJar('urethane', { hazards: ['isocyanate'] }) },
      says: 'isocyanate',
      weight: 'caution',
    },
    { name: 'not in it', act: 'coat' },
  ],
);

// Common practice, no source: heavy aerosol builds take 28 to 60 days.
table('aerosol', PRACTICE, [
  {
    name: 'a coat from a can',
    act: 'coat',
    facts: { jar: aJar('nitrocellulose', { hazards: ['aerosol'] }) },
    says: 'aerosolCoat',
    weight: 'note',
  },
  {
    name: 'a film from a can',
    act: 'rub-out',
    days: 22,
    facts: { jar: aJar('nitrocellulose', { hazards: ['aerosol'] }) },
    says: 'aerosolSoft',
    weight: 'note',
  },
  { name: 'from a gun', act: 'coat' },
]);

const F = (degrees: number): number => 273.15 + ((degrees - 32) * 5) / 9;
const air = (temperatureF: number, humidity: number, more: Partial<Facts['air']> = {}): Facts['air'] => ({
  now: { atMs: T0, temperatureK: F(temperatureF), humidity },
  ...more,
});
// Waterborne: not below 18 C (65 F) or above 70 % (common practice, no source).
table('too-cold', 'common practice, no source; conversion varnish not below 60 F by trade pages, read', [
  {
    name: '66 F by day, 59 F overnight',
    act: 'coat',
    facts: { jar: aJar('waterborne'), air: air(66, 0.58, { nightK: F(59) }) },
    says: 'coldNight',
    weight: 'caution',
  },
  {
    name: '59 F now',
    act: 'coat',
    facts: { jar: aJar('waterborne'), air: air(59, 0.58) },
    says: 'tooCold',
    weight: 'wait',
  },
  {
    name: 'lacquer at 12 C goes on with care',
    act: 'coat',
    facts: { air: air(53.6, 0.5) },
    says: 'tooCold',
    weight: 'caution',
  },
  {
    name: '66 F and a warm night',
    act: 'coat',
    facts: { jar: aJar('waterborne'), air: air(66, 0.58, { nightK: F(66) }) },
  },
]);
table('too-damp', PRACTICE, [
  {
    name: 'waterborne in 75 %',
    act: 'coat',
    facts: { jar: aJar('waterborne'), air: air(70, 0.75) },
    says: 'tooDamp',
    weight: 'wait',
  },
  { name: 'in 70 %', act: 'coat', facts: { jar: aJar('waterborne'), air: air(70, 0.7) } },
  { name: 'lacquer has its own rule', act: 'coat', facts: { air: air(70, 0.75) } },
]);
// 58 % at 66 F hold 1267 Pa of water and air of 59 F holds 1705 at most (psychrometric tables): 74 %. The limit is common practice, no source.
table('damp-night', 'psychrometric tables; the limit is common practice, no source', [
  {
    name: '58 % at 66 F, 59 F overnight',
    act: 'coat',
    facts: { jar: aJar('waterborne'), air: air(66, 0.58, { nightK: F(59) }) },
    says: 'dampNight',
    weight: 'caution',
  },
  {
    name: '54 % at 66 F come to 69 %',
    act: 'coat',
    facts: { jar: aJar('waterborne'), air: air(66, 0.54, { nightK: F(59) }) },
  },
  {
    name: 'too damp by day has its own rule',
    act: 'coat',
    facts: { jar: aJar('waterborne'), air: air(66, 0.75, { nightK: F(59) }) },
  },
  { name: 'lacquer has no such limit', act: 'coat', facts: { air: air(66, 0.58, { nightK: F(50) }) } },
]);
table('blush', 'the drying model; what follows is common practice, no source', [
  {
    name: 'it falls below the dew point',
    act: 'coat',
    facts: { air: air(80, 0.78, { blush: 'blushes' }) },
    says: 'blushes',
    weight: 'wait',
  },
  {
    name: 'it may',
    act: 'coat',
    facts: { air: air(80, 0.6, { blush: 'may-blush' }) },
    says: 'mayBlush',
    weight: 'caution',
  },
  { name: 'it does not', act: 'coat', facts: { air: air(70, 0.4, { blush: 'stays-clear' }) } },
]);

const waterborne = (...days: number[]): Partial<Facts> => ({
  coats: days.map((day) => ({ atMs: T0 + day * DAY, how: 'spray', finish: 'waterborne' })),
});
table('layers-show', PRACTICE, [
  {
    name: 'scuffed between days',
    act: 'coat',
    days: 1,
    facts: waterborne(0),
    says: 'scuffFirst',
    weight: 'caution',
  },
  { name: 'not within one', act: 'coat', days: 0.1, facts: waterborne(0) },
  {
    name: 'the last two on different days show',
    act: 'level-sand',
    days: 20,
    facts: waterborne(0, 1),
    says: 'witnessLines',
    weight: 'caution',
  },
  {
    name: 'on one day they do not',
    act: 'level-sand',
    days: 20,
    facts: waterborne(0, 0.1),
    says: 'oneDay',
    weight: 'note',
  },
  { name: 'lacquer melts in', act: 'coat', days: 1 },
]);

table('cold-shock', PRACTICE, [
  {
    name: 'from 12 C into a room of 21',
    act: 'rub-out',
    days: 20,
    facts: { air: { coldestK: 285.15 } },
    says: 'coldShock',
    weight: 'caution',
  },
  { name: 'from 18 C', act: 'rub-out', days: 20, facts: { air: { coldestK: 291.15 } } },
  {
    name: 'on its way in a frost',
    act: 'hand-over',
    days: 30,
    facts: { air: { nightK: 268.15 } },
    says: 'coldShipping',
    weight: 'caution',
  },
]);

table('still-soft', 'the drying model', [
  { name: 'handed over before it is hard', act: 'hand-over', days: 30, says: 'stillSoft', weight: 'caution' },
  {
    name: 'promised for a day before it is',
    act: 'promise',
    days: 1,
    facts: { promisedMs: T0 + 40 * DAY },
    says: 'stillSoft',
    weight: 'caution',
  },
  { name: 'promised for a day after', act: 'promise', days: 1, facts: { promisedMs: T0 + 61 * DAY } },
  { name: 'hard', act: 'hand-over', days: 61 },
]);

table('untried', PRACTICE, [
  { name: 'due, and nobody tried', act: 'rub-out', days: 30, says: 'untried', weight: 'note' },
  { name: 'not due', act: 'rub-out', days: 5 },
  { name: 'tried', act: 'rub-out', days: 30, facts: { checks: [check('print', 'passes', 25)] } },
]);

// Level-sand 10-14-20 days after the last coat.
table('estimate', 'the drying model', [
  { name: 'before its early end it waits', act: 'level-sand', days: 9, says: 'estimate', weight: 'wait' },
  {
    name: 'up to its likely time it still does',
    act: 'level-sand',
    days: 13,
    says: 'estimate',
    weight: 'wait',
  },
  { name: 'from its likely time on it does not', act: 'level-sand', days: 14 },
  {
    name: 'not worked out yet',
    act: 'coat',
    facts: { clock: 'computing', moments: [] },
    says: 'computing',
    weight: 'wait',
  },
  {
    name: 'it cannot be',
    act: 'coat',
    facts: { clock: 'failed', moments: [] },
    says: 'notWorkedOut',
    weight: 'wait',
  },
  {
    name: 'before the first coat there is none',
    act: 'coat',
    facts: { clock: 'no-coats', coats: [], moments: [] },
  },
]);

const ground = (
  sort: 'pore-filler' | 'glue' | 'grain-sealer',
  day: number,
  waits: number,
  isSaid = false,
) => ({
  ground: sort,
  atMs: T0 + day * DAY,
  until: {
    earliestMs: T0 + (day + waits / 2) * DAY,
    likelyMs: T0 + (day + waits) * DAY,
    lateMs: T0 + (day + 2 * waits) * DAY,
  },
  isSaid,
});
const sanding = (stage: 'scuff', day: number) => ({ stage, atMs: T0 + day * DAY, removed: {} as never });
const bare: Partial<Facts> = { clock: 'no-coats', coats: [], moments: [] };

// Common practice, no source: filler 24 to 72 h by its sheet, glue a day in the clamps.
table('ground-waits', PRACTICE, [
  ...(['coat', 'flash-coat', 'scuff', 'level-sand', 'rub-out', 'hand-over'] as const).map((act) => ({
    name: `wet filler holds off: ${act}`,
    act,
    facts: { ...bare, grounds: [ground('pore-filler', 0, 2)] },
    says: 'pore-filler',
    weight: 'wait',
  })),
  {
    name: 'of two the one that takes longer',
    act: 'coat',
    facts: { ...bare, grounds: [ground('glue', 0, 3), ground('pore-filler', 0, 2)] },
    says: 'glue',
    weight: 'wait',
  },
  {
    name: 'past its wait it says nothing',
    act: 'coat',
    days: 2,
    facts: { ...bare, grounds: [ground('glue', 0, 2)] },
  },
  {
    name: 'a date may be promised over it',
    act: 'promise',
    facts: { ...bare, grounds: [ground('glue', 0, 2)] },
  },
]);

const drops = (...hours: readonly number[]): Partial<Facts> => ({
  coats: hours.map((hour) => ({ atMs: T0 + (hour / 24) * DAY, how: 'brush-fill', finish: 'nitrocellulose' })),
});

// Common practice, no source: drops of a fill go in at least three hours apart.
table('drop-waits', PRACTICE, [
  {
    name: 'a drop of two hours ago',
    act: 'coat',
    days: 5 / 24,
    facts: drops(0, 3),
    says: 'dropWaits',
    weight: 'wait',
  },
  { name: 'at three hours it is over', act: 'coat', days: 6 / 24, facts: drops(0, 3) },
  { name: 'a coat that was sprayed goes by the estimate', act: 'coat', days: 2 / 24 },
  { name: 'levelling goes by its own rule', act: 'level-sand', days: 5 / 24, facts: drops(0, 3) },
]);

table('filler-proud', PRACTICE, [
  {
    name: 'filler that was not sanded back',
    act: 'coat',
    days: 3,
    facts: { ...bare, grounds: [ground('pore-filler', 0, 2)] },
    says: 'fillerProud',
    weight: 'caution',
  },
  {
    name: 'still wet it is left alone',
    act: 'coat',
    days: 1,
    facts: { ...bare, grounds: [ground('pore-filler', 0, 2)] },
  },
  {
    name: 'sanded back',
    act: 'coat',
    days: 3,
    facts: { ...bare, grounds: [ground('pore-filler', 0, 2)], sandings: [sanding('scuff', 2.5)] },
  },
  {
    name: 'logged with a sanding at the same moment',
    act: 'coat',
    days: 3,
    facts: { ...bare, grounds: [ground('pore-filler', 0, 2)], sandings: [sanding('scuff', 0)] },
    says: 'fillerProud',
    weight: 'caution',
  },
  {
    name: 'sanded before it',
    act: 'coat',
    days: 3,
    facts: { ...bare, grounds: [ground('pore-filler', 0, 2)], sandings: [sanding('scuff', -1)] },
    says: 'fillerProud',
    weight: 'caution',
  },
  {
    name: 'below a coat it is past',
    act: 'coat',
    days: 3,
    facts: { grounds: [ground('pore-filler', -1, 0.5)] },
  },
  {
    name: 'a sealer stands proud of nothing',
    act: 'coat',
    days: 3,
    facts: { ...bare, grounds: [ground('grain-sealer', 0, 1)] },
  },
]);

test('a wait that a sheet gives is told as from the sheet', () => {
  const source = (isSaid: boolean) =>
    reasonBy('ground-waits', 'coat', someFacts(1, { ...bare, grounds: [ground('glue', 0, 2, isSaid)] }))
      ?.source;
  expect([source(true), source(false)]).toEqual(['sheet', 'practice']);
});

describe('a verdict', () => {
  test.each([
    { days: 9, word: 'wait' },
    { days: 10, word: 'perhaps' },
    { days: 14, word: 'ready' },
  ])('after $days days says $word', ({ days, word }) => {
    expect(verdictOn({ act: 'level-sand' }, someFacts(days)).word).toBe(word);
  });

  const prints = (overrideDay: number): Partial<Facts> => ({
    checks: [check('print', 'fails', 25)],
    overrides: [{ rule: 'film-prints', reason: 'Only the edge printed.', atMs: T0 + overrideDay * DAY }],
  });

  test('set aside in writing, a hold no longer holds and is told as a caution', () => {
    const verdict = verdictOn({ act: 'level-sand' }, someFacts(30, prints(26)));
    expect([verdict.word, holdsOf(verdict)]).toEqual(['ready', []]);
    expect(verdict.reasons[0]).toMatchObject({
      rule: 'film-prints',
      override: { reason: 'Only the edge printed.' },
    });
  });

  test('set aside it stands behind what is still waited for', () => {
    const { reasons } = verdictOn({ act: 'level-sand' }, someFacts(5, prints(26)));
    const early = verdictOn(
      { act: 'level-sand' },
      someFacts(5, {
        checks: [check('print', 'fails', 2)],
        overrides: [{ rule: 'film-prints', reason: 'Only the edge printed.', atMs: T0 + 3 * DAY }],
      }),
    ).reasons;
    expect(reasons.length).toBeGreaterThan(0);
    const weights = early.map(({ weight, override }) => (override ? 'set aside' : weight));
    expect(weights).toContain('wait');
    expect(weights).toContain('set aside');
    expect(weights.indexOf('wait')).toBeLessThan(weights.indexOf('set aside'));
  });

  test('what was set aside before it was found holds', () => {
    expect(verdictOn({ act: 'level-sand' }, someFacts(30, prints(24))).word).toBe('hold');
  });

  test('no date is promised while anything to come is held', () => {
    const facts = someFacts(30, { checks: [check('print', 'fails', 25)] });
    expect(verdictOn({ act: 'promise' }, facts).word).toBe('hold');
    expect(verdictOn({ act: 'promise' }, { ...facts, coming: [] }).word).toBe('ready');
    expect(verdictOn({ act: 'promise' }, someFacts(30, prints(26))).word).toBe('ready');
  });

  test('what is sanded off by measure holds where it goes through', () => {
    const facts = someFacts(30, { above: { what: 'colour', filmM: 20e-6 } });
    expect(verdictOn({ act: 'level-sand', removedM: 21e-6 }, facts).word).toBe('hold');
    expect(verdictOn({ act: 'level-sand', removedM: 20e-6 }, facts).word).toBe('ready');
  });

  test('a promise is asked about for the day that is chosen, whatever was promised before', () => {
    const facts = someFacts(1, { promisedMs: T0 + 40 * DAY });
    const saysFor = (days: number) =>
      verdictOn({ act: 'promise', forMs: T0 + days * DAY }, facts).reasons.map(({ says }) => says);
    expect(saysFor(61)).toEqual([]);
    expect(saysFor(59)).toEqual(['stillSoft']);
  });

  test('every rule has its table here', () => {
    expect(RULES.map(({ name }) => name).toSorted()).toEqual([...tabled.keys()].toSorted());
    for (const from of tabled.values()) expect(from.length).toBeGreaterThan(10);
  });

  // What a finisher is to be told of, each with the rule that tells it.
  test.each([
    ['lead, untested', 'lead', 'leadUntested'],
    ['lead, found', 'lead', 'leadFound'],
    ['a base that lifts', 'base-lifts', 'baseLifts'],
    ['a base unknown', 'base-unknown', 'baseUnknown'],
    ['silicone', 'silicone', 'silicone'],
    ['a film that prints', 'film-prints', 'filmPrints'],
    ['a film that gums', 'film-gums', 'filmGums'],
    ['the estimate', 'estimate', 'estimate'],
    ['too cold now', 'too-cold', 'tooCold'],
    ['too cold overnight', 'too-cold', 'coldNight'],
    ['too damp now', 'too-damp', 'tooDamp'],
    ['too damp overnight', 'damp-night', 'dampNight'],
    ['blush', 'blush', 'blushes'],
    ['a window closed', 'window-closed', 'windowClosed'],
    ['a film limit', 'film-limit', 'filmWouldBeOver'],
    ['a jar past its life', 'jar-past', 'potOver'],
    ['a jar too old, tried on glass', 'jar-past', 'shellacOld'],
    ['sanding through into colour', 'sands-through', 'throughColour'],
    ['sanding through into wood', 'sands-through', 'throughWood'],
    ['no melt-in', 'no-melt', 'noMelt'],
    ['a scuff between days', 'layers-show', 'scuffFirst'],
    ['the last two coats on one day', 'layers-show', 'oneDay'],
    ['witness lines', 'layers-show', 'witnessLines'],
    ['cold shock', 'cold-shock', 'coldShock'],
    ['isocyanate', 'isocyanate', 'isocyanate'],
    ['an aerosol', 'aerosol', 'aerosolSoft'],
  ])('%s is told by the rule %s', (_, rule, says) => {
    expect(told.get(rule)).toContain(says);
  });

  test('a hold outranks a wait', () => {
    const facts = someFacts(5, { oldFinish: oldFinish({ sanding: 'wet-only' }) });
    const { word, reasons } = verdictOn({ act: 'level-sand' }, facts);
    expect(word).toBe('hold');
    expect(reasons.map(({ rule }) => rule)).toEqual(['lead', 'estimate']);
  });
});
