import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import type { Piece } from '../../logbook/fold/piece/pieces';

/** The jars that hold what was weighed up by a recipe, those that such a jar was boxed into among them. */
export function jarsOfRecipe(recipe: string, { jars, weighUps }: Pick<Shop, 'jars' | 'weighUps'>): Jar[] {
  // What came from another phone may say that two jars were boxed into each other.
  const holds = (jar: Jar | undefined, into: readonly Jar[]): boolean =>
    jar !== undefined &&
    !into.includes(jar) &&
    ((jar.weighUp !== undefined && weighUps.get(jar.weighUp)?.recipe === recipe) ||
      (jar.boxedFrom ?? []).some((from) => holds(jars.get(from.jar), [...into, jar])));
  return [...jars.values()].filter((jar) => holds(jar, []));
}

/** A piece, with the coats on it that came from some jars. */
export interface Coated {
  readonly piece: Piece;
  readonly coats: number;
  readonly lastMs: number;
}

/** The pieces that these jars were laid on, the one coated last first. */
export function coatedFrom(jars: readonly Pick<Jar, 'id'>[], { pieces }: Pick<Shop, 'pieces'>): Coated[] {
  const ids = new Set(jars.map(({ id }) => id));
  return [...pieces.values()]
    .flatMap((piece): Coated[] => {
      const own = piece.coats.filter(({ jar }) => ids.has(jar));
      const last = own.at(-1);
      return last ? [{ piece, coats: own.length, lastMs: last.atMs }] : [];
    })
    .sort((one, other) => other.lastMs - one.lastMs);
}
