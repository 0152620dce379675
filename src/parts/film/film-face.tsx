import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { umToMetres } from '../../units';
import { BENCH_WORDS } from '../../words/bench';
import { filmWords } from '../../words/quantities';
import { useShop, useUnits } from '../frame/shop-context';
import { wetness } from './film-picture';
import { coatsOn, filmLayers } from './piece-film';

const SIDE = 48;
const WOOD = 15;
const THINNEST_SCALE_UM = 60;
/** Wetter than this a band is dotted too, for those who cannot see its tint. */
const DOTTED_FROM = 0.12;

/** The colour that a match read of a jar. How it is worked out comes behind the first frame; until then a pigment is white. */
const tints = signal<typeof import('./jar-tint').jarTint | undefined>(undefined);
const takeTints = (): void => {
  import('./jar-tint').then(
    ({ jarTint }) => {
      tints.value = jarTint;
    },
    () => undefined, // it stays white
  );
};

/** How thick the film of a piece is now, µm. */
function useFilm(piece: Piece) {
  const { shop, outlooks, nowMs } = useShop();
  const outlook = outlooks.value.get(piece.id);
  const { jars, matches } = shop.value;
  const isColoured = matches.size > 0 && piece.coats.some(({ jar }) => jars.get(jar)?.pigment);
  useEffect(() => {
    if (isColoured) takeTints();
  }, [isColoured]);
  const tint = tints.value;
  const layers = filmLayers(piece, outlook, jars, nowMs.value, {
    ...(tint && { tintOf: (jar: string) => tint(jar, shop.value) }),
  });
  return { layers, outlook, um: layers.reduce((sum, { dryUm, solventUm }) => sum + dryUm + solventUm, 0) };
}

/** The small section by which a piece is known in a list: wood, and its coats to the scale of all beside it. */
export function FilmFace({ piece, scaleUm }: { readonly piece: Piece; readonly scaleUm: number }) {
  const units = useUnits();
  const { layers, outlook, um } = useFilm(piece);
  const perUm = (SIDE - WOOD - 4) / Math.max(scaleUm, um, THINNEST_SCALE_UM);
  const woodTop = SIDE - WOOD;
  let top = woodTop;
  return (
    <svg
      class="film-face"
      viewBox={`0 0 ${SIDE} ${SIDE}`}
      role="img"
      aria-label={BENCH_WORDS.face(
        piece.name,
        coatsOn(piece, outlook, layers),
        um > 0 ? filmWords(umToMetres(um), units) : undefined,
      )}
    >
      <rect class="film-air" width={SIDE} height={SIDE} />
      {layers.map((layer) => {
        const height = (layer.dryUm + layer.solventUm) * perUm;
        top -= height;
        const wet = wetness(layer);
        const style = {
          '--wetness': `${Math.round(Math.min(1, wet * 1.15) * 100)}%`,
          ...(layer.tint !== undefined && { '--tint': layer.tint }),
        };
        return (
          <g key={layer.key} class="film-coat" style={style} data-pattern={layer.pattern}>
            <rect class="film-body" y={top} width={SIDE} height={height + 0.3} />
            <path class="film-seam" d={`M0 ${top}h${SIDE}`} />
            {wet > DOTTED_FROM && <path class="film-dots" d={`M2 ${top + height / 2}h${SIDE}`} />}
          </g>
        );
      })}
      <rect class="film-board" y={woodTop} width={SIDE} height={WOOD} />
      <path class="film-ring" d={`M0 ${SIDE - 5}q12 -7 24 -2t24 -3M0 ${SIDE}q16 -6 48 -3`} />
      <rect class="film-frame" x="0.75" y="0.75" width={SIDE - 1.5} height={SIDE - 1.5} />
    </svg>
  );
}
