import type { Outlook } from '../../actions/outlook/outlook';
import type { Jar } from '../../logbook/fold/mix/jars';
import type { Coat, Piece } from '../../logbook/fold/piece/pieces';
import { metresToUm } from '../../units';
import { FILM_WORDS } from '../../words/piece/coat/film';
import type { FilmLayer } from './film-picture';

/** What is in one layer of a film, m. */
interface Held {
  readonly dryM: number;
  readonly solventM: number;
}

/** A pigmented coat is drawn as the opaque colour that it is, not as amber. */
const PIGMENTED = 'var(--pigment)';

export const OLD_FINISH = 'old-finish';

/** The coats of a piece as the cross-section draws them, first coat first; none while they are not worked out. */
export function filmLayers(
  piece: Piece,
  outlook: Outlook | undefined,
  jars: ReadonlyMap<string, Jar>,
  nowMs: number,
  look: { isTraced?(jar: string): boolean; tintOf?(jar: string): string | undefined } = {},
): readonly FilmLayer[] {
  if (outlook?.state !== 'ready' && outlook?.state !== 'kept') return [];
  const held = heldAt(outlook.estimate.profiles, (nowMs - outlook.startMs) / 1000);
  // A flash coat brings no film of its own, so it is no layer.
  const coats = piece.coats.filter(({ how }) => how !== 'flash');
  const below = Math.max(0, held.length - coats.length);
  const layers = held.map((layer, index): FilmLayer => {
    const coat = coats[index - below];
    const thick = { dryUm: metresToUm(layer.dryM), solventUm: metresToUm(layer.solventM) };
    if (!coat) return { key: OLD_FINISH, label: FILM_WORDS.oldFinish, pattern: 'cross', ...thick };
    const label = FILM_WORDS.coat(piece.coats.indexOf(coat) + 1);
    const tint = look.tintOf?.(coat.jar) ?? (jars.get(coat.jar)?.pigment && PIGMENTED);
    return {
      key: coat.id,
      label,
      pattern: patternOf(coat, jars),
      ...thick,
      ...(tint && { tint }),
      ...(look.isTraced?.(coat.jar) && { isTraced: true }),
    };
  });
  return layers.filter(({ dryUm }) => dryUm > SANDED_AWAY_UM);
}

/** How many coats are on it: what was sanded away is none any more, and what is not worked out yet is. */
export function coatsOn(
  { coats }: Pick<Piece, 'coats'>,
  outlook: Outlook | undefined,
  layers: readonly FilmLayer[],
): number {
  if (outlook?.state === 'no-coats') return 0;
  return layers.filter(({ key }) => key !== OLD_FINISH).length || coats.length;
}

/** Less than this is what sanding left of a coat, and nothing to look at. */
const SANDED_AWAY_UM = 0.01;

/** How thick the film was when its newest coat had just gone on, µm: the top of a picture that keeps its scale. 0 while it is not worked out. */
export function asLaidUm(outlook: Outlook | undefined): number {
  if (outlook?.state !== 'ready') return 0;
  const { profiles } = outlook.estimate;
  const newest = profiles.at(-1)?.layers.length ?? 0;
  const totals = profiles
    .filter(({ layers }) => layers.length === newest)
    .map(({ layers }) => layers.reduce((sum, { dryM, solventM }) => sum + dryM + solventM, 0));
  return metresToUm(Math.max(0, ...totals));
}

function patternOf(coat: Coat, jars: ReadonlyMap<string, Jar>): NonNullable<FilmLayer['pattern']> {
  if (coat.how === 'brush-fill') return 'dash';
  return jars.get(coat.jar)?.pigment === undefined ? 'none' : 'hatch';
}

interface Look {
  readonly timeS: number;
  readonly layers: readonly Held[];
}

/** What each layer holds at a moment: between two looks at the film, in proportion. */
function heldAt(looks: readonly Look[], timeS: number): readonly Held[] {
  const later = looks.findIndex((look) => look.timeS > timeS);
  const before = looks[later === -1 ? looks.length - 1 : Math.max(0, later - 1)];
  const after = looks[later];
  if (!before) return [];
  if (!after || after.layers.length !== before.layers.length) return before.layers;
  const share = Math.min(1, Math.max(0, (timeS - before.timeS) / (after.timeS - before.timeS || 1)));
  return before.layers.map((layer, index) => between(layer, after.layers[index] ?? layer, share));
}

const between = (one: Held, other: Held, share: number): Held => ({
  dryM: one.dryM + (other.dryM - one.dryM) * share,
  solventM: one.solventM + (other.solventM - one.solventM) * share,
});
