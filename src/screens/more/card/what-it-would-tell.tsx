import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { THIN_M } from '../../../estimator/card/card';
import type { CardForetold } from '../../../estimator/card/foretell';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { cardPlan } from '../../../shop/card/card-plan';
import { CARD_FORM as WORDS } from '../../../words/piece/card';
import { filmWords, numberWords, type UnitSystem } from '../../../words/quantities';

interface WhatItWouldTellProps {
  readonly pieceId: string | undefined;
  /** Undefined while it is not a number. */
  readonly areaM2: number | undefined;
  readonly divisionKg: number;
}

/** Less narrow than this is little. */
const LITTLE = 2;
/** A number is typed to its end before it is worked out. */
const REST_MS = 400;

/** What a card of this size on this scale can tell, worked out before it is made. */
export function WhatItWouldTell({ pieceId, areaM2, divisionKg }: WhatItWouldTellProps) {
  const { shop, nowMs, estimator } = useShop();
  const units = useUnits();
  const told = useSignal<CardForetold | string>(WORDS.working);
  useEffect(() => {
    let isWanted = true;
    const plan =
      areaM2 === undefined ? undefined : cardPlan({ pieceId, areaM2, divisionKg }, shop.peek(), nowMs.peek());
    if (plan && !plan.ok) told.value = plan.failure.kind === 'no-drying-law' ? WORDS.curing : WORDS.noFilm;
    const timer = setTimeout(async () => {
      if (!plan?.ok) return;
      const foretold = await estimator.then((of) => of.foretell(plan.value).result).catch(() => undefined);
      if (isWanted && foretold) told.value = foretold;
    }, REST_MS);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [pieceId, areaM2, divisionKg, shop, nowMs, estimator, told]);
  const said = told.value;
  if (typeof said === 'string') return <p aria-live="polite">{said}</p>;
  const { prior, plain, warm } = said;
  const better = betterCards(said, units);
  return (
    <div class="stack" aria-live="polite">
      <p>{WORDS.prior(show(prior))}</p>
      <p>
        <strong>{WORDS.plain(show(plain))}</strong>
      </p>
      <p>
        <strong>{WORDS.warm(show(warm))}</strong>
      </p>
      {Math.min(plain, warm) > LITTLE && <p>{WORDS.little}</p>}
      {better.length > 0 && (
        <>
          <p>{WORDS.other}</p>
          <ul class="lines">
            {better.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

const show = (factor: number): string => numberWords(factor, 1);

/** Other cards that would tell more than this one, by as much as is shown. */
function betterCards({ warm, other }: CardForetold, units: UnitSystem): readonly string[] {
  const { thin, fine, twiceTheArea } = other;
  const isBetter = (factor: number | undefined): factor is number =>
    factor !== undefined && Number(factor.toFixed(1)) < Number(warm.toFixed(1));
  return [
    ...(isBetter(thin) ? [WORDS.thin(filmWords(THIN_M, units), show(thin))] : []),
    ...(isBetter(fine) ? [WORDS.fine(show(fine))] : []),
    ...(isBetter(twiceTheArea) ? [WORDS.twice(show(twiceTheArea))] : []),
  ];
}
