import { fold } from '../../logbook/fold/fold';
import { succeed } from '../../result';
import { andThen } from '../../science/mixing/failure';
import type { Batch } from '../../science/mixing/ingredient';
import { weighOrder } from '../../science/mixing/weigh/weigh-order';
import { DEMO_JARS } from '../../words/demo';
import { JAR_WORDS } from '../../words/mix/jar';
import { mixedProduct } from '../jar/mixed-product';
import { batchOfLines, typedLines } from '../recipe/batch';
import { mixIngredients } from '../recipe/ingredients';
import type { Pen } from './pen';
import { grams, months, percent } from './said';

/** What the scale showed over or under the plan, g: base, ochre, umber, thinner. */
const MISSED_BY = [0.14, 0.01, 0, -0.04];

/** Weighs up a recipe on a scale that is tared in between, and fills a jar with what was poured; gives the jar's id. */
export function weighUpWhite(pen: Pen, recipe: string): string {
  const [weighUp, jar] = [pen.newId(), pen.newId()];
  const shop = fold(pen.entries);
  const written = shop.recipes.get(recipe);
  const lines = written ? typedLines(written) : [];
  const planned = andThen(batchOfLines(lines, shop), (batch) =>
    succeed(weighOrder(batch, mixIngredients(shop.ingredients))),
  );
  if (!planned.ok) throw new RangeError(planned.failure.kind);
  const plan = planned.value.map((part) => ({ ...part }));
  const poured: Batch = plan.map(({ ingredient, massKg }, i) => ({
    ingredient,
    massKg: Number((massKg * 1000 + (MISSED_BY[i] ?? 0)).toFixed(2)) / 1000,
  }));
  const begun = { weighUp, recipe, plan, division: grams('0.01'), isTared: true };
  pen.write({ kind: 'weigh-up-begun', ...begun }, pen.daysAgo(7, 8, 40));
  for (const [line, { massKg }] of poured.entries()) {
    const scale = grams((massKg * 1000).toFixed(2));
    pen.write({ kind: 'poured', weighUp, line, scale }, pen.daysAgo(7, 8, 42 + 2 * line));
  }
  const mixed = mixedProduct(poured, shop, JAR_WORDS.ownMix);
  if (!mixed.ok) throw new RangeError(mixed.failure.kind);
  const life = { span: months(12), as: 'shelf' as const };
  const said = { name: DEMO_JARS.white, life, keepBack: percent(10), weighUp, jar };
  pen.write({ kind: 'jar-filled', ...mixed.value, ...said }, pen.daysAgo(7, 9));
  return jar;
}
