import fc from 'fast-check';
import { expect, test } from 'vitest';
import { benchNow } from '../../src/actions/plan/bench';
import { factsOf } from '../../src/actions/verdicts/facts-of';
import { standingsOf } from '../../src/actions/verdicts/follow-standings';
import type { Estimate } from '../../src/estimator/estimate';
import type { Entry, EntryBody } from '../../src/logbook/entry';
import { fold, type Shop } from '../../src/logbook/fold/fold';
import type { Piece } from '../../src/logbook/fold/pieces';
import { FINISHES } from '../../src/logbook/kinds/jar';
import { rowStanding } from '../../src/parts/time/row-standing';
import { momentSign } from '../../src/parts/verdict/moment-sign';
import { signOf, standingSign } from '../../src/parts/verdict/sign';
import { SPOT_READINGS, SPOT_SOLVENTS } from '../../src/science/old-finish/spot-tests';
import { rowWords } from '../../src/screens/bench/piece-row';
import { boardStates } from '../../src/screens/board/board-state';
import { type Act, AWAITS } from '../../src/verdicts/act';
import { verdictOn } from '../../src/verdicts/verdict';
import { BENCH_WORDS } from '../../src/words/bench';
import { VERDICT_WORDS } from '../../src/words/verdicts/words';
import { DAY_1_MS, entry, fillJar, JAR, layCoat, PIECE, startPiece } from '../logbook/entries';
import { anOutlook } from '../parts/an-outlook';

const HOUR_MS = 3_600_000;
const REASON = 'Only the hidden edge, the rest is hard.';

const of = <T>(...values: readonly T[]) => fc.constantFrom(...values);
const HOLDS = ['lead', 'base-lifts', 'film-prints', 'film-gums', 'window-closed', 'no-melt'];

/** Anything that may be said of a piece, of its air or of its plan. */
const happening: fc.Arbitrary<EntryBody> = fc.oneof(
  { weight: 4, arbitrary: of(layCoat(), { ...layCoat(), how: 'flash' } as EntryBody) },
  fc.record({
    kind: fc.constant('sanded' as const),
    piece: fc.constant(PIECE),
    stage: of('scuff' as const, 'level' as const, 'rub-out' as const),
    removed: of({ text: '3', unit: 'um' as const }, { text: '40', unit: 'um' as const }),
  }),
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constant('checked' as const),
      piece: fc.constant(PIECE),
      test: of('print' as const, 'gum' as const, 'smell' as const, 'blush' as const),
      result: of('passes' as const, 'fails' as const),
    }),
  },
  fc.record({
    kind: fc.constant('spot-tested' as const),
    piece: fc.constant(PIECE),
    solvent: fc.constantFrom(...SPOT_SOLVENTS),
    dwell: fc.constant({ text: '2', unit: 'min' as const }),
    reading: fc.constantFrom(...SPOT_READINGS),
  }),
  fc.record({
    kind: fc.constant('old-finish-seen' as const),
    piece: fc.constant(PIECE),
    opaque: fc.boolean(),
    signs: fc.subarray(['polish' as const, 'crazed' as const]),
  }),
  fc.record({
    kind: fc.constant('lead-tested' as const),
    piece: fc.constant(PIECE),
    finding: of('none-found' as const, 'found' as const, 'treat-as-lead' as const),
  }),
  fc.record({
    kind: fc.constant('hold-overridden' as const),
    piece: fc.constant(PIECE),
    rule: fc.constantFrom(...HOLDS),
    act: of('level-sand', 'coat', 'promise'),
    reason: fc.constant(REASON),
  }),
  fc.record({
    kind: fc.constant('air-read' as const),
    temperature: of({ text: '9', unit: 'C' as const }, { text: '21', unit: 'C' as const }),
    humidity: of({ text: '45', unit: '%' as const }, { text: '85', unit: '%' as const }),
    movement: fc.constant('gentle' as const),
  }),
) as fc.Arbitrary<EntryBody>;

const hours = fc.tuple(
  fc.double({ min: 0.01, max: 900, noNaN: true }),
  fc.double({ min: 1, max: 3, noNaN: true }),
);
const band = hours.map(([first, by]) => [first, first * by, first * by * by] as const);
const outlook = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      moments: fc.record({ touch: band, recoat: band, level: band, rubOut: band, settled: band }),
      windowEnd: fc.option(band),
    }),
  },
  fc.constantFrom('computing' as const, 'failed' as const),
);

const shops = fc.record({
  base: of('bare-wood' as const, 'sealed' as const, 'old-redissolves' as const, 'old-closed' as const),
  finish: fc.constantFrom(...FINISHES),
  done: fc.array(fc.tuple(fc.integer({ min: 0, max: 800 }), happening), { maxLength: 9 }),
  isPlanned: fc.boolean(),
  outlook,
  nowHour: fc.integer({ min: 801, max: 1600 }),
});
type Said = typeof shops extends fc.Arbitrary<infer S> ? S : never;

const PLAN = {
  kind: 'piece-planned',
  piece: PIECE,
  job: 'full-refinish',
  coatsADay: 3,
  steps: [
    {
      kind: 'work',
      id: entry(900, startPiece()).id,
      task: 'coat',
      place: 'booth',
      minutes: 10,
      isCoat: true,
    },
    { kind: 'work', id: entry(901, startPiece()).id, task: 'level-sand', place: 'bench', minutes: 60 },
    { kind: 'work', id: entry(902, startPiece()).id, task: 'rub-out', place: 'bench', minutes: 60 },
  ],
} as unknown as EntryBody;

function shopOf({ base, finish, done, isPlanned }: Said): Shop {
  const jar = fillJar() as Extract<EntryBody, { kind: 'jar-filled' }>;
  const entries: Entry[] = [
    entry(1, { ...startPiece(), base } as EntryBody, DAY_1_MS),
    entry(2, { ...jar, jar: JAR, product: { ...jar.product, finish } } as EntryBody, DAY_1_MS),
    ...(isPlanned ? [entry(3, PLAN, DAY_1_MS)] : []),
    ...done.map(([hour, body], n) => entry(10 + n, body, DAY_1_MS + hour * HOUR_MS)),
  ];
  return fold(entries);
}

function outlookOf({ outlook: said }: Said, piece: Piece) {
  if (!piece.coats.some(({ how }) => how !== 'flash')) return { state: 'no-coats' } as const;
  if (said === 'computing') return { state: said } as const;
  if (said === 'failed') return { state: said, message: '' } as const;
  const ready = anOutlook(said.moments);
  const s = (hour: number): number => hour * 3600;
  const law = said.windowEnd && {
    finish: 'conversion',
    totalDryM: 60e-6,
    recoatUntil: {
      earliestS: s(said.windowEnd[0]),
      likelyS: s(said.windowEnd[1]),
      lateS: s(said.windowEnd[2]),
    },
  };
  const estimate = { ...ready.estimate, ...(law && { law }) } as Estimate;
  return { ...ready, estimate, startMs: (piece.coats.at(-1)?.atMs ?? DAY_1_MS) as number };
}

/** What each page says of the piece, by the page's own model. */
function pagesOf(said: Said) {
  const shop = shopOf(said);
  const piece = shop.pieces.get(PIECE) as Piece;
  const outlooks = new Map([[PIECE, outlookOf(said, piece)]]);
  const nowMs = DAY_1_MS + said.nowHour * HOUR_MS;
  const standings = standingsOf(shop, outlooks, nowMs);
  const standing = standings.get(PIECE);
  const facts = factsOf({ shop, piece, outlook: outlooks.get(PIECE), nowMs });
  const form = (act: Act) => signOf(verdictOn({ act, jarId: piece.coats.at(-1)?.jar }, facts), nowMs);
  return {
    piece,
    facts,
    standing,
    nowMs,
    row: rowWords(rowStanding(piece, standing, outlooks.get(PIECE)), nowMs)[0],
    headline: standingSign(standing, nowMs).word,
    board: boardStates(shop, standings, nowMs)[0]?.sign.word,
    form,
    moments: new Map(facts.moments.map((moment) => [moment.name, momentSign(moment, facts)])),
    plan: benchNow({ shop, outlooks, nowMs, zone: 'Europe/Berlin' }).pieces.find(({ id }) => id === PIECE),
  };
}

const ACTS = ['coat', 'level-sand', 'rub-out'] as const;

/** What a page says of an act: the first of its words. */
const wordIn = (text: string | undefined): string | undefined =>
  Object.values(VERDICT_WORDS).find((word) => text?.startsWith(word));

test('no two pages disagree on a piece', () => {
  fc.assert(
    fc.property(shops, (said) => {
      const { row, headline, board, standing, form, moments } = pagesOf(said);
      expect(board).toBe(headline);
      expect(wordIn(row)).toBe(wordIn(headline));
      const act = standing?.verdict?.act;
      if (act === undefined || row === BENCH_WORDS.computing) return;
      expect(wordIn(row)).toBe(wordIn(form(act).word));
      const moment = moments.get(AWAITS[act] ?? 'touch');
      if (act !== 'hand-over' && moment && moment.word !== 'Done') expect(wordIn(row)).toBe(moment.word);
      for (const one of ACTS) {
        const listed = moments.get(AWAITS[one] ?? 'touch')?.word;
        if (listed !== undefined && listed !== 'Done') expect(listed).toBe(wordIn(form(one).word));
      }
    }),
    { numRuns: 500 },
  );
});

// What was found, told by the entries alone: nothing here asks the judge.
test('no page offers what a check or a test has found against', () => {
  fc.assert(
    fc.property(shops, (said) => {
      const { piece, facts, row, board, form, moments } = pagesOf(said);
      const lastMs = piece.coats.at(-1)?.atMs ?? 0;
      const tries = piece.checks.filter(
        ({ test, atMs }) => atMs >= lastMs && (test === 'print' || test === 'gum'),
      );
      const last = tries.at(-1);
      const isSetAside = facts.overrides.some(
        ({ rule, atMs }) => rule.startsWith('film-') && atMs >= (last?.atMs ?? 0),
      );
      if (last?.result !== 'fails' || isSetAside) return;
      for (const name of ['level', 'rubOut'] as const)
        expect([undefined, 'Held', 'Done']).toContain(moments.get(name)?.word);
      for (const text of [row, board, form('level-sand').word, form('rub-out').word])
        expect(text).not.toMatch(/^(Ready|Perhaps).*(sand|rub)/);
    }),
    { numRuns: 500 },
  );
});

test('no promise stands beside a hold that was not set aside', () => {
  fc.assert(
    fc.property(shops, (said) => {
      const { facts, plan, form } = pagesOf(said);
      const { sanding, leadMs } = facts.oldFinish;
      const isLead = sanding === 'wet-only';
      const isSetAside = facts.overrides.some(({ rule, atMs }) => rule === 'lead' && atMs >= (leadMs ?? 0));
      if (isLead && !isSetAside) {
        expect(form('promise').word).toMatch(/^Held/);
        if (said.isPlanned) expect(plan?.isHeld).toBe(true);
      }
      if (said.isPlanned) expect(plan?.isHeld === true).toBe(/^Held/.test(form('promise').word));
    }),
    { numRuns: 500 },
  );
});
