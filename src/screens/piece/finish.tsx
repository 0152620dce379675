import { useSignal } from '@preact/signals';
import type { Outlook } from '../../actions/outlook/outlook';
import type { Piece } from '../../logbook/fold/pieces';
import { CrossSection } from '../../parts/film/cross-section';
import type { FilmLayer } from '../../parts/film/film-picture';
import { asLaidUm, filmLayers } from '../../parts/film/piece-film';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { UM_PER_MIL, umToMetres } from '../../units';
import { FILM_FACTS } from '../../words/piece/acts';
import { FILM_WORDS } from '../../words/piece/film';
import { filmWords, percentWords, type UnitSystem } from '../../words/quantities';
import { CoatDetails } from './coat-details';

interface FinishProps {
  readonly piece: Piece;
  readonly outlook: Outlook | undefined;
}

/** The scale beside the film in US units. */
export const MIL = { label: 'mil', um: UM_PER_MIL };

/** The piece's finish cut through, to scale; a tap on a coat tells about it. */
export function Finish({ piece, outlook }: FinishProps) {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const picked = useSignal<string | undefined>(undefined);
  const layers = filmLayers(piece, outlook, shop.value.jars, nowMs.value);
  const layer = layers.find(({ key }) => key === picked.value);
  return (
    <>
      <CrossSection
        layers={layers}
        woodLabel={FILM_WORDS.woods[piece.base]}
        describe={describeFilm(piece, layers, units)}
        asLaid={{ um: asLaidUm(outlook), label: FILM_FACTS.asLaid }}
        selectedKey={layer?.key}
        {...(units === 'us' && { unit: MIL })}
        {...(layers.length > 0 && {
          onPick: (key: string) => {
            picked.value = key === picked.peek() ? undefined : key;
          },
        })}
      />
      {layer ? (
        <CoatDetails
          piece={piece}
          layer={layer}
          onClose={() => {
            picked.value = undefined;
          }}
        />
      ) : (
        layers.length > 0 && <p class="quiet small">{FILM_WORDS.pick}</p>
      )}
    </>
  );
}

/** The whole picture in one sentence. */
function describeFilm(piece: Piece, layers: readonly FilmLayer[], units: UnitSystem): string {
  const solventUm = layers.reduce((sum, layer) => sum + layer.solventUm, 0);
  const um = layers.reduce((sum, layer) => sum + layer.dryUm, solventUm);
  return FILM_WORDS.describe(
    piece.name,
    piece.coats.length,
    filmWords(umToMetres(um), units),
    percentWords(solventUm / (um || 1), 1),
  );
}
