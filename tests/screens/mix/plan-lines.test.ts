import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { describeIngredient } from '../../../src/actions/mix/ingredient';
import { scaled } from '../../../src/science/mixing/weigh/scaling';
import { keptLetDown, planLines } from '../../../src/screens/mix/weigh/plan-lines';
import { batchOfLines } from '../../../src/shop/recipe/batch';
import { aShop, done } from '../../actions/a-shop';
import { aBench, agedWhite, line } from '../../actions/mix/a-bench';

const G = 1e-3;

describe('the plan of a weigh-up', () => {
  test('pours white, tinters from weak to strong, then thinner', async () => {
    const open = await aShop();
    const bench = await aBench(open);
    const lines = planLines(done(batchOfLines(agedWhite(bench), open.shop.value)), 0.01 * G, open.shop.value);
    expect(lines.map(({ ingredient }) => ingredient)).toEqual([
      bench.white,
      bench.ochre,
      bench.umber,
      bench.black,
      bench.thinner,
    ]);
  });

  test('scenario E: 2.75 drops of black are 3, 9 % over; its 0.094 g is coarse on a 0.01 g scale, and a let-down is offered', async () => {
    const open = await aShop();
    const bench = await aBench(open);
    const batch = scaled(done(batchOfLines(agedWhite(bench), open.shop.value)), 2.75);
    const black = planLines(batch, 0.01 * G, open.shop.value).find(
      ({ ingredient }) => ingredient === bench.black,
    );
    expect(black?.drops).toEqual({ drops: 3, error: expect.closeTo(0.0909, 4) }); // expected: +9 %
    expect(black?.verdict).toBe('coarse');
    expect(black?.offer).toMatchObject({ strength: 0.1, letDownKg: expect.closeTo(0.935 * G, 9) });
  });

  test.each([
    // the trade’s worked scenario A: 0.135, 0.105, 0.03, 0.003 g on a 0.01 g scale: 3.7 %, 4.8 %, 17 %, not weighable
    { grams: '0.135', verdict: 'fine', percent: 3.7 },
    { grams: '0.105', verdict: 'fine', percent: 4.8 },
    { grams: '0.03', verdict: 'coarse', percent: 16.7 },
    { grams: '0.003', verdict: 'not-weighable', percent: 166.7 },
  ])('scenario A: $grams g on a 0.01 g scale is $verdict', async ({ grams, verdict, percent }) => {
    const open = await aShop();
    const bench = await aBench(open);
    const batch = done(
      batchOfLines([line(bench.clear, '30', 'g'), line(bench.black, grams, 'g')], open.shop.value),
    );
    const black = planLines(batch, 0.01 * G, open.shop.value)[1];
    expect(black?.verdict).toBe(verdict);
    expect((black?.uncertainty ?? 0) * 100).toBeCloseTo(percent, 1);
    expect(black?.offer === undefined).toBe(verdict === 'fine');
  });

  test.each([
    // 0.0165 g and 0.323 g of clear: the 10 % let-down of 0.165 g is ±30 % on 0.1 g; that of 1 %, 1.65 g, is ±3 % and brings 1.6335 g
    { divisionG: 0.1, wantedG: 1.6335 },
    { divisionG: 1, wantedG: undefined }, // and on 1 g it is ±30 %
  ])(
    'says of a let-down on $divisionG g what clear it wants, and what there is',
    async ({ divisionG, wantedG }) => {
      const open = await aShop();
      const bench = await aBench(open);
      const parts = [
        line(bench.white, '29', 'g'),
        line(bench.clear, '0.323', 'g'),
        line(bench.black, '0.0165', 'g'),
      ];
      const black = planLines(done(batchOfLines(parts, open.shop.value)), divisionG * G, open.shop.value).at(
        -1,
      );
      expect(black?.clearShort?.thereKg).toBeCloseTo(0.323 * G, 9);
      if (wantedG === undefined) expect(black?.clearShort?.wantedKg).toBeUndefined();
      else expect(black?.clearShort?.wantedKg).toBeCloseTo(wantedG * G, 9);
    },
  );

  test('a let-down that the shop has already is found again', async () => {
    const open = await aShop();
    const { black, clear } = await aBench(open);
    const madeOf = [
      { ingredient: black, massFraction: 0.1 },
      { ingredient: clear, massFraction: 0.9 },
    ];
    const made = done(await describeIngredient(open.needs, { name: 'Black, tenth', is: 'let-down', madeOf }));
    expect(keptLetDown(black, 0.1, open.shop.value)?.id).toBe(made.ingredient);
    expect(keptLetDown(black, 0.01, open.shop.value)).toBeUndefined();
  });
});
