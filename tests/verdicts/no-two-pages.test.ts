import { signal } from '@preact/signals';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { followPlan } from '../../src/actions/plan/follow-plan';
import { ownerFacts } from '../../src/actions/plan/owner-facts';
import { followReminders } from '../../src/actions/reminders/follow-reminders';
import type { OpenShop } from '../../src/actions/shop';
import { factsOf } from '../../src/actions/verdicts/facts-of';
import { standingsOf } from '../../src/actions/verdicts/follow-standings';
import type { Piece } from '../../src/logbook/fold/piece/pieces';
import { rowStanding } from '../../src/parts/time/row-standing';
import { momentSign } from '../../src/parts/verdict/moment-sign';
import { standingSign } from '../../src/parts/verdict/sign';
import { planEvents } from '../../src/reminders/calendar/plan-events';
import { reminderText } from '../../src/reminders/say';
import { rowWords } from '../../src/screens/bench/piece-row';
import { boardStates } from '../../src/screens/board/board-state';
import { prefilled } from '../../src/screens/lay/coat-draft';
import { verdictsOnCoat } from '../../src/screens/lay/judged-coat';
import { inWorkWords } from '../../src/screens/piece/record/from-facts';
import { stageNext, verdictOnSanding } from '../../src/screens/piece/sanding/judged-sanding';
import { usualRemoval } from '../../src/screens/piece/sanding/usual-removal';
import { promiseSign } from '../../src/screens/plan/promise/promise-sign';
import { firstJudged } from '../../src/screens/plan/steps/step-verdict';
import { type Act, AWAITS } from '../../src/verdicts/act';
import { SANDING_ACTS } from '../../src/verdicts/sanding';
import { verdictOn } from '../../src/verdicts/verdict';
import { BENCH_WORDS } from '../../src/words/bench';
import { momentWords } from '../../src/words/piece/moments';
import { OWNER_DRAFTS } from '../../src/words/plan/owner';
import { CALENDAR_WORDS } from '../../src/words/plan/reminders';
import { VERDICT_WORDS } from '../../src/words/verdicts/words';
import { PIECE } from '../logbook/entries';
import { nowOf, outlookOf, type Said, shopOf, shops } from './random-shops';

const NOBODY = { pieces: [PIECE], jar: null, zone: null, how: null, dryUm: null, passes: null, wetUm: null };
const NAMES = { piece: () => 'Box', step: () => 'Coat' };
const CALLS_TO: Readonly<Record<string, Act>> = {
  'next-coat': 'coat',
  scuff: 'scuff',
  'level-sand': 'level-sand',
  'rub-out': 'rub-out',
};

/** The shop as the pages have it. */
function openedOn(said: Said) {
  const shop = shopOf(said);
  const piece = shop.pieces.get(PIECE) as Piece;
  const outlooks = new Map([[PIECE, outlookOf(said, piece)]]);
  const nowMs = nowOf(said);
  const standings = standingsOf(shop, outlooks, nowMs);
  const open = {
    which: 'own',
    isWhole: signal(false),
    shop: signal(shop),
    outlooks: signal(outlooks),
    settled: signal({ shop, outlooks }),
    standings: signal(standings),
    cards: signal(new Map()),
    nowMs: signal(nowMs),
    needs: { zone: () => 'Europe/Berlin', now: () => nowMs },
  } as unknown as OpenShop;
  return { open, shop, piece, outlooks, nowMs, standings, standing: standings.get(PIECE) };
}
type Opened = ReturnType<typeof openedOn>;

/** What a page says of an act: the first of the four words in it; a span of time is a wait. */
const wordIn = (text: string | undefined): string | undefined =>
  Object.values(VERDICT_WORDS).find((word) => text?.includes(word));

/** What each page says of each act, by the page's own model: the text on it. */
function saidOfActs({ open, shop, piece, outlooks, nowMs, standings, standing }: Opened) {
  const facts = factsOf({ shop, piece, outlook: outlooks.get(PIECE), nowMs });
  const next = standing?.verdict?.act ?? 'hand-over';
  const row = rowWords(rowStanding(piece, standing, outlooks.get(PIECE)), nowMs)[0];
  const [coat] = verdictsOnCoat(open, prefilled(shop, NOBODY, 'metric'));
  const sand = (stage: 'scuff' | 'level' | 'rub-out') =>
    verdictOnSanding(open, { standId: PIECE, stage, removed: usualRemoval(stage, 'um') });
  const { bench, plan } = followPlan(open).planned.value;
  const steps = plan.ok ? plan.value.steps.filter(({ pieceId }) => pieceId === PIECE) : [];
  const step = bench.pieces.find(({ id }) => id === PIECE)?.isLeftOut ? undefined : firstJudged(open, steps);
  const { due, missed } = followReminders(open).value;
  return [
    ['bench', next, row],
    ['headline', next, standingSign(standing, nowMs).word],
    ['board', next, boardStates(shop, standings, nowMs)[0]?.sign.word],
    ['record', next, inWorkWords(standing, nowMs)],
    ['lay', coat?.verdict?.act ?? 'coat', coat?.verdict && VERDICT_WORDS[coat.verdict.word]],
    ...(['scuff', 'level', 'rub-out'] as const).map(
      (stage) => ['sand', SANDING_ACTS[stage], VERDICT_WORDS[sand(stage)?.word ?? 'wait']] as const,
    ),
    ...facts.moments.flatMap((moment) => {
      const act = (['coat', 'level-sand', 'rub-out'] as const).find((one) => AWAITS[one] === moment.name);
      const { word } = momentSign(moment, facts);
      return act && word !== 'Done' ? [['moments', act, word] as const] : [];
    }),
    ...(step?.verdict ? [['plan', step.verdict.act, VERDICT_WORDS[step.verdict.word]] as const] : []),
    ...[...due, ...missed].flatMap((one) => {
      const act = one.word && CALLS_TO[one.kind];
      return act ? [['reminder', act, reminderText(one, undefined).text.split('.')[0]] as const] : [];
    }),
  ] as readonly (readonly [page: string, act: Act, text: string | undefined])[];
}

const isWorking = (text: string | undefined): boolean => text?.includes(BENCH_WORDS.computing) === true;

const ANY_TIME: [number, number, number] = [1, 2, 3];
/** An old paint that lacquer lifts, nothing laid yet, and the one jar of the shop waterborne: the bench held what the coat's page let be. */
const NOTHING_LAID: Said = {
  base: 'old-redissolves',
  finish: 'waterborne',
  done: [
    [
      0,
      {
        kind: 'spot-tested',
        piece: PIECE,
        solvent: 'lacquer-thinner',
        dwell: { text: '2', unit: 'min' },
        reading: 'wrinkles',
      },
    ],
  ],
  isPlanned: false,
  isOwnWait: false,
  outlook: {
    moments: { touch: ANY_TIME, recoat: ANY_TIME, level: ANY_TIME, rubOut: ANY_TIME, settled: ANY_TIME },
    windowEnd: null,
  },
  nowHour: 801,
};

test('no two pages disagree on an act', () => {
  const pages = new Map<string, number>();
  fc.assert(
    fc.property(shops, (said) => {
      const words = new Map<Act, string>();
      for (const [page, act, text] of saidOfActs(openedOn(said))) {
        if (isWorking(text)) continue; // while nothing is worked out the pages that lead say so, and the forms wait
        const word = wordIn(text) ?? '';
        expect(word, `${page} on ${act}: ${text}`).not.toBe('');
        expect(word, `${page} on ${act}: ${text}`).toBe(words.get(act) ?? word);
        words.set(act, word);
        pages.set(page, (pages.get(page) ?? 0) + 1);
      }
    }),
    { numRuns: 500, examples: [[NOTHING_LAID]] },
  );
  // Every page has spoken, and spoken often.
  for (const page of ['bench', 'headline', 'board', 'record', 'lay', 'sand', 'moments', 'plan'])
    expect(pages.get(page), page).toBeGreaterThan(100);
  expect(pages.get('reminder')).toBeGreaterThan(0);
});

test('the Sand page offers the stage that the bench says comes next', () => {
  fc.assert(
    fc.property(shops, (said) => {
      const { standing } = openedOn(said);
      const act = standing?.verdict?.act;
      if (act === 'level-sand' || act === 'rub-out') expect(SANDING_ACTS[stageNext(standing)]).toBe(act);
    }),
    { numRuns: 200 },
  );
});

// What was found, told by the entries alone: nothing here asks the judge.
test('no page offers what a check or a test has found against', () => {
  fc.assert(
    fc.property(shops, (said) => {
      const opened = openedOn(said);
      const { shop, piece } = opened;
      const lastMs = piece.coats.at(-1)?.atMs ?? 0;
      const tries = piece.checks.filter(
        ({ test, atMs }) => atMs >= lastMs && (test === 'print' || test === 'gum'),
      );
      const last = tries.at(-1);
      const isSetAside = (shop.overrides.get(PIECE) ?? []).some(
        ({ rule, atMs }) => rule.startsWith('film-') && atMs >= (last?.atMs ?? 0),
      );
      if (last?.result !== 'fails' || isSetAside) return;
      const facts = factsOf({ ...opened, outlook: opened.outlooks.get(PIECE) });
      const settled = facts.moments.find(({ name }) => name === 'settled');
      if (settled) {
        expect(momentSign(settled, facts).word).toBe(VERDICT_WORDS.hold);
        expect(momentWords(settled, opened.nowMs)).not.toMatch(/fully/i);
      }
      for (const [page, act, text] of saidOfActs(opened))
        if ((act === 'level-sand' || act === 'rub-out') && !isWorking(text))
          expect(wordIn(text), page).toBe(VERDICT_WORDS.hold);
    }),
    { numRuns: 500 },
  );
});

/** Whether each page that speaks of a date holds it. */
function heldOn({ open, shop, piece, outlooks, nowMs }: Opened): Readonly<Record<string, boolean>> {
  const facts = factsOf({ shop, piece, outlook: outlooks.get(PIECE), nowMs });
  const { bench, plan } = followPlan(open).planned.value;
  const found = plan.ok ? plan.value.pieces.find(({ pieceId }) => pieceId === PIECE) : undefined;
  if (!plan.ok || !found || plan.value.steps.every(({ isDone }) => isDone)) return {};
  const owner = ownerFacts(open, PIECE, NAMES, () => 'held');
  const calendar = planEvents(plan.value, bench, { piece: () => 'Box', zone: 'Europe/Berlin' });
  const works = calendar.filter(({ summary }) => summary.endsWith(': Box'));
  const drafts = (['accepted', 'progress', 'slip', 'ready'] as const).map((kind) => [
    kind,
    owner !== undefined && /cannot promise|no date holds/.test(OWNER_DRAFTS[kind](owner)),
  ]);
  return {
    promise: verdictOn({ act: 'promise' }, facts).word === 'hold',
    plan: promiseSign(found, false)?.word.startsWith(VERDICT_WORDS.hold) === true,
    planPage: found.isHeld,
    ...Object.fromEntries(drafts),
    ...(works.length > 0 && {
      calendar: works.every(({ description }) => description.startsWith(CALENDAR_WORDS.held)),
    }),
  };
}

test('no promise stands beside a hold that was not set aside', () => {
  let told = 0;
  fc.assert(
    fc.property(shops, (said) => {
      const opened = openedOn(said);
      const held = heldOn(opened);
      const answers = Object.values(held);
      told += answers.length > 0 ? 1 : 0;
      expect(new Set(answers).size, JSON.stringify(held)).toBeLessThan(2);
      const { shop, piece, outlooks, nowMs } = opened;
      const { oldFinish, overrides } = factsOf({ shop, piece, outlook: outlooks.get(PIECE), nowMs });
      const isSetAside = overrides.some(
        ({ rule, atMs }) => rule === 'lead' && atMs >= (oldFinish.leadMs ?? 0),
      );
      if (oldFinish.sanding === 'wet-only' && !isSetAside && answers.length > 0)
        expect(answers[0]).toBe(true);
    }),
    { numRuns: 500 },
  );
  expect(told).toBeGreaterThan(100);
});
