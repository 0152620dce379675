import type { Shop } from '../../logbook/fold/fold';
import type { Coat, Piece } from '../../logbook/fold/piece/pieces';
import { documented } from '../../logbook/fold/piece/zones';
import { asItStands, coatsTold } from '../stack/layers-left';
import type { Stand } from '../zone/stands';
import { materialsOf, type UsedMaterial } from './materials';

/** What was done to the colour of a place: nothing, a toner, or an opaque coat. */
export type ColourWork = 'untouched' | 'toned' | 'opaque';

/** What the record says of a place. */
export interface ZoneFacts {
  readonly stand: Stand;
  /** Laid at this place itself and told still; of the whole, on all of it. */
  readonly own: readonly Coat[];
  /** How many coats of its own were sanded off again. */
  readonly sandedOff: number;
  readonly materials: readonly UsedMaterial[];
  readonly colour: ColourWork;
  /** Coats that hold a tracer, by their number in the film of the place, from the bottom. */
  readonly tracers: readonly { readonly coat: number; readonly nm: number }[];
}

/** What the logbook knows of a place on a piece, for its record. */
export function zoneFacts(stand: Stand, shop: Shop): ZoneFacts {
  const { piece, zone } = stand;
  const isOwn = ({ zoneId }: Coat): boolean => zoneId === zone?.zoneId;
  const own = coatsTold(piece, shop).filter(isOwn);
  const materials = materialsOf({ coats: own }, shop);
  const nmOf = new Map(materials.map(({ jar, tracerNm }) => [jar.id, tracerNm]));
  return {
    stand,
    own,
    sandedOff: piece.coats.filter(isOwn).length - own.length,
    materials,
    colour: colourOf(piece, own, shop),
    tracers: asItStands(piece, shop)
      .coats.filter(isOwn)
      .flatMap((coat) => {
        const nm = nmOf.get(coat.jar);
        return nm === undefined ? [] : [{ coat: piece.coats.indexOf(coat) + 1, nm }];
      }),
  };
}

function colourOf({ id }: Piece, own: readonly Coat[], shop: Shop): ColourWork {
  const toners = new Set(documented(id, shop).toners.map(({ jar }) => jar));
  if (own.some(({ jar }) => shop.jars.get(jar)?.pigment)) return 'opaque';
  return own.some(({ jar }) => toners.has(jar)) ? 'toned' : 'untouched';
}
