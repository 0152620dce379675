import type { Coat, Piece } from '../../../logbook/fold/piece/pieces';
import { Button, LinkButton } from '../../../parts/blocks/button';
import type { FilmLayer } from '../../../parts/film/film-picture';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { undoWithToast } from '../../../parts/frame/undo';
import { coatBlush } from '../../../shop/air/coat-blush';
import { toKelvin, umToMetres } from '../../../units';
import { COAT_WORDS } from '../../../words/piece/piece';
import { filmWords, percentWords, temperatureWords } from '../../../words/quantities';
import { whenWords } from '../../../words/times';
import { filmAsTyped } from './film-as-typed';

interface CoatDetailsProps {
  readonly piece: Piece;
  readonly layer: FilmLayer;
  readonly onClose: () => void;
}

/** One coat: when and how it was laid, what it holds now, and the way back to its jar. */
export function CoatDetails({ piece, layer, onClose }: CoatDetailsProps) {
  const units = useUnits();
  const coat = piece.coats.find(({ id }) => id === layer.key);
  const share = percentWords(layer.solventUm / (layer.dryUm + layer.solventUm || 1), 1);
  const solvent = filmWords(umToMetres(layer.solventUm), units);
  return (
    <div class="card" aria-live="polite">
      <h3>{layer.label}</h3>
      {!coat && <p class="quiet">{COAT_WORDS.oldFinish}</p>}
      <dl class="fact-list">
        {coat && <Laid coat={coat} />}
        {coat && <Coldest coat={coat} />}
        <Fact term={COAT_WORDS.dryNow} text={filmWords(umToMetres(layer.dryUm), units)} />
        <Fact term={COAT_WORDS.solventNow} text={`${solvent} (${share})`} />
      </dl>
      <div class="acts">
        {coat && <CoatActs coat={coat} name={layer.label} />}
        <Button kind="plain" onClick={onClose}>
          {COAT_WORDS.close}
        </Button>
      </div>
    </div>
  );
}

function Laid({ coat }: { readonly coat: Coat }) {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const jar = shop.value.jars.get(coat.jar);
  return (
    <>
      <Fact term={COAT_WORDS.logged} text={whenWords(coat.atMs, nowMs.value)} />
      <Fact
        term={COAT_WORDS.asTyped}
        text={COAT_WORDS.laid(COAT_WORDS.ways[coat.how], filmAsTyped(coat.film, units))}
      />
      <Fact term={COAT_WORDS.jar} text={jar?.name ?? COAT_WORDS.gone} />
    </>
  );
}

/** How cold the film got against the dew point: what a blush would be from. */
function Coldest({ coat }: { readonly coat: Coat }) {
  const { shop } = useShop();
  const units = useUnits();
  const blush = coatBlush(coat, shop.value);
  if (!blush) return null;
  const degrees = (C: number): string => temperatureWords(toKelvin(C), units);
  const { filmLowestC, filmHighestC, dewPointC, outlook } = blush;
  const film = COAT_WORDS.coldestText(degrees(filmLowestC), degrees(filmHighestC), degrees(dewPointC));
  return <Fact term={COAT_WORDS.coldest} text={`${film}. ${COAT_WORDS.blush[outlook]}`} />;
}

function CoatActs({ coat, name }: { readonly coat: Coat; readonly name: string }) {
  const { shop, actions } = useShop();
  const jar = shop.value.jars.get(coat.jar);
  return (
    <>
      {jar && (
        <LinkButton icon="mix" href={linkTo('mix', 'jar', coat.jar)}>
          {COAT_WORDS.fromJar(jar.name)}
        </LinkButton>
      )}
      <Button icon="undo" onClick={() => void undoWithToast(actions, coat.id, name)}>
        {COAT_WORDS.undo}
      </Button>
    </>
  );
}

const Fact = ({ term, text }: { readonly term: string; readonly text: string }) => (
  <div>
    <dt>{term}</dt>
    <dd class="digits">{text}</dd>
  </div>
);
