import { type Result, succeed } from '../../../result';
import { quantity } from '../amount';
import { andThen, find, type MixFailure, sumOver } from '../failure';
import { type Batch, batchMassKg, type Ingredients } from '../ingredient';

/** A batch times a factor. */
export const scaled = (batch: Batch, factor: number): Batch =>
  batch.map(({ ingredient, massKg }) => ({ ingredient, massKg: massKg * factor }));

/** A batch brought to a mass. */
export const scaledToMass = (batch: Batch, massKg: number): Batch =>
  scaled(batch, massKg / batchMassKg(batch));

/** Volume of a batch, m3. Left out: the small change of volume on mixing. */
export const batchVolumeM3 = (batch: Batch, ingredients: Ingredients): Result<number, MixFailure> =>
  sumOver(batch, ({ ingredient, massKg }) =>
    andThen(find(ingredients, ingredient), (found) => quantity(massKg, 'volume', found)),
  );

/** A batch brought to a volume. */
export const scaledToVolume = (
  batch: Batch,
  volumeM3: number,
  ingredients: Ingredients,
): Result<Batch, MixFailure> =>
  andThen(batchVolumeM3(batch, ingredients), (own) => succeed(scaled(batch, volumeM3 / own)));
