import { useSignal } from '@preact/signals';
import type { Outlook } from '../../actions/outlook/outlook';
import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import { GROUNDS } from '../../logbook/kinds/piece/ground';
import { CrossSection } from '../../parts/film/cross-section';
import { filmMarks } from '../../parts/film/film-marks';
import type { FilmLayer, GroundMark } from '../../parts/film/film-picture';
import { jarTint } from '../../parts/film/jar-tint';
import { asLaidUm, coatsOn, filmLayers, OLD_FINISH } from '../../parts/film/piece-film';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { materialsOf } from '../../shop/record/materials';
import { groundsOn } from '../../shop/stack/grounds';
import { UM_PER_MIL, umToMetres } from '../../units';
import { FILM_FACTS } from '../../words/piece/acts';
import { FILM_WORDS } from '../../words/piece/coat/film';
import { GROUND_WORDS } from '../../words/piece/ground';
import { tracedWords } from '../../words/piece/record';
import { filmWords, percentWords, type UnitSystem } from '../../words/quantities';
import { CoatDetails } from './coat/coat-details';
import { groundName } from './ground/ground-words';

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
  const nmOf = new Map(materialsOf(piece, shop.value).map(({ jar, tracerNm }) => [jar.id, tracerNm]));
  const layers = filmLayers(piece, outlook, shop.value.jars, nowMs.value, {
    isTraced: (jar) => nmOf.get(jar) !== undefined,
    tintOf: (jar) => jarTint(jar, shop.value),
  });
  const marks = filmMarks(piece, layers, units === 'us' ? MIL.um : 1);
  const layer = layers.find(({ key }) => key === picked.value);
  return (
    <>
      <CrossSection
        layers={layers}
        grounds={groundMarks(piece, shop.value)}
        woodLabel={FILM_WORDS.woods[piece.base]}
        describe={
          describeFilm(piece, coatsOn(piece, outlook, layers), layers, units) +
          (marks.length > 0 ? FILM_FACTS.marks(marks.map(({ label }) => label)) : '')
        }
        marks={marks}
        asLaid={{ um: asLaidUm(outlook), label: FILM_FACTS.asLaid }}
        selectedKey={layer?.key}
        {...(units === 'us' && { unit: MIL })}
        {...(layers.length > 0 && {
          onPick: (key: string) => {
            picked.value = key === picked.peek() ? undefined : key;
          },
        })}
      />
      <InWood piece={piece} />
      <Tracers layers={layers} nm={[...nmOf.values()].find((nm) => nm !== undefined)} />
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

/** What was filled, sealed and glued, by name. */
function InWood({ piece }: { readonly piece: Piece }) {
  const names = groundsOn(piece, useShop().shop.value).map(({ ground, logged }) =>
    groundName({ ground, ...logged }),
  );
  return names.length > 0 ? <p class="small">{GROUND_WORDS.inWood([...new Set(names)])}</p> : null;
}

/** Which layers hold a tracer, and the light that shows it. */
function Tracers({ layers, nm }: { readonly layers: readonly FilmLayer[]; readonly nm: number | undefined }) {
  const traced = layers.filter(({ isTraced }) => isTraced).map(({ label }) => label);
  return nm !== undefined && traced.length > 0 ? <p class="small">{tracedWords(traced, nm)}</p> : null;
}

/** The new film in one sentence; how deep an old finish softens is a guess, and no thickness of this work. */
function describeFilm(
  { name }: Piece,
  coats: number,
  layers: readonly FilmLayer[],
  units: UnitSystem,
): string {
  const laid = layers.filter(({ key }) => key !== OLD_FINISH);
  const solventUm = laid.reduce((sum, layer) => sum + layer.solventUm, 0);
  const um = laid.reduce((sum, layer) => sum + layer.dryUm, solventUm);
  return FILM_WORDS.describe(
    name,
    coats,
    um > 0 ? { um: filmWords(umToMetres(um), units), wet: percentWords(solventUm / um, 1) } : undefined,
  );
}

/** What the section shows of what was filled, sealed and glued: each sort once, with its number of applications. */
function groundMarks(piece: Piece, shop: Shop): readonly GroundMark[] {
  const all = groundsOn(piece, shop);
  return GROUNDS.flatMap((is) => {
    const own = all.filter(({ ground }) => ground === is);
    const isTinted = own.some(({ logged }) => logged?.isTinted === true);
    return own.length === 0 ? [] : [{ is, label: GROUND_WORDS.short(is, own.length), isTinted }];
  });
}
