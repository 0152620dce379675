import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { mixFacts } from '../../../actions/mix/mix-facts';
import { mixSentence } from '../../../actions/mix/mix-refused';
import { touchTime } from '../../../actions/mix/touch-time';
import type { Band } from '../../../estimator/estimate';
import { quantity } from '../../../logbook/typed';
import { LinkButton } from '../../../parts/blocks/button';
import { Fold } from '../../../parts/blocks/fold';
import { Notice } from '../../../parts/blocks/notice';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { TonerShare } from '../../../parts/mix/toner-share';
import type { Result } from '../../../result';
import { dryFilm } from '../../../science/film/thickness';
import type { MixFailure } from '../../../science/mixing/failure';
import type { Batch } from '../../../science/mixing/ingredient';
import { lacquerShare } from '../../../science/mixing/toner';
import { lowestFlashPointC } from '../../../science/solvents/blend';
import { type JarFilm, jarFilm } from '../../../shop/jar/film';
import { mixedProduct } from '../../../shop/jar/mixed-product';
import { mixIngredients } from '../../../shop/recipe/ingredients';
import { toKelvin, umToMetres } from '../../../units';
import { RECIPE_WORDS as WORDS } from '../../../words/mix/recipe';
import { filmWords, percentWords, temperatureWords, type UnitSystem } from '../../../words/quantities';
import { spanWords } from '../../../words/times';
import { densityWords, vocWords } from '../../../words/volumes';
import { Facts } from '../facts';
import { Leaving } from './leaving';

const WET_M = umToMetres(100);
const OPEN_FILM = 1;

/** What a batch is as a liquid and as a film, with what is not known said so. */
export function WhatItIs({ batch, isToner = false }: { readonly batch: Batch; readonly isToner?: boolean }) {
  const { shop } = useShop();
  const units = useUnits();
  const facts = mixFacts(batch, shop.value);
  const touch = useTouch(batch, shop.value);
  if (!facts.ok) return <Cannot failure={facts.failure} />;
  const { solvents, ofCritical } = facts.value;
  const missing = firstFailure(Object.values(facts.value));
  return (
    <>
      <Fold title={WORDS.is} brief={solidsOf(facts.value)}>
        {missing && <p class="quiet">{mixSentence(missing, shop.value)}</p>}
        <Facts rows={factRows(facts.value, units, touch)} />
        {ofCritical.ok && ofCritical.value > OPEN_FILM && <Notice kind="caution">{WORDS.openFilm}</Notice>}
        {isToner && <TonerShare share={lacquerShare(batch, mixIngredients(shop.value.ingredients))} />}
        <p class="quiet small">
          {WORDS.vocText} {WORDS.flashText}
        </p>
      </Fold>
      {solvents.ok && solvents.value.length > 0 && <Leaving blend={solvents.value} />}
    </>
  );
}

/** Its solids, in short. */
const solidsOf = ({ volumeSolids }: MixFacts): string | undefined =>
  volumeSolids.ok ? WORDS.solidsBrief(percentWords(volumeSolids.value, 1)) : undefined;

function Cannot({ failure }: { readonly failure: MixFailure }) {
  const { shop } = useShop();
  return (
    <Notice kind="note" title={WORDS.cannot}>
      <p>{mixSentence(failure, shop.value)}</p>
      <div class="acts">
        <LinkButton href={linkTo('mix', 'ingredient')}>{WORDS.toIngredients}</LinkButton>
      </div>
    </Notice>
  );
}

type MixFacts = Extract<ReturnType<typeof mixFacts>, { ok: true }>['value'];
type Shop = Parameters<typeof mixFacts>[1];

const firstFailure = (facts: readonly (Result<unknown, MixFailure> | string)[]): MixFailure | undefined =>
  facts.flatMap((fact) => (typeof fact === 'object' && !fact.ok ? [fact.failure] : []))[0];

function factRows(facts: MixFacts, units: UnitSystem, touch: Band | undefined): [string, string][] {
  const rows: [string, string][] = [];
  const put = <Value,>(name: string, fact: Result<Value, MixFailure>, write: (value: Value) => string) => {
    if (fact.ok) rows.push([name, write(fact.value)]);
  };
  put(WORDS.volumeSolids, facts.volumeSolids, (value) => percentWords(value, 1));
  put(WORDS.weightSolids, facts.weightSolids, (value) => percentWords(value, 1));
  put(WORDS.density, facts.densityKgM3, (value) => densityWords(value, units));
  if (facts.pigment.ok && facts.pigment.value > 0) {
    put(WORDS.pigment, facts.pigment, (value) => percentWords(value, 1));
    put(WORDS.critical, facts.ofCritical, (value) => percentWords(value));
  }
  put(WORDS.voc, facts.voc, ({ lessExemptKgM3 }) => vocWords(lessExemptKgM3, units));
  put(WORDS.vocActual, facts.voc, ({ actualKgM3 }) => vocWords(actualKgM3, units));
  if (facts.solvents.ok) {
    const flashC = lowestFlashPointC(facts.solvents.value);
    if (flashC !== undefined) rows.push([WORDS.flash, temperatureWords(toKelvin(flashC), units)]);
  }
  put(WORDS.film(filmWords(WET_M, units)), facts.volumeSolids, (value) =>
    filmWords(dryFilm(WET_M, value), units),
  );
  if (touch) {
    const [likely, earliest, late] = [touch.likelyS, touch.earliestS, touch.lateS].map((timeS) =>
      spanWords(timeS * 1000),
    ) as [string, string, string];
    rows.push([WORDS.touch, WORDS.touchBand(likely, earliest, late)]);
  }
  return rows;
}

/** When a coat of it is dry to touch, worked out beside the page. */
function useTouch(batch: Batch, shop: Shop): Band | undefined {
  const { estimator } = useShop();
  const touch = useSignal<Band | undefined>(undefined);
  const asked = JSON.stringify(filmOf(batch, shop) ?? null);
  useEffect(() => {
    let isWanted = true;
    const film: JarFilm | null = JSON.parse(asked);
    touch.value = undefined;
    if (film)
      estimator
        .then((of) => touchTime(film, of, WET_M))
        .catch(() => undefined)
        .then((band) => {
          if (isWanted) touch.value = band;
        });
    return () => {
      isWanted = false;
    };
  }, [asked, estimator, touch]);
  return touch.value;
}

function filmOf(batch: Batch, shop: Shop): JarFilm | undefined {
  const mixed = mixedProduct(batch, shop, '-');
  if (!mixed.ok) return undefined;
  const { product, thinner, thinning, pigment } = mixed.value;
  return jarFilm({
    product: { ...product, volumeSolids: quantity(product.volumeSolids) },
    thinner,
    thinning: { ...thinning, percent: quantity(thinning.percent) },
    ...(pigment ? { pigment: { shape: pigment.shape, shareOfSolids: quantity(pigment.shareOfSolids) } } : {}),
  } as Parameters<typeof jarFilm>[0]);
}
