import fc from 'fast-check';
import { expect, test } from 'vitest';
import { factsOf } from '../../src/actions/verdicts/facts-of';
import type { Jar } from '../../src/logbook/fold/mix/jars';
import type { Piece } from '../../src/logbook/fold/piece/pieces';
import { cautionsDue } from '../../src/shop/cautions/cautions-due';
import { verdictOn } from '../../src/verdicts/verdict';
import { JAR, PIECE } from '../logbook/entries';
import { nowOf, outlookOf, shopOf, shops } from './random-shops';

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
