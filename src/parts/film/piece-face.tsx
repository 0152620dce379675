import type { Piece } from '../../logbook/fold/piece/pieces';
import { umToMetres } from '../../units';
import { BENCH_WORDS } from '../../words/bench';
import { FILM_WORDS } from '../../words/piece/coat/film';
import { filmWords } from '../../words/quantities';
import { useShop, useUnits } from '../frame/shop-context';
import { CrossSection } from './cross-section';
import { coatsOn, filmLayers } from './piece-film';

export interface PieceFaceProps {
  readonly piece: Piece;
  /** One scale for all faces beside each other, so that a thick film looks thick. */
  readonly scaleUmMax?: number | undefined;
  /** Whose film: that of the piece, or of a place on it. */
  readonly standId?: string | undefined;
}

/** The small cross-section by which a piece is known in a list. */
export function PieceFace({ piece, scaleUmMax, standId = piece.id }: PieceFaceProps) {
  const { shop, outlooks, nowMs } = useShop();
  const units = useUnits();
  const outlook = outlooks.value.get(standId);
  const layers = filmLayers(piece, outlook, shop.value.jars, nowMs.value);
  const um = layers.reduce((sum, layer) => sum + layer.dryUm + layer.solventUm, 0);
  return (
    <CrossSection
      compact
      layers={layers}
      woodLabel={FILM_WORDS.woods[piece.base]}
      scaleUmMax={scaleUmMax}
      describe={BENCH_WORDS.face(
        piece.name,
        coatsOn(piece, outlook, layers),
        filmWords(umToMetres(um), units),
      )}
    />
  );
}
