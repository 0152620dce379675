import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import type { Piece } from '../../logbook/fold/piece/pieces';

/** What went into a jar, as it was weighed. */
export interface WeighedPart {
  readonly name: string;
  readonly grams: number;
  readonly lot: string | undefined;
}

/** A jar that coats came from. */
export interface UsedMaterial {
  readonly jar: Jar;
  /** Empty where it was not weighed up. */
  readonly weighed: readonly WeighedPart[];
  /** The wavelength under which it fluoresces, nm; undefined where it holds no tracer. */
  readonly tracerNm: number | undefined;
}

type Of = Pick<Shop, 'jars' | 'weighUps' | 'ingredients'>;

/** The jars that these coats came from, each once, in the order in which they were used. */
export const materialsOf = ({ coats }: Pick<Piece, 'coats'>, shop: Of): readonly UsedMaterial[] =>
  [...new Set(coats.map(({ jar }) => jar))].flatMap((id) => {
    const jar = shop.jars.get(id);
    return jar ? [{ jar, weighed: weighedInto(jar, shop), tracerNm: tracerOf(jar, shop) }] : [];
  });

function weighedInto({ weighUp }: Jar, { weighUps, ingredients }: Of): WeighedPart[] {
  const { plan = [], pours = [] } = { ...weighUps.get(weighUp ?? '') };
  return plan.flatMap(({ ingredient: id }, line) => {
    const ingredient = ingredients.get(id);
    const kg = pours.filter((pour) => pour.line === line).reduce((sum, { massKg }) => sum + massKg, 0);
    return ingredient && kg > 0 ? [{ name: ingredient.name, grams: kg * 1000, lot: ingredient.lot }] : [];
  });
}

/** The tracer that a jar holds: its own, that of an ingredient weighed into it, or that of a jar poured into it. */
export function tracerOf(jar: Jar, shop: Of, deep = 5): number | undefined {
  if (jar.tracerNm !== undefined || deep === 0) return jar.tracerNm;
  const { plan = [] } = { ...shop.weighUps.get(jar.weighUp ?? '') };
  const ofIngredient = plan.flatMap(({ ingredient }) => shop.ingredients.get(ingredient)?.tracerNm ?? []);
  const ofJars = (jar.boxedFrom ?? []).flatMap(({ jar: id }) => {
    const other = shop.jars.get(id);
    return (other && tracerOf(other, shop, deep - 1)) ?? [];
  });
  return [...ofIngredient, ...ofJars][0];
}
