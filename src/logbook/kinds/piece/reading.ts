import * as v from 'valibot';
import { LOGBOOK_WORDS } from '../../../words/frame/logbook';
import { COUNTS, LIMITS } from '../../limits';
import { typed } from '../../typed';
import { count, entryOf, halves, Id, Note } from '../envelope';
import { WhiteName } from './match';

const OF = [
  v.object({ as: v.literal('target') }),
  v.object({ as: v.literal('trial'), trial: Id }),
  /** A card that is read with and without clear. */
  v.object({ as: v.literal('card') }),
  /** The base with a share of one tinter, drawn down until it hides. */
  v.object({ as: v.literal('tint'), tinter: Id, share: typed(LIMITS.tintShare) }),
  /** What a dye toner goes over, and the same after some passes. */
  v.object({ as: v.literal('ground') }),
  v.object({ as: v.literal('toned'), passes: count(COUNTS.passes) }),
] as const;

/** What was read, if it is not what a trial or the target is. */
const Of = v.variant('as', OF);
/** Also: the piece itself, bare or under so many passes of a toner. */
const OfLater = v.variant('as', [
  ...OF,
  v.object({ as: v.literal('on-piece'), passes: v.exactOptional(halves(COUNTS.passes)) }),
]);

const finite = v.pipe(v.number(), v.finite());
const Lightness = v.pipe(finite, v.minValue(0), v.maxValue(100));
const Opponent = v.pipe(finite, v.minValue(-128), v.maxValue(128));

/** One reading as the instrument, the file or the camera gave it. */
const Value = v.variant('as', [
  v.object({
    as: v.literal('lab'),
    L: typed(LIMITS.lightness),
    a: typed(LIMITS.opponent),
    b: typed(LIMITS.opponent),
  }),
  v.object({
    as: v.literal('xyz'),
    X: typed(LIMITS.tristimulus),
    Y: typed(LIMITS.luminance),
    Z: typed(LIMITS.tristimulus),
  }),
  v.object({
    as: v.literal('hex'),
    hex: v.pipe(v.string(), v.regex(/^#?([0-9a-f]{3}|[0-9a-f]{6})$/i, LOGBOOK_WORDS.notAHex)),
  }),
  v.object({
    as: v.literal('spectrum'),
    startNm: finite,
    stepNm: v.pipe(finite, v.minValue(1)),
    reflectance: v.pipe(v.array(finite), v.minLength(2), v.maxLength(COUNTS.bands.highest)),
  }),
  v.object({
    as: v.literal('photo'),
    against: v.picklist(['chart', 'grey-card']),
    L: Lightness,
    a: Opponent,
    b: Opponent,
    /** Standard deviation of the light over the patch, a fraction. */
    spread: v.pipe(finite, v.minValue(0)),
  }),
]);

const Luminance = typed(LIMITS.luminance);
const Field = v.object({ card: Luminance, coated: Luminance });

export const READING_KINDS = {
  /** Readings of one surface, taken together. */
  'colour-read': entryOf(
    'colour-read',
    {
      match: Id,
      of: Of,
      white: WhiteName,
      isDry: v.boolean(),
      /** Under so many coats of clear; bare when left out. */
      clearCoats: v.exactOptional(count(COUNTS.coats)),
      readings: v.pipe(
        v.array(Value),
        v.minLength(1, LOGBOOK_WORDS.noReading),
        v.maxLength(COUNTS.readings.highest, LOGBOOK_WORDS.longReadings(COUNTS.readings.highest)),
      ),
      note: v.exactOptional(Note),
    },
    { of: OfLater, piece: v.exactOptional(Id), zoneId: v.exactOptional(Id) },
  ),
  /** A draw-down of the jar over a black and white card; Y or L*, of the card's fields bare and coated. */
  'hiding-read': entryOf('hiding-read', {
    match: Id,
    trial: v.exactOptional(Id),
    dryFilm: typed(LIMITS.dryFilm),
    in: v.picklist(['Y', 'L']),
    black: Field,
    white: Field,
  }),
};
