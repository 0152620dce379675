import type { Shop } from '../../logbook/fold/fold';
import type { Match, ReadingSet } from '../../logbook/fold/piece/matches';
import type { Coat } from '../../logbook/fold/piece/pieces';
import { zonesOf } from '../../logbook/fold/piece/zones';
import { zoneOffset } from '../../logbook/time/zone-offset';
import type { Quantity } from '../../logbook/typed';
import { toInstantMs, toMinute } from '../../planner/local-day';
import { metresToUm } from '../../units';
import { TABLE_HEADS } from '../../words/frame/tables';
import { FINISH_NAMES } from '../../words/mix/jar';
import { labOf } from '../colour/lab-of';
import { jarFilmAt } from '../jar/film-at';
import { dryFilmM } from '../stack/stack-events';

/** The tables that go out as CSV. */
export type TableName = keyof typeof TABLE_HEADS;
type Row = readonly string[];

const typed = (quantity: Quantity | undefined): Row =>
  quantity ? [quantity.typed.text, quantity.typed.unit] : ['', ''];
const two = (value: number): string => value.toFixed(2);

/** The instant in UTC, and what the calendar and the clock on the wall showed: each in a form that spreadsheets take for a time. */
function when({
  at,
  atMs,
  zone,
}: {
  readonly at: string;
  readonly atMs: number;
  readonly zone: string;
}): Row {
  const aheadMs = toInstantMs(zoneOffset(zone)(toMinute(atMs)));
  const wall = new Date(atMs + aheadMs).toISOString();
  return [at, wall.slice(0, 10), wall.slice(11, 19), zone];
}

/** One row a coat, struck ones left out: when, on what, from which jar, how, and how much, as typed; and the dry film that comes of it. */
function coats(shop: Shop): Row[] {
  const air = new Map(shop.airReadings.map((reading) => [reading.id, reading]));
  return [...shop.pieces.values()].flatMap(({ id, name, coats }) => {
    const places = zonesOf(id, shop);
    return coats.map((coat, n) => {
      const read = coat.air === undefined ? undefined : air.get(coat.air);
      const weather = [...typed(read?.temperature), ...typed(read?.humidity)];
      return [
        coat.id,
        ...when(coat),
        name,
        places.find(({ zoneId }) => zoneId === coat.zoneId)?.name ?? '',
        String(n + 1),
        ...jarOf(coat, shop),
        coat.how,
        ...film(coat),
        dryUm(coat, shop),
        ...weather,
      ];
    });
  });
}

function jarOf({ jar: id }: Coat, { jars }: Shop): Row {
  const jar = jars.get(id);
  return jar ? [jar.name, FINISH_NAMES[jar.product.finish].label] : ['', ''];
}

function film({ film }: Coat): Row {
  if (film.by === 'passes') return [film.by, ...typed(film.perPass), String(film.passes)];
  return [film.by, ...typed(film.by === 'wet' ? film.wetFilm : film.dryFilm), ''];
}

function dryUm(coat: Coat, shop: Shop): string {
  const jar = shop.jars.get(coat.jar);
  return jar ? metresToUm(dryFilmM(coat, jarFilmAt(jar, coat.atMs, shop))).toFixed(1) : '';
}

/** One row a line of a recipe, every version. */
const recipes = ({ recipes, ingredients, entries }: Shop): Row[] =>
  [...recipes.values()].flatMap((recipe) =>
    recipe.lines.map(({ ingredient, amount, by = '', of = '' }, n) => [
      recipe.entry,
      ...when({
        at: new Date(recipe.writtenMs).toISOString(),
        atMs: recipe.writtenMs,
        zone: entries.get(recipe.entry)?.zone ?? 'UTC',
      }),
      recipe.name,
      String(recipe.version),
      String(n + 1),
      ingredients.get(ingredient)?.name ?? '',
      ...typed(amount),
      by,
      of,
      recipe.note ?? '',
    ]),
  );

/** One row a colour reading, as L*, a*, b* under its own light. */
const readings = (shop: Shop): Row[] =>
  [...shop.matches.values()].flatMap((match) =>
    [
      ...match.readings.map((set) => ({ set, of: readOf(set, shop) })),
      ...match.trials.flatMap((trial) =>
        trial.readings.map((set) => ({ set, of: ['trial', `${trial.number}`] })),
      ),
    ].flatMap(({ set, of }) =>
      set.readings.map((reading, n) => {
        const lab = labOf(reading, set.white);
        return [
          set.id,
          ...when(set),
          match.name,
          shop.pieces.get(match.piece ?? '')?.name ?? '',
          ...of,
          String(n + 1),
          ...underOf(set, match),
          set.isDry ? 'dry' : 'wet',
          reading.as,
          set.white,
          ...(lab ? [two(lab.L), two(lab.a), two(lab.b)] : ['', '', '']),
          set.note ?? '',
        ];
      }),
    ),
  );

/** What was read, and which of its kind: the passes of a toner, the tinter of a draw-down and its share. */
function readOf({ of }: ReadingSet, { ingredients }: Shop): Row {
  if (of.as === 'toned') return [of.as, `${of.passes}`];
  if (of.as !== 'tint') return [of.as, ''];
  const { text, unit } = of.share.typed;
  return [of.as, `${ingredients.get(of.tinter)?.name ?? ''} ${text} ${unit}`.trim()];
}

/** Bare or under clear, and how many coats of it. A target is seen as its match says, under coats that nobody counted. */
function underOf({ of, clearCoats }: ReadingSet, { through }: Match): Row {
  if (of.as === 'target') return [through, ''];
  return clearCoats === undefined ? ['bare', '0'] : ['clear', `${clearCoats}`];
}

const TABLES = { coats, recipes, readings } as const;

/** A table of the shop, its heads first. */
export const tableOf = (name: TableName, shop: Shop): readonly Row[] => [
  TABLE_HEADS[name],
  ...TABLES[name](shop),
];
