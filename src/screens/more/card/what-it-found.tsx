import { factorOf } from '../../../estimator/belief';
import { Section } from '../../../parts/blocks/page';
import { useShop } from '../../../parts/frame/shop-context';
import { counted, type TestCard } from '../../../shop/card/cards';
import { TOLD_WORDS as WORDS } from '../../../words/piece/card';
import { numberWords } from '../../../words/quantities';
import { CardChart } from './card-chart';

/** Nearer to usual than this, nobody would call it slower or faster. */
const AS_USUAL = 1.1;

/** What the card says of the lacquer, and its curve. */
export function WhatItFound({ card }: { readonly card: TestCard }) {
  const outlook = useShop().cards.value.get(card.id);
  if (outlook?.state === 'failed' && card.coats.length > 0)
    return (
      <Section title={WORDS.title}>
        <p>{WORDS.failed[outlook.why]}</p>
      </Section>
    );
  if (outlook?.state !== 'ready') return null;
  const { before, diffusivity } = outlook.reading;
  const give = factorWords(factorOf(diffusivity));
  return (
    <>
      <Section title={WORDS.title}>
        {counted(card).length === 0 ? (
          <p>{WORDS.nothing}</p>
        ) : (
          <>
            <p>
              <strong>{paceWords(diffusivity.mean, give)}</strong>
            </p>
            <p class="quiet">{WORDS.before(factorWords(factorOf(before)))}</p>
            {outlook.isGuessed && <p>{WORDS.guessed}</p>}
            <p class="quiet">{WORDS.flows}</p>
          </>
        )}
      </Section>
      <Section title={WORDS.curve}>
        <CardChart card={card} told={outlook} />
      </Section>
    </>
  );
}

const factorWords = (factor: number): string => numberWords(factor, factor < 2 ? 2 : 1);

/** How fast a lacquer dries, from the logarithm of its diffusivity. */
function paceWords(mean: number, give: string): string {
  const factor = Math.exp(Math.abs(mean));
  if (factor < AS_USUAL) return WORDS.same(give);
  return (mean < 0 ? WORDS.slower : WORDS.faster)(factorWords(factor), give);
}
