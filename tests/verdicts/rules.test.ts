import { describe, expect, test } from 'vitest';
import type { Act } from '../../src/verdicts/act';
import type { Facts } from '../../src/verdicts/facts';
import { holdsOf, verdictOn } from '../../src/verdicts/verdict';
import { DAY, oldFinish, reasonBy, someFacts, T0 } from './some-facts';

interface Row {
  readonly name: string;
  readonly act: Act;
  readonly days?: number;
  readonly facts?: Partial<Facts>;
  /** What the rule says, and how much that weighs; undefined where it has nothing to say. */
  readonly says?: string;
  readonly weight?: string;
}

const table = (rule: string, rows: readonly Row[]) =>
  describe(rule, () => {
    test.each(rows)('$name', ({ act, days = 1, facts, says, weight = 'hold' }) => {
      const reason = reasonBy(rule, act, someFacts(days, facts));
      expect(reason?.says).toBe(says);
      if (says !== undefined) expect(reason?.weight).toBe(weight);
    });
  });

const check = (test: 'print' | 'gum', result: 'passes' | 'fails', day: number) => ({
  test,
  result,
  atMs: T0 + day * DAY,
});

// Common practice, no source: what a check finds outranks the estimate until a later check passes.
table('film-prints', [
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

table('film-gums', [
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

// Common practice, no source; "about 1980" is the practice of the trade.
table('lead', [
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
  { name: 'a coat disturbs nothing', act: 'coat', facts: { oldFinish: oldFinish({ sanding: 'wet-only' }) } },
  { name: 'none found, nothing to say', act: 'scuff', facts: { oldFinish: oldFinish({ sanding: 'any' }) } },
]);

// Common practice, no source.
table('base-lifts', [
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
      jar: { name: 'Cut', finish: 'shellac' },
    },
  },
  {
    name: 'waterborne does not',
    act: 'coat',
    facts: {
      base: 'old-closed',
      oldFinish: oldFinish({ finish: 'oil-varnish' }),
      jar: { name: 'Clear', finish: 'waterborne' },
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
table('window-closed', [
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
table('film-limit', [
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

// Level-sand 10-14-20 days after the last coat.
table('estimate', [
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

  test('what was set aside before it was found holds', () => {
    expect(verdictOn({ act: 'level-sand' }, someFacts(30, prints(24))).word).toBe('hold');
  });

  test('no date is promised while anything to come is held', () => {
    const facts = someFacts(30, { checks: [check('print', 'fails', 25)] });
    expect(verdictOn({ act: 'promise' }, facts).word).toBe('hold');
    expect(verdictOn({ act: 'promise' }, { ...facts, coming: [] }).word).toBe('ready');
    expect(verdictOn({ act: 'promise' }, someFacts(30, prints(26))).word).toBe('ready');
  });

  test('a hold outranks a wait', () => {
    const facts = someFacts(5, { oldFinish: oldFinish({ sanding: 'wet-only' }) });
    const { word, reasons } = verdictOn({ act: 'level-sand' }, facts);
    expect(word).toBe('hold');
    expect(reasons.map(({ rule }) => rule)).toEqual(['lead', 'estimate']);
  });
});
