import { signal } from '@preact/signals';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { followReminders } from '../../src/actions/plan/follow-reminders';
import type { OpenShop } from '../../src/actions/shop';
import { factsOf } from '../../src/actions/verdicts/facts-of';
import type { Jar } from '../../src/logbook/fold/jars';
import type { Piece } from '../../src/logbook/fold/pieces';
import { cautionsDue } from '../../src/shop/cautions/due';
import type { Act } from '../../src/verdicts/act';
import { verdictOn } from '../../src/verdicts/verdict';
import { JAR, PIECE } from '../logbook/entries';
import { nowOf, outlookOf, type Said, shopOf, shops } from './random-shops';

test('fire and isocyanate stand whatever was set aside or silenced', () => {
  fc.assert(
    fc.property(shops, (said) => {
      const shop = shopOf(said);
      const piece = shop.pieces.get(PIECE) as Piece;
      const nowMs = nowOf(said);
      const isIsocyanate = said.finish === 'urethane';
      const cautions = cautionsDue(shop, shop.jars.get(JAR) as Jar, 'spray', nowMs).map(({ id }) => id);
      expect(cautions).toEqual(expect.arrayContaining(['ignition', 'phone']));
      expect(cautions.includes('isocyanate')).toBe(isIsocyanate);
      const facts = factsOf({ shop, piece, outlook: outlookOf(said, piece), nowMs }, { jarId: JAR });
      for (const act of ['coat', 'flash-coat'] as const) {
        const { reasons } = verdictOn({ act, jarId: JAR }, facts);
        const found = reasons.find(({ rule }) => rule === 'isocyanate');
        expect(found !== undefined).toBe(isIsocyanate);
        if (found) expect(found).toMatchObject({ mayBeOverridden: false, override: undefined });
      }
    }),
    { numRuns: 500 },
  );
});

const CALLS_TO: Readonly<Record<string, Act>> = {
  'next-coat': 'coat',
  scuff: 'scuff',
  'level-sand': 'level-sand',
  'rub-out': 'rub-out',
};

/** The reminders as the app follows them, and the judge's word. */
function remindersOf(said: Said) {
  const shop = shopOf(said);
  const piece = shop.pieces.get(PIECE) as Piece;
  const outlook = outlookOf(said, piece);
  const outlooks = new Map([[PIECE, outlook]]);
  const nowMs = nowOf(said);
  const followed = followReminders({
    which: 'own',
    isWhole: signal(false),
    shop: signal(shop),
    settled: signal({ shop, outlooks }),
    cards: signal(new Map()),
    nowMs: signal(nowMs),
    needs: { zone: () => 'Europe/Berlin', now: () => nowMs },
  } as unknown as OpenShop);
  const wordOf = (act: Act): string => verdictOn({ act }, factsOf({ shop, piece, outlook, nowMs })).word;
  return { followed, wordOf };
}

test('no reminder calls to what the judge holds', () => {
  let called = 0;
  fc.assert(
    fc.property(shops, (said) => {
      const { followed, wordOf } = remindersOf(said);
      const { due, missed, upcoming } = followed.value;
      for (const { kind } of [...due, ...missed, ...upcoming]) {
        const act = CALLS_TO[kind];
        if (!act) continue;
        called++;
        expect(wordOf(act), kind).not.toBe('hold');
      }
    }),
    { numRuns: 400 },
  );
  expect(called).toBeGreaterThan(0);
});
