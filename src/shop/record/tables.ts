import type { Shop } from '../../logbook/fold/fold';
import type { Coat } from '../../logbook/fold/pieces';
import type { Quantity } from '../../logbook/typed';
import { TABLE_HEADS } from '../../words/frame/tables';
import { labOf } from '../colour/lab-of';

/** The tables that go out as CSV. */
export type TableName = keyof typeof TABLE_HEADS;
type Row = readonly string[];

const typed = (quantity: Quantity | undefined): Row =>
  quantity ? [quantity.typed.text, quantity.typed.unit] : ['', ''];
const two = (value: number): string => value.toFixed(2);

/** One row a coat, struck ones left out: when, on what, from which jar, how, and how much, as typed. */
function coats({ pieces, jars, airReadings }: Shop): Row[] {
  const air = new Map(airReadings.map((reading) => [reading.id, reading]));
  return [...pieces.values()].flatMap(({ name, coats }) =>
    coats.map((coat, n) => {
      const read = coat.air === undefined ? undefined : air.get(coat.air);
      const jar = jars.get(coat.jar)?.name ?? '';
      const weather = [...typed(read?.temperature), ...typed(read?.humidity)];
      return [coat.at, coat.zone, name, String(n + 1), jar, coat.how, ...film(coat), ...weather];
    }),
  );
}

function film({ film }: Coat): Row {
  if (film.by === 'passes') return [film.by, ...typed(film.perPass), String(film.passes)];
  return [film.by, ...typed(film.by === 'wet' ? film.wetFilm : film.dryFilm), ''];
}

/** One row a line of a recipe, every version. */
const recipes = ({ recipes, ingredients }: Shop): Row[] =>
  [...recipes.values()].flatMap((recipe) =>
    recipe.lines.map(({ ingredient, amount, by = '', of = '' }) => [
      new Date(recipe.writtenMs).toISOString(),
      recipe.name,
      String(recipe.version),
      ingredients.get(ingredient)?.name ?? '',
      ...typed(amount),
      by,
      of,
      recipe.note ?? '',
    ]),
  );

/** One row a colour reading, as L*, a*, b* under its own light. */
const readings = ({ matches }: Shop): Row[] =>
  [...matches.values()].flatMap(({ name, trials, readings }) =>
    [
      ...readings.map((set) => ({ set, of: set.of.as as string })),
      ...trials.flatMap((trial) => trial.readings.map((set) => ({ set, of: `trial ${trial.number}` }))),
    ].flatMap(({ set, of }) =>
      set.readings.map((reading) => {
        const lab = labOf(reading, set.white);
        const value = lab ? [two(lab.L), two(lab.a), two(lab.b)] : ['', '', ''];
        return [set.at, set.zone, name, of, reading.as, set.white, ...value, set.note ?? ''];
      }),
    ),
  );

const TABLES = { coats, recipes, readings } as const;

/** A table of the shop, its heads first. */
export const tableOf = (name: TableName, shop: Shop): readonly Row[] => [
  TABLE_HEADS[name],
  ...TABLES[name](shop),
];
