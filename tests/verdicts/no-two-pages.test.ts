import fc from 'fast-check';
import { expect, test } from 'vitest';
import { benchNow } from '../../src/actions/plan/bench';
import { factsOf } from '../../src/actions/verdicts/facts-of';
import { standingsOf } from '../../src/actions/verdicts/follow-standings';
import type { Piece } from '../../src/logbook/fold/pieces';
import { rowStanding } from '../../src/parts/time/row-standing';
import { momentSign } from '../../src/parts/verdict/moment-sign';
import { signOf, standingSign } from '../../src/parts/verdict/sign';
import { rowWords } from '../../src/screens/bench/piece-row';
import { boardStates } from '../../src/screens/board/board-state';
import { type Act, AWAITS } from '../../src/verdicts/act';
import { verdictOn } from '../../src/verdicts/verdict';
import { BENCH_WORDS } from '../../src/words/bench';
import { VERDICT_WORDS } from '../../src/words/verdicts/words';
import { PIECE } from '../logbook/entries';
import { nowOf, outlookOf, type Said, shopOf, shops } from './random-shops';

/** What each page says of the piece, by the page's own model. */
function pagesOf(said: Said) {
  const shop = shopOf(said);
  const piece = shop.pieces.get(PIECE) as Piece;
  const outlooks = new Map([[PIECE, outlookOf(said, piece)]]);
  const nowMs = nowOf(said);
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
