import type { Match } from '../../../logbook/fold/piece/matches';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { coatsToHide } from '../../../science/pigment/hiding';
import { hides } from '../../../shop/colour/hides';
import { jarFilmAt } from '../../../shop/jar/film-at';
import { dryFilmM } from '../../../shop/stack/stack-events';
import { metresToUm, umToMetres } from '../../../units';
import { HIDING_WORDS as WORDS } from '../../../words/match/tools';
import { filmWords } from '../../../words/quantities';
import type { OfMatch } from '../use-match';
import { HidingChart } from './hiding-chart';
import { HidingForm } from './hiding-form';

/** How much film hides, from a draw-down over black and white. */
export function HidingPage({ match }: OfMatch) {
  return (
    <Page title={WORDS.title} backTo={linkTo('match', match.id)} backLabel={match.name}>
      <Found match={match} />
      <Section title={WORDS.save}>
        <p>{WORDS.intro}</p>
        <HidingForm match={match} />
      </Section>
    </Page>
  );
}

/** The film of a coat: of the newest on the piece, as its drying is worked out; else of the draw-down. */
function useCoatFilm(match: Match) {
  const shop = useShop().shop.value;
  const { pieces, jars } = shop;
  const coat = pieces.get(match.piece ?? '')?.coats.findLast(({ how }) => how !== 'flash');
  const jar = coat && jars.get(coat.jar);
  if (coat && jar)
    return { um: metresToUm(dryFilmM(coat, jarFilmAt(jar, coat.atMs, shop))), from: 'piece' as const };
  const drawdown = match.hiding.at(-1);
  return drawdown && { um: metresToUm(drawdown.dryFilm.si), from: 'drawdown' as const };
}

function Found({ match }: OfMatch) {
  const units = useUnits();
  const coat = useCoatFilm(match);
  const read = match.hiding.at(-1);
  const hiding = read && hides(read);
  if (!read || !hiding) return null;
  const film = (um: number): string => filmWords(umToMetres(um), units);
  const { filmToHideUm } = hiding;
  return (
    <Section title={WORDS.hides}>
      <dl class="facts">
        <div>
          <dt>{WORDS.ratio}</dt>
          <dd class="digits">
            {WORDS.ratioOf(hiding.contrastRatio.toFixed(3), film(metresToUm(read.dryFilm.si)))}
          </dd>
        </div>
        {filmToHideUm !== undefined && (
          <div>
            <dt>{WORDS.hides}</dt>
            <dd class="digits">{film(filmToHideUm)}</dd>
          </div>
        )}
        {filmToHideUm !== undefined && coat && coat.um > 0.1 && (
          <div>
            <dt>{WORDS.coats}</dt>
            <dd class="digits">
              {WORDS.coatsOf(coatsToHide(filmToHideUm, coat.um), film(coat.um))}
              <small>{WORDS.coatFrom[coat.from]}</small>
            </dd>
          </div>
        )}
      </dl>
      <p class="quiet small">{filmToHideUm === undefined ? WORDS.never : WORDS.hidesNote}</p>
      <HidingChart hiding={hiding} />
    </Section>
  );
}
