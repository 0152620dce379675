import type { Outlook } from '../actions/outlook';
import type { Jar } from '../logbook/fold/jars';
import type { Piece } from '../logbook/fold/pieces';
import { umToMetres } from '../units';
import { BENCH_WORDS } from '../words/bench';
import { FILM_WORDS } from '../words/film';
import { filmWords, type UnitSystem } from '../words/quantities';
import { CrossSection } from './cross-section';
import { filmLayers } from './piece-film';

export interface PieceFaceProps {
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
  readonly jars: ReadonlyMap<string, Jar>;
  readonly nowMs: number;
  readonly units: UnitSystem;
  /** One scale for all faces beside each other, so that a thick film looks thick. */
  readonly scaleUmMax?: number | undefined;
}

/** The small cross-section by which a piece is known in a list. */
export function PieceFace({ piece, outlook, jars, nowMs, units, scaleUmMax }: PieceFaceProps) {
  const layers = filmLayers(piece, outlook, jars, nowMs);
  const um = layers.reduce((sum, layer) => sum + layer.dryUm + layer.solventUm, 0);
  return (
    <CrossSection
      compact
      layers={layers}
      woodLabel={FILM_WORDS.woods[piece.base]}
      scaleUmMax={scaleUmMax}
      describe={BENCH_WORDS.face(piece.name, piece.coats.length, filmWords(umToMetres(um), units))}
    />
  );
}
