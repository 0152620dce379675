import { type CuringFinish, isCuring } from '../../estimator/finishes/finish-law';
import type { LawAir, LawCoat, LawHistory } from '../../estimator/finishes/law-history';
import { LONGEST_S } from '../../estimator/read-off';
import { USUAL_SHOP } from '../../estimator/usual-shop';
import type { Shop } from '../../logbook/fold/fold';
import type { Coat, Piece } from '../../logbook/fold/piece/pieces';
import { relativeHumidityAt } from '../../science/air/dew-point';
import { toCelsius } from '../../units';
import { airAsRead, airLog } from '../air/air-between';
import { measuredAir } from '../air/measured-air';
import { jarFilmAt } from '../jar/film-at';
import { sandingRoom } from './sanding-room';
import { sheetOf, sheetTimes } from './sheet-times';
import { dryFilmM } from './stack-events';

/** The history of a stack that dries by water or cures, and the instant from which its seconds count. */
export interface TimedLawHistory {
  readonly finish: CuringFinish;
  readonly history: LawHistory;
  readonly startMs: number;
}

/** What decides how this piece hardens; undefined where its newest coat hardens by solvent loss alone, or there is none. */
export function lawHistory(piece: Piece, shop: Shop): TimedLawHistory | undefined {
  const laid = piece.coats.filter(({ how }) => how !== 'flash');
  const newest = laid.at(-1);
  const jar = newest && shop.jars.get(newest.jar);
  const finish = jar?.product.finish;
  const startMs = laid[0]?.atMs;
  if (!newest || startMs === undefined || finish === undefined || !isCuring(finish)) return undefined;
  const sheet = sheetOf(newest.jar, shop);
  const seconds = (atMs: number): number => (atMs - startMs) / 1000;
  return {
    finish,
    startMs,
    history: {
      coats: laid.flatMap((coat) => lawCoat(coat, shop, seconds(coat.atMs))),
      sandings: piece.sandings
        .filter(({ atMs }) => atMs >= startMs)
        .map(({ atMs, removed }) => ({ atS: seconds(atMs), removedM: removed.si })),
      air: lawAir(shop, startMs, newest.atMs + LONGEST_S * 1000),
      sandingK: sandingRoom(shop).temperatureK,
      ...(sheet && jar && { sheet: sheetTimes(sheet, jarFilmAt(jar, newest.atMs, shop).volumeSolids) }),
    },
  };
}

function lawCoat(coat: Coat, shop: Shop, atS: number): LawCoat[] {
  const jar = shop.jars.get(coat.jar);
  if (!jar) return [];
  const film = jarFilmAt(jar, coat.atMs, shop);
  const dryM = dryFilmM(coat, film);
  return [{ atS, dryM, volatileM: (dryM * (1 - film.volumeSolids)) / film.volumeSolids }];
}

/** The air with its humidity: as read, or the forecast's; where only a temperature is known, with the water last read. */
function lawAir(shop: Shop, startMs: number, untilMs: number): LawAir[] {
  const { airReadings, forecast } = shop;
  return airLog(airAsRead(airReadings, startMs), forecast, startMs, untilMs).map(
    ({ atMs, temperatureK }) => ({
      fromS: (atMs - startMs) / 1000,
      temperatureK,
      relativeHumidity: humidityAt(shop, atMs, temperatureK),
    }),
  );
}

function humidityAt(shop: Shop, atMs: number, temperatureK: number): number {
  const { airReadings, forecast } = shop;
  const reading = airReadings.findLast((one) => one.atMs <= atMs) ?? airReadings[0];
  if (reading && Math.abs(reading.temperature.si - temperatureK) < 0.01)
    return measuredAir(reading, shop).humidity;
  if (forecast?.humidity)
    return relativeHumidityAt(
      toCelsius(temperatureK),
      toCelsius(forecast.dayTemperature.si),
      forecast.humidity.si,
    );
  if (!reading) return USUAL_SHOP.relativeHumidity;
  const air = measuredAir(reading, shop);
  return relativeHumidityAt(toCelsius(temperatureK), air.airC, air.humidity);
}
