import { useSignal } from '@preact/signals';
import { readTyped } from '../../../logbook/as-typed';
import type { Recipe } from '../../../logbook/fold/mix/recipes';
import { LIMITS } from '../../../logbook/limits';
import { UNITS } from '../../../logbook/unit';
import type { Draft } from '../../../parts/fields/typed-field';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { succeed } from '../../../result';
import { andThen } from '../../../science/mixing/failure';
import { type Batch, batchMassKg } from '../../../science/mixing/ingredient';
import { batchVolumeM3, scaledToMass, scaledToVolume } from '../../../science/mixing/weigh/scaling';
import { batchOfLines, typedLines } from '../../../shop/recipe/batch';
import { mixIngredients } from '../../../shop/recipe/ingredients';

export type SizeUnit = 'mL' | 'L' | 'fl-oz-us' | 'fl-oz-imperial' | 'g';
export const SIZE_UNITS: readonly SizeUnit[] = ['mL', 'g', 'fl-oz-us', 'fl-oz-imperial'];

type Ingredients = ReturnType<typeof mixIngredients>;

/** What is wrong with the size of a batch; undefined when it can be mixed. */
export function sizeProblem({ text, unit }: Draft<SizeUnit>): string | undefined {
  const read =
    unit === 'g' ? readTyped({ text, unit }, LIMITS.mass) : readTyped({ text, unit }, LIMITS.volume);
  return read.ok ? undefined : read.failure;
}

const round = (value: number): string => String(Number(value.toPrecision(4)));

/** The size of a batch as it is shown, in four figures; undefined where its volume is not known. */
function sizeText(batch: Batch, unit: SizeUnit, ingredients: Ingredients): string | undefined {
  if (unit === 'g') return round(batchMassKg(batch) * 1000);
  const volume = batchVolumeM3(batch, ingredients);
  return volume.ok ? round(UNITS[unit].fromSi(volume.value)) : undefined;
}

/** A batch brought to a size in grams or by volume. What is shown of its own size is rounded, and leaves it as it is written. */
export function sized(batch: Batch, { text, unit }: Draft<SizeUnit>, ingredients: Ingredients) {
  if (text === sizeText(batch, unit, ingredients)) return succeed(batch);
  const limit = unit === 'g' ? LIMITS.mass : LIMITS.volume;
  const size = readTyped({ text, unit }, limit);
  if (!size.ok) return succeed(batch);
  return unit === 'g'
    ? succeed(scaledToMass(batch, size.value))
    : scaledToVolume(batch, size.value, ingredients);
}

/** The plan of a recipe at a size: its batch, or why it cannot be worked out. */
export function useSizedBatch(recipe: Recipe, wantedMl: string | null) {
  const { shop } = useShop();
  const units = useUnits();
  const ingredients = mixIngredients(shop.value.ingredients);
  const written = batchOfLines(typedLines(recipe), shop.value);
  const size = useSignal<Draft<SizeUnit>>(startSize(wantedMl, units === 'us', written, ingredients));
  const batch = andThen(written, (own) => sized(own, size.value, ingredients));
  const factor = written.ok && batch.ok ? batchMassKg(batch.value) / batchMassKg(written.value) : 1;
  const mixed = andThen(batch, (own) => batchVolumeM3(own, ingredients));
  const isSized = sizeProblem(size.value) === undefined;
  return { size, batch, factor, mixedM3: isSized && mixed.ok ? mixed.value : undefined };
}

type Worked<Value> = { readonly ok: true; readonly value: Value } | { readonly ok: false };

function startSize(
  wantedMl: string | null,
  isUs: boolean,
  written: Worked<Batch>,
  ingredients: Ingredients,
): Draft<SizeUnit> {
  const unit = isUs ? 'fl-oz-us' : 'mL';
  if (wantedMl !== null) return { text: round(UNITS[unit].fromSi(Number(wantedMl) * 1e-6)), unit };
  if (!written.ok) return { text: '', unit: 'g' };
  const text = sizeText(written.value, unit, ingredients);
  return text === undefined ? { text: round(batchMassKg(written.value) * 1000), unit: 'g' } : { text, unit };
}
