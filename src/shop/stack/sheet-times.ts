import type { SheetTimes } from '../../estimator/finishes/law-history';
import type { Shop } from '../../logbook/fold/fold';
import type { DataSheet } from '../../logbook/fold/mix/data-sheets';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { dryFilm } from '../../science/film/thickness';

/**
 * The data sheet that holds for a jar: its own, or the newest that was entered for a jar of the same name and finish, for a
 * new jar of the same product needs no second reading of the sheet.
 */
export function sheetOf(
  jarId: string,
  { jars, sheets }: Pick<Shop, 'jars' | 'sheets'>,
): DataSheet | undefined {
  const own = sheets.get(jarId);
  const jar = jars.get(jarId);
  if (own || !jar) return own;
  return [...sheets.values()]
    .filter(({ jar: id }) => {
      const other = jars.get(id);
      return other?.name === jar.name && other.product.finish === jar.product.finish;
    })
    .sort((one, other) => other.atMs - one.atMs)[0];
}

/**
 * The times of a sheet as the laws take them, s.
 * @param volumeSolids of the mix that is laid: what the sheet's wet film leaves
 */
export function sheetTimes(
  { temperature, humidity, times, wetFilm }: DataSheet,
  volumeSolids: number,
): SheetTimes {
  const { touch, recoatFrom, recoatUntil, sand, cured } = times;
  return {
    temperatureK: temperature.si,
    relativeHumidity: humidity.si,
    ...(wetFilm && { filmDryM: dryFilm(wetFilm.si, volumeSolids) }),
    ...(touch && { touchS: touch.si }),
    ...(recoatFrom && { recoatFromS: recoatFrom.si }),
    ...(recoatUntil && { recoatUntilS: recoatUntil.si }),
    ...(sand && { sandS: sand.si }),
    ...(cured && { curedS: cured.si }),
  };
}

/** Where no sheet says otherwise: padded last, and not found to powder since. One's own hand comes before common practice. */
export function isResting({ coats, checks }: Piece): boolean {
  const last = coats.at(-1);
  return (
    last?.how === 'pad' &&
    !checks.some(({ test, result, atMs }) => test === 'gum' && result === 'passes' && atMs >= last.atMs)
  );
}
