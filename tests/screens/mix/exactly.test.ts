import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { beginWeighUp, pour, standingOf } from '../../../src/actions/mix/weigh-up';
import { exactly } from '../../../src/screens/mix/weigh/exactly';
import { aShop, done } from '../../actions/a-shop';
import { aBench, line, writes } from '../../actions/mix/a-bench';

const PLAN_G = { white: 29.11, clear: 0.323, ochre: 0.534, black: 0.0165 };

async function aSmallBatch(division: string, isTared: boolean) {
  const open = await aShop();
  const bench = await aBench(open);
  const lines = Object.entries(PLAN_G) as [keyof typeof PLAN_G, number][];
  const { recipe } = await writes(
    open,
    lines.map(([name, grams]) => line(bench[name], String(grams), 'g')),
  );
  const plan = lines.map(([name, grams]) => ({ ingredient: bench[name], massKg: grams / 1000 }));
  const begun = await beginWeighUp(open.needs, {
    recipe,
    plan,
    division: { text: division, unit: 'g' },
    isTared,
  });
  const { weighUp } = done(begun);
  const now = () => {
    const found = open.shop.value.weighUps.get(weighUp);
    if (!found) throw new Error('gone');
    return found;
  };
  return { open, now };
}

describe.each([{ isTared: false }, { isTared: true }])('a batch of 30 g, tared $isTared', ({ isTared }) => {
  test.each(['1', '0.1', '0.01'])(
    'on a scale of %s g: “exactly” goes through it, and pours nothing over',
    async (division) => {
      const { open, now } = await aSmallBatch(division, isTared);
      for (const _ of Object.keys(PLAN_G)) {
        const { next = -1 } = standingOf(now());
        done(await pour(open.needs, now(), next, exactly(now()).scaleG));
      }
      expect(standingOf(now())).toMatchObject({ next: undefined, factor: 1 });
      expect(now().pours.map(({ massKg }) => massKg > 0)).toEqual([true, true, true, true]);
      const totalG = Object.values(PLAN_G).reduce((sum, grams) => sum + grams, 0);
      expect(Math.abs(now().totalKg * 1000 - totalG)).toBeLessThanOrEqual(Number(division));
    },
  );

  test('says the amount itself where the scale cannot show it', async () => {
    const { open, now } = await aSmallBatch('1', isTared);
    expect(exactly(now())).toEqual({ scaleG: '29', said: '29', isSeen: true });
    done(await pour(open.needs, now(), 0, '29'));
    expect(exactly(now())).toEqual({ scaleG: isTared ? '0.323' : '29.323', said: '0.323', isSeen: false });
  });
});
