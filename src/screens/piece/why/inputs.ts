import type { Estimate } from '../../../estimator/estimate';
import { PADDED_REST_DAYS } from '../../../estimator/finishes/to-sheet';
import type { Shop } from '../../../logbook/fold/fold';
import type { Jar } from '../../../logbook/fold/mix/jars';
import type { Piece } from '../../../logbook/fold/piece/pieces';
import { typedWords } from '../../../parts/fields/typed-words';
import { jarFilm } from '../../../shop/jar/film';
import { jarFilmAt } from '../../../shop/jar/film-at';
import { layersLeft } from '../../../shop/stack/layers-left';
import { sandingRoom } from '../../../shop/stack/sanding-room';
import { isResting } from '../../../shop/stack/sheet-times';
import { FINISH_NAMES } from '../../../words/mix/jar';
import { COAT_WORDS, PIECE_FORM } from '../../../words/piece/piece';
import { INPUT_WORDS as WORDS } from '../../../words/piece/why';
import { filmWords, percentWords, temperatureWords, type UnitSystem } from '../../../words/quantities';

export type InputOrigin = keyof typeof WORDS.origins;

/** One input of an estimate, and where it is from. */
export interface Input {
  readonly key: string;
  readonly term: string;
  readonly text: string;
  readonly origin: InputOrigin;
}

const input = (term: string, text: string, origin: InputOrigin, key = term): Input => ({
  key,
  term,
  text,
  origin,
});

/** Everything that an estimate was worked out from, each with its origin. */
export function inputsOf(piece: Piece, shop: Shop, estimate: Estimate, units: UnitSystem): readonly Input[] {
  const jars = [...new Set(piece.coats.map(({ jar }) => jar))].flatMap((id) => shop.jars.get(id) ?? []);
  const finish = jars.at(-1)?.product.finish ?? 'nitrocellulose';
  const left = layersLeft(piece, shop).filter(({ leftM }) => leftM > 0);
  const ownM = left.reduce((sum, { leftM }) => sum + leftM, 0);
  return [
    input(WORDS.finish, FINISH_NAMES[finish].label, 'log'),
    input(WORDS.constants, WORDS.constantsText, 'fit'),
    input(WORDS.coats, WORDS.coatsText(left.length, filmWords(ownM, units)), 'log'),
    ...jars.flatMap((jar) => ofJar(jar, piece, shop, units)),
    input(WORDS.base, PIECE_FORM.bases[piece.base].label, 'log'),
    ...ofOldFinish(piece, estimate.now.dryM - ownM, units),
    ofAir(piece, shop, units),
    input(WORDS.movement, WORDS.movementText, 'practice'),
    ofSanding(shop, units),
    ...(isResting(piece) ? [input(COAT_WORDS.ways.pad, WORDS.rests(PADDED_REST_DAYS), 'practice')] : []),
    input(WORDS.checks, WORDS.checksText(piece.checks.length), 'log'),
  ];
}

function ofJar(jar: Jar, piece: Piece, shop: Shop, units: UnitSystem): readonly Input[] {
  const film = jarFilm(jar);
  const { name, product, thinner, thinning, retarder, pigment } = jar;
  const isSaid = film.ownSolvents === 'said';
  const laid = laidSolids(jar, piece, shop);
  const isMixed = jar.weighUp !== undefined || jar.boxedFrom !== undefined;
  const solids = isMixed
    ? WORDS.mixed(laid)
    : WORDS.sprayed(typedWords(product.volumeSolids.typed, units), laid);
  const rows = [
    input(name, solids, 'log', `${jar.id} solids`),
    input(
      WORDS.ownSaid,
      isSaid ? WORDS.ownSaidText : WORDS.ownUsualText,
      isSaid ? 'log' : 'practice',
      `${jar.id} own`,
    ),
  ];
  const added = `${thinner.name}, ${typedWords(thinning.percent.typed, units)}`;
  if (!isMixed) rows.push(input(WORDS.thinner, added, 'log', `${jar.id} thinner`));
  if (retarder)
    rows.push(input(WORDS.retarder, typedWords(retarder.percent.typed, units), 'log', `${jar.id} retarder`));
  if (pigment)
    rows.push(
      input(WORDS.pigment, WORDS.pigmentText(percentWords(film.pigment)), 'log', `${jar.id} pigment`),
    );
  return rows;
}

/** The solids of the coats from a jar: one figure, or from which to which where solvent left it in between. */
function laidSolids(jar: Jar, { coats }: Piece, shop: Shop): string {
  const own = coats.filter((coat) => coat.jar === jar.id);
  const solids = own.map(({ atMs }) => percentWords(jarFilmAt(jar, atMs, shop).volumeSolids, 1));
  return [...new Set([solids[0], solids.at(-1)])].join('–');
}

function ofAir(piece: Piece, { airReadings, forecast }: Shop, units: UnitSystem): Input {
  const firstMs = piece.coats[0]?.atMs ?? 0;
  // The one before the first coat is the air that it went on in.
  const before = airReadings.findLastIndex(({ atMs }) => atMs <= firstMs);
  const count = airReadings.length - Math.max(0, before);
  if (airReadings.length === 0 && !forecast) return input(WORDS.air, WORDS.airNone, 'practice');
  const later = forecast
    ? WORDS.airForecast(
        typedWords(forecast.dayTemperature.typed, units),
        typedWords(forecast.nightTemperature.typed, units),
      )
    : WORDS.airLast;
  return input(WORDS.air, count > 0 ? `${WORDS.airText(count)} ${later}` : later, 'log');
}

/** An old finish that softens takes part, as deep as it was said to be, or as is usual. */
function ofOldFinish({ base, oldFilm }: Piece, deepM: number, units: UnitSystem): readonly Input[] {
  if (base !== 'old-redissolves' || deepM <= 0) return [];
  const text = WORDS.oldFilmText(filmWords(deepM, units));
  return [input(WORDS.oldFilm, text, oldFilm ? 'log' : 'practice')];
}

function ofSanding(shop: Shop, units: UnitSystem): Input {
  const { temperatureK, from } = sandingRoom(shop);
  const text = WORDS.sandingText(temperatureWords(temperatureK, units), WORDS.sandingFrom[from]);
  return input(WORDS.sanding, text, from === 'usual' ? 'practice' : 'log');
}
